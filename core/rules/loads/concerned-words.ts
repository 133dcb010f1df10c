import type { Practice } from '../../practice/practice.ts';
import { zoneOf } from '../../record/where.ts';
import type { Instant } from '../../time/instant.ts';
import { clockWords } from '../../words/clock-words.ts';
import type { Line, Message } from '../../words/message.ts';
import { lines } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import { placeWords } from '../../words/place-words.ts';
import { scannerWords } from '../tips/tip-words.ts';
import type { Concerned } from './look-back.ts';

interface WordsView {
  readonly practice: Practice;
  readonly now: Instant;
}

/** Far more than one load's tips meet before their next load; a recall of many loads is cut here and counted. */
const LISTED = 60;

/** "3 scans", "1 scan and 1 fitting with no scan noted". */
export function concernedCount(concerned: readonly Concerned[]): string {
  const scans = concerned.filter(({ what }) => what === 'scan').length;
  const fittings = concerned.length - scans;
  const scansInWords = scans === 1 ? '1 scan' : `${scans} scans`;
  if (fittings === 0) return scansInWords;
  const fitted = `${fittings} fitting${fittings === 1 ? '' : 's'} with no scan noted`;
  return scans === 0 ? fitted : `${scansInWords} and ${fitted}`;
}

/** Every scan concerned, one line each, in the order given: local time, scanner, room, tip, who noted it. */
export function concernedList(view: WordsView, concerned: readonly Concerned[]): Message {
  const points = concerned.slice(0, LISTED).map((each): Line => [concernedLine(view, each)]);
  const more = concerned.length - LISTED;
  return [{ points }, ...(more > 0 ? lines(`And ${more} earlier. Ask for the record for all of them.`) : [])];
}

function concernedLine({ practice, now }: WordsView, each: Concerned): string {
  const { mark, scanner, site, room, tip, what } = each;
  const zone = zoneOf(practice, site);
  const at = clockWords(mark.at, now, zone);
  const when = mark.earliest < mark.at ? `between ${clockWords(mark.earliest, now, zone)} and ${at}` : at;
  const where = site === null ? 'place not noted' : placeWords(practice, site, room);
  const on = scanner === null ? 'scanner not noted' : scannerWords(practice, scanner);
  const by = mark.by === null ? '' : ` (${nameOf(practice, mark.by)})`;
  return `${when}, ${on}, ${where}: tip ${tip}${what === 'fitting' ? ' fitted, no scan noted' : ''}${by}`;
}
