import { offsetAt } from '../../../core/time/offsets.ts';
import { type Correction, type KeptEntry, listAt, textAt } from './kept-entry.ts';
import type { Names } from './names.ts';

/** What an inspector looks for, a column each. */
export const columns = [
  'when (local)',
  'when (UTC)',
  'what',
  'item',
  'where',
  'result',
  'by',
  'noted when (local)',
  'corrected by',
  'line',
] as const;

export type Row = Record<(typeof columns)[number], string | number>;

/** An instant on a zone's clock with its offset (RFC 3339): 2026-11-23T08:05:00+00:00. */
export function localWithOffset(iso: string, zone: string): string {
  const instant = Date.parse(iso);
  if (Number.isNaN(instant)) return iso;
  const offset = offsetAt(instant, zone);
  const minutes = Math.round(Math.abs(offset) / 60_000);
  const pad = (number: number): string => String(number).padStart(2, '0');
  const local = new Date(instant + offset).toISOString().slice(0, 19);
  return `${local}${offset < 0 ? '-' : '+'}${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

/** The site that an entry is of: said in it, else the chat room's. */
export function siteOf(entry: KeptEntry, names: Names): string | null {
  return textAt(entry.what, 'site') ?? names.siteOfRoom(entry.room);
}

/** The items that an entry is about, as in scanner:A, tip:4, load:118; sorted out of its slots. */
export function itemsOf({ what, kind }: KeptEntry): string[] {
  const found = new Set<string>();
  for (const item of listAt(what, 'items')) if (typeof item === 'string') found.add(item);
  const item = textAt(what, 'item');
  if (item !== null) found.add(item);
  for (const tip of listAt(what, 'tips')) if (typeof tip === 'string') found.add(`tip:${tip}`);
  for (const sort of ['tip', 'scanner', 'load', 'autoclave']) {
    const id = textAt(what, sort);
    if (id !== null) found.add(`${sort}:${id}`);
  }
  const ofAutoclave = kind === 'spore-test' || kind === 'autoclave-test';
  if (ofAutoclave && found.size === 0) found.add('autoclave');
  return [...found];
}

/** One entry as a row: times on its site's clock and in UTC, names as the practice has them. */
export function rowOf(entry: KeptEntry, correction: Correction | null, names: Names): Row {
  const site = siteOf(entry, names);
  const zone = names.zone(site, entry.room);
  return {
    'when (local)': localWithOffset(entry.when, zone),
    'when (UTC)': entry.when,
    what: entry.kind.replaceAll('-', ' '),
    item: itemsOf(entry).map(said).join(', '),
    where: whereOf(entry, site, names),
    result: resultOf(entry) + (names.countsAsFailed(entry.what) ? '; counts as failed' : ''),
    by: entry.by === null ? '' : names.person(entry.by),
    'noted when (local)': localWithOffset(entry.noted, zone),
    'corrected by': correction === null ? '' : correctionWords(correction, zone, names),
    line: entry.line,
  };
}

function said(item: string): string {
  const [sort = '', id = ''] = item.split(':');
  return id === '' ? sort : `${sort.replaceAll('-', ' ')} ${id}`;
}

function whereOf({ what }: KeptEntry, site: string | null, names: Names): string {
  const room = textAt(what, 'room');
  if (site === null) return room ?? '';
  return room === null ? names.site(site) : `${names.site(site)}, ${names.place(site, room)}`;
}

function correctionWords({ how, person, noted, by }: Correction, zone: string, names: Names): string {
  const who = person === null ? '' : ` by ${names.person(person)}`;
  return `${how}${who}, ${localWithOffset(noted, zone)} (line ${by})`;
}

/** Slots that have a column of their own, or are not for a reader. */
const elsewhere: ReadonlySet<string> = new Set([
  'kind',
  'when',
  'by',
  'site',
  'room',
  'items',
  'item',
  'tips',
  'tip',
  'scanner',
  'load',
  'autoclave',
  'of',
  'file',
]);

const units: ReadonlyMap<string, string> = new Map([
  ['celsius', ' °C'],
  ['minutes', ' min'],
]);
/** Slots whose value says enough alone. */
const bare: ReadonlySet<string> = new Set(['outcome', 'celsius', 'minutes', 'sort', 'reason', 'part']);

function resultOf({ what }: KeptEntry): string {
  const words: string[] = [];
  const slots = Object.entries(what).filter(([slot]) => !elsewhere.has(slot));
  slots.sort(([a], [b]) => rank(a) - rank(b));
  for (const [slot, value] of slots) {
    const text = valueWords(value) + (units.get(slot) ?? '');
    words.push(bare.has(slot) ? text : `${slotWords(slot)} ${text}`);
  }
  return words.join('; ');
}

/** The outcome first: it is what is looked for; then figures, then the rest as it comes. */
const first = ['outcome', 'sort', 'celsius', 'minutes', 'indicator', 'dry'];

function rank(slot: string): number {
  const at = first.indexOf(slot);
  return at === -1 ? first.length : at;
}

function slotWords(slot: string): string {
  return slot.replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

function valueWords(value: unknown): string {
  if (Array.isArray(value)) return value.map(valueWords).join(' ');
  if (value === true) return 'yes';
  if (value === false) return 'no';
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}
