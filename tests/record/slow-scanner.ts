import type { Entry } from '../../core/record/entry.ts';
import { MINUTE } from '../../core/time/instant.ts';

/**
 * A slow second opinion on one scanner: reads the whole record again by the sentences of the rules. Answers whether the
 * record allows that nothing but the weekly calibration can be due of it. It does not follow temperatures, so it may
 * allow more than the fold does; without readings settling takes 25 minutes.
 */
export function mayBeCalibrated(entries: readonly Entry[], scanner: string, home: string): boolean {
  const cause = lastCause(entries, scanner, home);
  const readings = entries.some(({ fact }) => fact.kind === 'temperature');
  return entries.some((entry, index) => {
    const { fact } = entry;
    if (fact.kind !== 'calibrated' || fact.scanner !== scanner || fact.outcome !== 'passed') return false;
    if (index <= cause.index) return false;
    // "Has it sat at room temperature?" Yes makes it count from its own time.
    const confirmed = entries.some((each) => {
      return each.fact.kind === 'pass-confirmed' && each.fact.of === entry.id;
    });
    return !cause.arrival || readings || confirmed || entry.when >= cause.when + 25 * MINUTE;
  });
}

/** The last thing after which it must be calibrated. */
function lastCause(entries: readonly Entry[], scanner: string, home: string) {
  let last = { index: -1, arrival: false, when: 0 };
  let site = home;
  let onWay = false;
  for (const [index, entry] of entries.entries()) {
    const { fact } = entry;
    const item = `scanner:${scanner}`;
    const named = 'items' in fact && fact.items.includes(item);
    if (fact.kind === 'departed' && named) onWay = true;
    if (fact.kind === 'moved' && named) {
      if (onWay || fact.site !== site) last = { index, arrival: true, when: entry.when };
      site = fact.site;
      onWay = false;
    }
    // What comes while it settles does not end settling: an arrival stays the cause to wait for.
    if (isCause(entry, scanner))
      last = settles(last, entry) ? { ...last, index } : { index, arrival: false, when: entry.when };
  }
  return last;
}

/** Failed, dropped or repaired. */
function isCause({ fact }: Entry, scanner: string): boolean {
  const item = `scanner:${scanner}`;
  if (fact.kind === 'calibrated') return fact.scanner === scanner && fact.outcome === 'failed';
  if (fact.kind === 'fault') return fact.item === item && fact.sort === 'dropped';
  return fact.kind === 'repaired' && fact.items.includes(item);
}

function settles(last: { readonly arrival: boolean; readonly when: number }, entry: Entry): boolean {
  return last.arrival && entry.when < last.when + 25 * MINUTE;
}
