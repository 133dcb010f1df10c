import type { AskOf } from '../../reading/ask.ts';
import type { Item } from '../../reading/slots.ts';
import type { Entry } from '../../record/entry.ts';
import type { TipUse } from '../../record/history.ts';
import { inOrder, type Place } from '../../record/order.ts';
import type { LoadState, Mark } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import { capital } from '../../rules/tips/tip-words.ts';
import { clockWords } from '../../words/clock-words.ts';
import { idOf, itemWords } from '../../words/item-words.ts';
import { type Line, lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { csvFile } from '../csv.ts';
import { factWords } from '../fact-words.ts';
import { isForReaders, RECORD_COLUMNS, recordRow, siteOfEntry } from '../record-rows.ts';
import { loadsAsked } from './load.ts';

/** What is shown on the phone; the rest is in the file … */
const SHOWN = 6;
/** … as far as a phone opens it with ease (assumed): of a tip in use for years there may be thousands. */
const IN_FILE = 2_000;

/** "What's happened with tip 4?": the latest first, all of it as a file where it is long. */
export function answerHistory({ item }: AskOf<'history'>, view: AskView): Answer {
  const found = placesOf(view, item);
  const name = capital(itemWords(view.practice, item));
  if (found.length === 0)
    return { about: 'answer', message: lines([{ strong: name }, ': nothing noted yet.']), items: [item] };
  const count = found.length === 1 ? '1 note' : `${found.length} notes, latest first`;
  const more = found.length - SHOWN;
  const message: Message = [
    { line: [{ strong: name }, `: ${count}.${tally(item, view)}`] },
    { points: entriesAt(found.slice(0, SHOWN), view).map((entry) => entryLine(entry, view)) },
    ...(more > 0 ? lines(`And ${more} more, ${inFileWords(found.length)}.`) : []),
  ];
  if (more <= 0) return { about: 'answer', message, items: [item] };
  const rows = entriesAt(found.slice(0, IN_FILE), view).map((entry) => recordRow(view.practice, entry));
  return { about: 'answer', message, items: [item], file: csvFile(item, RECORD_COLUMNS, rows) };
}

/** How long it has served: uses and cycles of a tip, scans and faults of a scanner. */
function tally(item: Item, { state }: AskView): string {
  const id = idOf(item);
  const tip = item.startsWith('tip:') ? state.tips.get(id) : undefined;
  if (tip !== undefined) {
    const limit = tip.limit === null ? '' : ` of ${tip.limit}`;
    return ` ${counted(tip.cycles, 'cycle')}${limit}, ${counted(tip.uses, 'use')}${faults(tip.faultCount)}.`;
  }
  const scanner = item.startsWith('scanner:') ? state.scanners.get(id) : undefined;
  if (scanner === undefined) return '';
  return ` ${counted(scanner.uses, 'scan')}${faults(scanner.faultCount)}.`;
}

function faults(count: number): string {
  return count === 0 ? '' : `, ${counted(count, 'fault')}`;
}

function counted(count: number, what: string): string {
  return `${count} ${what}${count === 1 ? '' : 's'}`;
}

function inFileWords(count: number): string {
  if (count <= IN_FILE) return 'in the file';
  return `the latest ${IN_FILE} in the file; all of them are in the export`;
}

/** Where everything stands that speaks of an item, the latest first: with a tip its loads, with a load what was said of it. */
function placesOf(view: AskView, item: Item): readonly Place[] {
  const places = new Map<string, Place>();
  const put = (place: Place): void => void places.set(idOfPlace(place), place);
  // One at a time: of a tip in use for years there are tens of thousands, and a place is little beside its load.
  for (const load of loadsOf(item, view)) for (const mark of marksOfLoad(load)) put(placeOf(mark));
  for (const { mark } of usesOf(item, view)) put(placeOf(mark));
  if (!item.startsWith('load:')) for (const place of view.entries.placesAbout(item)) put(place);
  return [...places.values()].sort((one, other) => inOrder(other, one));
}

function placeOf({ at, entry }: Mark): Place {
  const [turn = '0', index = '0'] = entry.split('.');
  return { when: at, turn: Number(turn), index: Number(index) };
}

function idOfPlace({ turn, index }: Place): string {
  return `${turn}.${index}`;
}

function entriesAt(places: readonly Place[], { entries }: AskView): readonly Entry[] {
  return places.flatMap((place) => entries.entry(idOfPlace(place)) ?? []).filter(isForReaders);
}

function* loadsOf(item: Item, view: AskView): Generator<LoadState> {
  const id = idOf(item);
  if (item.startsWith('load:')) yield* loadsAsked(id, view);
  if (!item.startsWith('tip:')) return;
  for (const key of view.state.history.tipLoads.get(id)?.all() ?? []) {
    const load = view.state.loads.get(key);
    if (load !== undefined) yield load;
  }
}

/** Scans with a tip whose note names the scanner alone. */
function usesOf(item: Item, { state }: AskView): Iterable<TipUse> {
  return (item.startsWith('tip:') ? state.history.uses.get(idOf(item))?.all() : null) ?? [];
}

/** Of the entries that a load rests on. Numbers come round again, so it is these that tell one load from another. */
function marksOfLoad(load: LoadState): readonly Mark[] {
  const marks = [load.started, load.doubt, load.released?.mark ?? null, load.recalled];
  return [...marks, ...load.results.map(({ mark }) => mark)].flatMap((mark) => mark ?? []);
}

function entryLine(entry: Entry, view: AskView): Line {
  const zone = zoneOf(view.practice, siteOfEntry(view.practice, entry));
  const by = entry.by === null ? '' : ` (${nameOf(view.practice, entry.by)})`;
  return [
    { strong: clockWords(entry.when, view.now, zone) },
    ` ${factWords(view.practice, entry.fact)}${by}`,
  ];
}
