import { anchoredAt, offset, ordinalTail, placeMatch } from './anchors.ts';
import { decimalNumber } from './mentions/numbers.ts';
import { letterScanner, strangeRoom } from './mentions/places.ts';
import { type Found, matchAt, type Scan, textAt } from './mentions/scan.ts';
import { temperature } from './mentions/temperature.ts';
import { tipsBare } from './mentions/tips.ts';
import type { Part } from './part.ts';
import { entityPart, namedAt, personAt, plainPart } from './part-names.ts';
import type { Match, Sense } from './table.ts';
import type { Clock, TimeSpan } from './times/time-span.ts';

const TO: Sense = { sort: 'glue', tag: 'glue', form: '', ref: '' };

/** "Ok 2 use", "moved lefty 2 op 2": a figure typed for "to". */
function isTo(scan: Scan, at: number): boolean {
  if (
    textAt(scan, at) !== '2' ||
    scan.tokens[at - 1]?.kind !== 'word' ||
    scan.tokens[at + 1]?.kind !== 'word'
  )
    return false;
  if (
    /^(tip|tips|room|surgery|op|surg|and|load|number|no|t|the|s|scanner|at|by|n)$/.test(textAt(scan, at - 1))
  )
    return false;
  const next = matchAt(scan, at + 1);
  if (next === null || textAt(scan, at + 1) === 'to') return false;
  return (
    /^(use|go|be|do|get|calibrate|clean|wipe|send)$/.test(textAt(scan, at + 1)) ||
    next.senses.some((s) => s.tag === 'room' || s.tag === 'site')
  );
}

/** The note as parts: mentions, times, words of the lexicon, marks, and words that nobody knows. */
export function partsOf(scan: Scan, times: readonly TimeSpan[]): Part[] {
  const parts: Part[] = [];
  let nextTime = 0;
  let at = 0;
  while (at < scan.tokens.length) {
    while (nextTime < times.length && (times[nextTime]?.from ?? 0) < at) nextTime++;
    const part = partAt(scan, at, times[nextTime]);
    parts.push(part);
    at = part.to;
  }
  return parts;
}

function partAt(scan: Scan, at: number, time: TimeSpan | undefined): Part {
  if (isTo(scan, at)) return { ...plainPart(scan, at, at + 1, [TO]), text: 'to' };
  const match = ordinalTail(scan, at) ? null : placeMatch(scan, at);
  const anchored = anchoredAt(scan, at, match);
  const barrier = time !== undefined && time.from > at ? time.from : Number.POSITIVE_INFINITY;
  if (anchored !== null && anchored.to <= barrier) return entityPart(scan, at, anchored);
  if (time !== undefined && time.from === at)
    return entityPart(scan, at, { entity: { is: 'time', span: time }, to: time.to });
  const named = namedAt(scan, at, match);
  if (named !== null) return entityPart(scan, at, named, match?.senses);
  const loose =
    letterScanner(scan, at) ??
    strangeRoom(scan, at) ??
    temperature(scan, at) ??
    tipsBare(scan, at) ??
    numberAt(scan, at);
  if (loose !== null && loose.to > (match?.to ?? 0) - 1 && loose.to <= barrier)
    return entityPart(scan, at, loose);
  if (match !== null && match.to <= barrier) {
    const personal = personAt(scan, at, match);
    return personal ?? plainPart(scan, at, match.to, match.senses);
  }
  const short = match === null ? null : shorter(scan, at, barrier);
  if (short !== null) return plainPart(scan, at, short.to, short.senses);
  return plainPart(scan, at, at + 1, []);
}

/** The longest phrase that ends before a time begins. */
function shorter(scan: Scan, at: number, barrier: number): Match | null {
  return scan.table.longest(scan.texts.slice(at, barrier), 0) === null
    ? null
    : offset(scan.table.longest(scan.texts.slice(at, barrier), 0), at);
}

function numberAt(scan: Scan, at: number): Found | null {
  const number = decimalNumber(scan, at);
  if (number === null || number.words) return null;
  const clock = clockOf(number.text);
  if (clock !== null)
    return {
      entity: { is: 'time', span: { from: at, to: number.to, bound: 'at', days: [], clocks: [clock] } },
      to: number.to,
    };
  return { entity: { is: 'number', value: number.value, text: number.text }, to: number.to };
}

/** "9.10", "13.30": two figures after the point are minutes. */
function clockOf(text: string): Clock | null {
  const [, hours, minutes] = /^(\d{1,2})\.([0-5]\d)$/.exec(text) ?? [];
  if (hours === undefined || minutes === undefined || Number(hours) > 23 || Number(hours) < 1) return null;
  const half = Number(hours) > 12 || (hours.length === 2 && hours.startsWith('0')) ? 'known' : 'open';
  return { sort: 'time', hour: Number(hours), minute: Number(minutes), half, about: false };
}
