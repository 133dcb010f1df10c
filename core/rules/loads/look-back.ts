import type { Item } from '../../reading/slots.ts';
import { dateInKey } from '../../record/load-key.ts';
import type { LongList } from '../../record/long-list.ts';
import type { LoadState, Mark, State, TipFitting, TipUse } from '../../record/state.ts';
import { DAY, type Instant } from '../../time/instant.ts';
import { addDays } from '../../time/local-date.ts';

/** A scan, or a fitting with no scan noted after it, that a tip's bad load concerns. Never who the patient was. */
export interface Concerned {
  readonly what: 'scan' | 'fitting';
  readonly tip: string;
  readonly scanner: string | null;
  readonly site: string | null;
  readonly room: string | null;
  /** When, who noted it; `earliest` before `at` where the time said is a stretch. */
  readonly mark: Mark;
  /** Key of the load in question; `null` where the tip has never had a good one. */
  readonly load: string | null;
}

/** From the end of the bad load, not yet over where no good one followed. */
interface Window {
  readonly from: Instant;
  readonly until: Instant | null;
}

/**
 * Every scan concerned when these loads prove bad, newest first: after a load's end and before the tip's next load
 * that passed and still stands; those of earlier good loads are not. Tips that left a load while it ran count too:
 * they were in it. Looks only at these tips' own lists, so the size of the record does not matter.
 * @param loads keys. Unknown ones are passed over.
 */
export function lookBack(state: State, loads: readonly string[]): readonly Concerned[] {
  const found = new Map<string, Concerned>();
  for (const key of new Set(loads)) {
    const load = state.loads.get(key);
    if (load === undefined) continue;
    for (const tip of load.tips) {
      const window = windowOf(state, tip, load);
      for (const each of within(state, tip, window, key)) {
        // Later of two bad loads first: the scan stood under that one.
        const id = `${each.what} ${each.mark.entry} ${tip}`;
        const known = found.get(id);
        if (known === undefined || endOf(state, known.load) < endOf(state, key)) found.set(id, each);
      }
    }
  }
  return [...found.values()].sort(newestFirst);
}

/**
 * Every scan with a tip since its last good load, newest first: what a tip that proves unsafe concerns. With no good
 * load on record, all of them.
 */
export function lookBackTip(state: State, tip: string): readonly Concerned[] {
  let last: string | null = null;
  for (const key of state.history.tipLoads.get(tip)?.newestFirst() ?? []) {
    if (!isGood(state, tip, key)) continue;
    last = key;
    break;
  }
  const from = last === null ? Number.NEGATIVE_INFINITY : endOf(state, last);
  return [...within(state, tip, { from, until: null }, last)].sort(newestFirst);
}

function windowOf(state: State, tip: string, load: LoadState): Window {
  const from = endOf(state, load.key);
  const loads = state.history.tipLoads.get(tip);
  let until: Instant | null = null;
  if (loads === undefined) return { from, until };
  // In the order it was put in: only one that went in while the first good one ran could end before it.
  for (let at = placeOf(loads, load) + 1; at < loads.length; at += 1) {
    const key = loads.at(at) ?? '';
    if (until !== null && (state.loads.get(key)?.started?.at ?? 0) >= until) break;
    if (!isGood(state, tip, key)) continue;
    const passed = passedAt(state, key);
    if (passed > from && (until === null || passed < until)) until = passed;
  }
  return { from, until };
}

/** Where the load stands in a tip's list, which is in order of time: by its date, so that years of it need not be read. */
function placeOf(loads: LongList<string>, { key, date }: LoadState): number {
  // Zones and midnight move a date by a day.
  const [from, to] = [addDays(date, -2), addDays(date, 2)];
  let low = 0;
  let high = loads.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (dateInKey(loads.at(middle) ?? '') < to) low = middle + 1;
    else high = middle;
  }
  for (let at = low - 1; at >= 0 && dateInKey(loads.at(at) ?? '') >= from; at -= 1)
    if (loads.at(at) === key) return at;
  return loads.lastIndexOf(key);
}

/** Passed, or released by someone who may, and neither wet, doubted nor recalled since. */
function isGood(state: State, tip: string, key: string): boolean {
  const load = state.loads.get(key);
  if (load === undefined || load.recalled !== null || load.wet || load.left.some((each) => each.tip === tip))
    return false;
  return load.status === 'passed' || (load.status !== 'failed' && load.released?.tips.includes(tip) === true);
}

/** The earliest instant at which a load can have ended; its start where no result was noted. */
function endOf(state: State, key: string | null): Instant {
  const load = key === null ? undefined : state.loads.get(key);
  return load?.finished?.earliest ?? load?.started?.earliest ?? Number.NEGATIVE_INFINITY;
}

/** The latest instant at which a load can have ended. */
function passedAt(state: State, key: string): Instant {
  return state.loads.get(key)?.finished?.at ?? Number.NEGATIVE_INFINITY;
}

function* within(state: State, tip: string, window: Window, load: string | null): Generator<Concerned> {
  const used = state.history.uses.get(tip);
  const uses = used === undefined ? [] : inside(used, window);
  for (const use of uses) yield concerned('scan', use, load);
  const fittings = state.history.fittings.get(tip);
  if (fittings === undefined) return;
  for (const fitting of inside(fittings, window)) {
    if (!isScannedWith(fitting, fittings, uses)) yield concerned('fitting', fitting, load);
  }
}

/** An array, or a list of the record of which a part may be on the disk. */
interface InTime<T> {
  readonly length: number;
  at(index: number): T | undefined;
}

/** Those that may have happened in the window: a stretch of which any part falls inside counts. */
function inside<T extends TipUse | TipFitting>(list: InTime<T>, { from, until }: Window): readonly T[] {
  const found: T[] = [];
  for (let at = firstAtOrAfter(list, from); at < list.length; at += 1) {
    const each = list.at(at);
    if (each === undefined || (until !== null && each.mark.at >= until + LONGEST_STRETCH)) break;
    if (until === null || each.mark.earliest < until) found.push(each);
  }
  return found;
}

/** Nobody who notes a scan says of it less than "last month": what ended this long after began after, too (assumed). */
const LONGEST_STRETCH = 62 * DAY;

/** Lists are in the order of the fold, so of `at`: halving finds the place. */
function firstAtOrAfter(list: InTime<{ readonly mark: Mark }>, from: Instant): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((list.at(middle)?.mark.at ?? 0) < from) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** A scan before the tip went on anywhere again: the scan tells of it, the fitting adds nothing. */
function isScannedWith(fitting: TipFitting, fittings: InTime<TipFitting>, uses: readonly TipUse[]): boolean {
  const next =
    fittings.at(firstAtOrAfter(fittings, fitting.mark.at + 1))?.mark.at ?? Number.POSITIVE_INFINITY;
  const use = uses[firstAtOrAfter(uses, fitting.mark.at)];
  return use !== undefined && use.mark.at <= next;
}

function concerned(
  what: Concerned['what'],
  { mark, tip, scanner, site, room }: TipUse | TipFitting,
  load: string | null,
): Concerned {
  return { what, tip, scanner, site, room, mark, load };
}

function newestFirst(one: Concerned, other: Concerned): number {
  return other.mark.at - one.mark.at || place(other.mark) - place(one.mark);
}

/** Order of notes within one minute: the later note first. */
function place({ entry }: Mark): number {
  const [turn = '0', index = '0'] = entry.split('.');
  return Number(turn) + Number(index) / 1_000;
}

/** What they concern, as items, each once: tips and scanners in the order named. */
export function itemsConcerned(scans: readonly Concerned[]): readonly Item[] {
  const items = new Set<Item>();
  for (const { tip, scanner } of scans) {
    items.add(`tip:${tip}`);
    if (scanner !== null) items.add(`scanner:${scanner}`);
  }
  return [...items];
}
