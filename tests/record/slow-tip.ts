import type { Entry } from '../../core/record/entry.ts';
import { LEAD } from './ferngate.ts';

/**
 * A slow second opinion on one tip: reads the whole record again for it, by the sentences of the rules and by nothing of
 * the fold. Answers whether the record allows the tip to be called sterile. It may allow more than the fold does (it does
 * not follow recalls, for one), never less.
 */
export function mayBeSterile(entries: readonly Entry[], tip: string): boolean {
  const soiled = entries.findLastIndex((entry) => isSoiled(entry, tip));
  const loads = entries.findLastIndex((entry) => isLoadedWith(entry, tip));
  for (let n = entries.length - 1; n > soiled; n -= 1) {
    const entry = entries[n];
    if (entry === undefined) break;
    if (isGoodEnd(entries, n, tip)) return true;
    const { fact } = entry;
    // Taken as said: never spoken of, or sent since contact and load; and no load of it has no good end.
    if (fact.kind !== 'sterile' || fact.tips?.includes(tip) !== true) continue;
    const sent = entries.slice(0, n).findLastIndex((each) => isSent(each, tip));
    const known = entries.slice(0, n).some((each) => isSoiled(each, tip) || isLoadedWith(each, tip));
    const waiting = loads >= 0 && loads < n && !endsAfter(entries, loads, n);
    if (!waiting && (!known || (sent > soiled && sent < n))) return true;
  }
  return false;
}

/** "used, not sterile": contact, or damage to its integrity. */
function isSoiled(entry: Entry, tip: string): boolean {
  const { fact } = entry;
  switch (fact.kind) {
    case 'fitted':
    case 'scan-started':
    case 'scan-finished':
      return fact.tip === tip;
    case 'used':
    case 'removed':
      return fact.tips?.includes(tip) === true;
    case 'inspected':
      return fact.outcome === 'failed' && fact.tips?.includes(tip) === true;
    case 'fault':
      return fact.item === `tip:${tip}` && ['dropped', 'pack', 'indicator'].includes(fact.sort);
    default:
      return false;
  }
}

function isSent(entry: Entry, tip: string): boolean {
  return entry.fact.kind === 'sent' && entry.fact.tips?.includes(tip) === true;
}

function isLoadedWith(entry: Entry, tip: string): boolean {
  return entry.fact.kind === 'load-started' && entry.fact.tips?.includes(tip) === true;
}

/** The load begun at that index has some result before the other. */
function endsAfter(entries: readonly Entry[], start: number, before: number): boolean {
  const begun = entries[start]?.fact;
  if (begun?.kind !== 'load-started') return false;
  return entries
    .slice(start + 1, before)
    .some(({ fact }) => fact.kind === 'load-finished' && fact.load === begun.load);
}

/** Entry `n` gives a good result to a load that the tip is in, and nothing later takes it back. */
function isGoodEnd(entries: readonly Entry[], n: number, tip: string): boolean {
  const entry = entries[n];
  const number = entry === undefined ? null : numberPassed(entries, entry, n, tip);
  if (entry === undefined || number === null) return false;
  const start = entries.slice(0, n).findLastIndex((each) => isLoadedWith(each, tip) && isOf(each, number));
  if (start < 0) return false;
  if (entries.slice(start, n).some((each) => isSoiled(each, tip))) return false;
  if (failedBetween(entries, start, n, number) && !mayCorrect(entries, start, n, number)) return false;
  const restart = entries.findIndex(
    (each, index) => index > n && each.fact.kind === 'load-started' && isOf(each, number),
  );
  const until = restart < 0 ? entries.length : restart;
  return !failedBetween(entries, n, until, number) && !doubtedBetween(entries, n, until, number);
}

/** The number of the load that this entry says is good. */
function numberPassed(entries: readonly Entry[], entry: Entry, n: number, tip: string): string | null {
  const { fact } = entry;
  if (fact.kind === 'load-released' && entry.from === LEAD) return numberIn(fact.load);
  if (fact.kind === 'released' && entry.from === LEAD) {
    // By its number, or by the tip's own name: "or some of its tips".
    const load = fact.items.find((item) => item.startsWith('load:'));
    if (load !== undefined) return load.slice('load:'.length);
    const last = entries.slice(0, n).findLast((each) => isLoadedWith(each, tip))?.fact;
    return fact.items.includes(`tip:${tip}`) && last?.kind === 'load-started' ? last.load : null;
  }
  if (fact.kind === 'doubt-settled') return fact.item.replace('load:', '');
  if (fact.kind !== 'load-finished' || fact.outcome !== 'passed' || fact.indicator === 'failed') return null;
  const said = entries.slice(0, n + 1).map((each) => each.fact);
  const figures = said.findLast(
    (each) => each.kind === 'load-finished' && each.load === fact.load && each.celsius !== undefined,
  );
  const celsius = fact.celsius ?? (figures?.kind === 'load-finished' ? figures.celsius : undefined);
  if (fact.celsius !== undefined && fact.minutes !== undefined && !holds(fact.celsius, fact.minutes))
    return null;
  return celsius === undefined || inBand(celsius) || fact.celsius === undefined ? fact.load : null;
}

/** What is decided about a load names it by autoclave and date too: "big/118@2026-11-23". */
function numberIn(load: string): string {
  return load.replace(/^.*\//, '').replace(/@.*$/, '');
}

/** HTM 01-05: 134–137 °C 3 min, 126–129 °C 10 min, 121–124 °C 15 min (from memory, see tests/standards). */
function holds(celsius: number, minutes: number): boolean {
  if (celsius >= 134 && celsius <= 137) return minutes >= 3;
  if (celsius >= 126 && celsius <= 129) return minutes >= 10;
  return celsius >= 121 && celsius <= 124 && minutes >= 15;
}

function inBand(celsius: number): boolean {
  return [134, 126, 121].some((from) => celsius >= from && celsius <= from + 3);
}

function isOf(entry: Entry, number: string): boolean {
  return 'load' in entry.fact && entry.fact.load === number;
}

function failures(entries: readonly Entry[], from: number, to: number, number: string): Entry[] {
  return entries.slice(from + 1, to).filter((each) => {
    const { fact } = each;
    if (fact.kind !== 'load-finished' || fact.load !== number) return false;
    const short =
      fact.celsius !== undefined &&
      fact.minutes !== undefined &&
      inBand(fact.celsius) &&
      !holds(fact.celsius, fact.minutes);
    return fact.outcome === 'failed' || fact.indicator === 'failed' || short;
  });
}

function failedBetween(entries: readonly Entry[], from: number, to: number, number: string): boolean {
  return failures(entries, from, to, number).length > 0;
}

/** From its author within ten minutes, or from the lead. */
function mayCorrect(entries: readonly Entry[], from: number, n: number, number: string): boolean {
  const entry = entries[n];
  const last = failures(entries, from, n, number).at(-1);
  if (entry === undefined || last === undefined) return false;
  return entry.from === LEAD || (entry.from === last.from && entry.noted - last.noted <= 10 * 60_000);
}

/** Doubted after its result, and neither settled nor given another result since. */
function doubtedBetween(entries: readonly Entry[], from: number, to: number, number: string): boolean {
  const item = `load:${number}`;
  const after = entries.slice(from + 1);
  const doubt = after
    .slice(0, to - from - 1)
    .findLastIndex(({ fact }) => fact.kind === 'doubted' && fact.item === item);
  if (doubt < 0) return false;
  return !after
    .slice(doubt)
    .some(({ fact }) => fact.kind === 'load-finished' || fact.kind === 'doubt-settled');
}
