import type { FactOf } from '../../reading/fact.ts';
import type { Item } from '../../reading/slots.ts';
import type { Entry } from '../../record/entry.ts';
import { loadMeant } from '../../record/load-key.ts';
import { sitesOfRoom, zoneOf } from '../../record/where.ts';
import type { View } from '../../rules/matter.ts';
import { celsiusWords } from '../../rules/scanner/time-words.ts';
import { inWords, scannerWords } from '../../rules/tips/tip-words.ts';
import { type LocalDate, localDateOf } from '../../time/zone.ts';
import { dateReadBack } from '../../words/clock-words.ts';
import { idOf, itemWords, tipsAsRanges } from '../../words/item-words.ts';
import { placeWords } from '../../words/place-words.ts';
import { siteOfEntry } from '../record-rows.ts';

/** Ids, readings and dates that are read back because a slip in them would matter; most kinds need none. */
export function riskyWords(entry: Entry, view: View): readonly string[] {
  const { practice } = view;
  const { fact } = entry;
  switch (fact.kind) {
    case 'fitted':
      return [`tip ${fact.tip} on ${scannerWords(practice, fact.scanner)}`];
    case 'released':
      return [`released: ${inWords(fact.items.map((item) => releasedWords(item, view)))}`];
    case 'load-released':
      return [`released: ${itemWords(practice, `load:${fact.load}`)}${tipsBehind(fact.tips)}`];
    case 'retired':
      return fact.tips === undefined ? [] : [`retired: ${tipsAsRanges(fact.tips)}`];
    case 'added':
      return [`new: ${tipsAsRanges(fact.tips)}, not sterile until a load has passed`];
    case 'temperature': {
      const site = siteOfEntry(practice, entry);
      const at = site === null ? '' : ` at ${placeWords(practice, site, fact.room ?? null)}`;
      return [celsiusWords(fact.celsius) + at];
    }
    default:
      return dayWordsOf(entry, view);
  }
}

/** A release makes nothing sterile but a load's tips: what a tip is now stands behind it. */
function releasedWords(item: Item, { practice, state }: View): string {
  const words = itemWords(practice, item);
  if (item.startsWith('tip:')) {
    const now = state.tips.get(idOf(item))?.state ?? 'sterile';
    return now === 'sterile' ? words : `${words} (${STATES[now] ?? now}, not sterile)`;
  }
  const load = item.startsWith('load:') ? loadMeant(state, idOf(item)) : undefined;
  const sterile = load?.tips.filter((id) => state.tips.get(id)?.sterile?.load === load.key) ?? [];
  return sterile.length === 0 ? words : `${words}, ${tipsAsRanges(sterile)} sterile`;
}

const STATES: Readonly<Record<string, string>> = {
  'in-load': 'in its load',
  fitted: 'on a scanner',
  unknown: 'not known',
};

function tipsBehind(tips: readonly string[] | undefined): string {
  return tips === undefined ? '' : `, ${tipsAsRanges(tips)}`;
}

/** What is to come, or was on another day than it was typed: its date with the weekday. */
function dayWordsOf(entry: Entry, view: View): readonly string[] {
  const { fact } = entry;
  const site = siteOfEntry(view.practice, entry);
  const zone = zoneOf(view.practice, site);
  const read = (date: LocalDate) => dateReadBack(date, view.now, zone);
  const at = whichSites(entry, view);
  switch (fact.kind) {
    case 'booked':
    case 'cancelled':
      return [`${fact.kind}: ${scansWords(fact)} ${read(fact.day)}${timesBehind(fact.times)}${at}`];
    case 'closed':
      return [`closed ${daysWords(fact.days, read)}${at}`];
    case 'hours': {
      const told = [
        ...(fact.open === undefined ? [] : [`open from ${fact.open}`]),
        ...(fact.shut === undefined ? [] : [`shut at ${fact.shut}`]),
      ];
      return [`${read(fact.day)} ${told.join(', ')}${at}`];
    }
    case 'spore-test':
      return fact.ran === undefined || fact.ran === localDateOf(entry.noted, zone)
        ? []
        : [`spore test run ${read(fact.ran)}`];
    default:
      return [];
  }
}

/** Where the record puts a day: bookings at one site, closings and hours at each that the chat room serves. */
function whichSites({ fact, room }: Entry, { practice }: View): string {
  if (practice.sites.length === 1) return '';
  const said = 'site' in fact && fact.site !== undefined ? [fact.site] : sitesOfRoom(practice, room);
  const sites = fact.kind === 'booked' || fact.kind === 'cancelled' ? said.slice(0, 1) : said;
  return sites.length === 0 ? '' : ` at ${inWords(sites.map((id) => placeWords(practice, id, null)))}`;
}

function scansWords({ count, times }: FactOf<'booked'> | FactOf<'cancelled'>): string {
  const number = count ?? times?.length;
  if (number === undefined) return 'scans';
  return number === 1 ? '1 scan' : `${number} scans`;
}

function timesBehind(times: readonly string[] | undefined): string {
  return times === undefined || times.length === 0 ? '' : `, ${inWords(times)}`;
}

/** A stretch of days is told by its ends. */
function daysWords(days: readonly LocalDate[], read: (date: LocalDate) => string): string {
  const first = days[0] ?? '';
  const last = days.at(-1) ?? '';
  return days.length > 3 ? `${read(first)} to ${read(last)}` : inWords(days.map(read));
}
