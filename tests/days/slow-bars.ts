import type { Entry } from '../../core/record/entry.ts';
import { LEAD } from '../record/ferngate.ts';

/**
 * A slow second opinion on what keeps a tip or a scanner from use whatever else was noted: reads the whole record again
 * by the sentences of the rules and by nothing of the fold. In words; empty where nothing does. It may allow more than
 * the fold does, never less.
 */
export function barsOf(
  entries: readonly Entry[],
  item: `tip:${string}` | `scanner:${string}`,
): readonly string[] {
  const bars: string[] = [];
  if (isHeld(entries, item)) bars.push('held');
  const last = entries.findLast(({ fact }) => isNamed(fact, item))?.fact;
  if (last === undefined) return bars;
  if (last.kind === 'missing' || last.kind === 'retired' || last.kind === 'departed') bars.push(last.kind);
  // A load that it is in may have passed since.
  const doubted = entries.findLastIndex(({ fact }) => fact.kind === 'doubted' && fact.item === item);
  const ended = entries.slice(doubted).some(({ fact }) => fact.kind === 'load-finished');
  if (last.kind === 'doubted' && !ended) bars.push('in doubt');
  if (item.startsWith('tip:')) {
    const tip = item.slice('tip:'.length);
    if (isWet(entries, tip)) bars.push('from a wet load');
    if (isRecalled(entries, tip)) bars.push('recalled');
  }
  return bars;
}

function isNamed(fact: Entry['fact'], item: string): boolean {
  const [kind, id = ''] = item.split(':');
  if ('items' in fact && fact.items.some((each) => each === item)) return true;
  if ('item' in fact && fact.item === item) return true;
  if (kind === 'scanner') return 'scanner' in fact && fact.scanner === id;
  return ('tips' in fact && fact.tips?.includes(id) === true) || ('tip' in fact && fact.tip === id);
}

/** Anyone may hold; whoever placed it and the lead release. A tip that reached a patient is the lead's alone. */
function isHeld(entries: readonly Entry[], item: string): boolean {
  let holds: { readonly by: string | null }[] = [];
  for (const { fact, from } of entries) {
    if (fact.kind === 'held' && fact.items.some((each) => each === item)) holds.push({ by: from });
    if (fact.kind === 'incident-answered' && fact.reached && item === `tip:${fact.tip}`)
      holds.push({ by: null });
    if (fact.kind === 'released' && fact.items.some((each) => each === item))
      holds = from === LEAD ? [] : holds.filter(({ by }) => by !== from);
  }
  return holds.length > 0;
}

/** The last load it was in came out wet, and nobody has said anything of the tip or the load since. */
function isWet(entries: readonly Entry[], tip: string): boolean {
  const start = lastLoad(entries, tip);
  const begun = entries[start]?.fact;
  if (begun?.kind !== 'load-started') return false;
  const later = entries.slice(start + 1);
  // A number may come round on the same day: what follows then is of the other load.
  const again = later.findIndex(({ fact }) => fact.kind === 'load-started' && fact.load === begun.load);
  const after = again < 0 ? later : later.slice(0, again);
  const end = after.findLastIndex(({ fact }) => 'load' in fact && fact.load === begun.load);
  const result = after[end]?.fact;
  if (result?.kind !== 'load-finished' || result.dry !== false) return false;
  return !later.slice(end + 1).some(({ fact }) => isLetGo(fact, tip, begun.load));
}

/** Two positive spore tests and no negative one ever: what was loaded before the second is recalled. */
function isRecalled(entries: readonly Entry[], tip: string): boolean {
  const tests = entries.filter(({ fact }) => fact.kind === 'spore-test').map(({ fact }) => fact);
  if (tests.some((fact) => fact.kind === 'spore-test' && fact.outcome !== 'failed') || tests.length < 2)
    return false;
  const second = entries.findLastIndex(({ fact }) => fact.kind === 'spore-test');
  const start = lastLoad(entries, tip);
  const begun = entries[start]?.fact;
  if (begun?.kind !== 'load-started' || start > second) return false;
  // Results that come after it, and what anyone says after it, are not gone into.
  const after = entries.slice(second + 1).map(({ fact }) => fact);
  const spoken = after.some((fact) => 'load' in fact || isLetGo(fact, tip, begun.load));
  const finished = entries.slice(start, second).some(({ fact }) => {
    return fact.kind === 'load-finished' && fact.load === begun.load;
  });
  return finished && !spoken;
}

function lastLoad(entries: readonly Entry[], tip: string): number {
  return entries.findLastIndex(
    ({ fact }) => fact.kind === 'load-started' && fact.tips?.includes(tip) === true,
  );
}

function isLetGo(fact: Entry['fact'], tip: string, load: string): boolean {
  if (fact.kind === 'sterile' || fact.kind === 'load-started') return fact.tips?.includes(tip) === true;
  if (fact.kind === 'load-released') return true;
  return (
    (fact.kind === 'released' || fact.kind === 'doubt-settled') &&
    (isNamed(fact, `tip:${tip}`) || isNamed(fact, `load:${load}`))
  );
}
