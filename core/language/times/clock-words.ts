import type { CueStrength } from './cue.ts';
import { beFollows, countedAfter, idBefore } from './guards.ts';
import { meridiemAt, timeOf } from './meridiem.ts';
import { digitsAt, ishAt, numberAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

type Time = Clock & { sort: 'time' };

/** "Half 2", "half past 2", "quarter to nine", "twenty past 3", "ten to nine", "quarter past". */
export function spokenAt(scan: Scan, i: number, cue: CueStrength): Parsed<Time> | null {
  const text = textAt(scan, i);
  if (text === 'half') return halfAt(scan, i);
  if (text === 'a' && textAt(scan, i + 1) === 'quarter') return quarterAt(scan, i + 2);
  if (text === 'quarter' || text === 'qtr') return quarterAt(scan, i + 1);
  return minutesAt(scan, i, cue);
}

/** British "half two" is half past two. */
function halfAt(scan: Scan, i: number): Parsed<Time> | null {
  const past = textAt(scan, i + 1) === 'past' || textAt(scan, i + 1) === 'after';
  const at = past ? i + 2 : i + 1;
  const hour = hourAt(scan, at);
  if (hour !== null && !countedAfter(scan, hour.next)) return withHour(scan, hour, 30, 0);
  if (past && textAt(scan, i + 1) === 'past' && hour === null) return hourless(30, at);
  return null;
}

const PAST = new Set(['past', 'after', 'gone']);
const TO = new Set(['to', 'til', 'till', 'of', 'before']);

function quarterAt(scan: Scan, i: number): Parsed<Time> | null {
  const word = textAt(scan, i);
  const hour = hourAt(scan, i + 1);
  if (hour !== null && countedAfter(scan, hour.next)) return null;
  if (PAST.has(word)) return hour === null ? alone(word === 'past', 15, i + 1) : withHour(scan, hour, 15, 0);
  if (TO.has(word)) return hour === null ? alone(word === 'to', 45, i + 1) : withHour(scan, hour, 45, -1);
  return null;
}

function alone(allowed: boolean, minute: number, next: number): Parsed<Time> | null {
  return allowed ? hourless(minute, next) : null;
}

/** Minutes that people count from the hour without saying "minutes". */
const ROUND = new Set([5, 10, 20, 25]);

function minutesAt(scan: Scan, i: number, cue: CueStrength): Parsed<Time> | null {
  const minutes = numberAt(scan, i);
  if (minutes === null || minutes.value < 1 || minutes.value > 29 || idBefore(scan, i)) return null;
  const said = /^(min|mins|minutes|minute)$/.test(textAt(scan, minutes.next));
  if (!said && !ROUND.has(minutes.value)) return null;
  const at = said ? minutes.next + 1 : minutes.next;
  const word = textAt(scan, at);
  const hour = hourAt(scan, at + 1);
  if (hour !== null && (countedAfter(scan, hour.next) || beFollows(scan, hour.next))) return null;
  if (word === 'past')
    return hour === null ? pastAlone(scan, at, minutes.value) : withHour(scan, hour, minutes.value, 0);
  if (word !== 'to' && word !== 'till' && word !== 'til') return null;
  return toHour(scan, at, { cue, before: minutes.value, plain: !said && digitsAt(scan, i) !== '' }, hour);
}

interface MinutesTo {
  readonly cue: CueStrength;
  readonly before: number;
  /** In figures, without the word "minutes". */
  readonly plain: boolean;
}

/** "10 to 4" may be opening hours or tips 10 to 4; figures need a cue that is not one of a stretch. */
function toHour(scan: Scan, at: number, said: MinutesTo, hour: Parsed<number> | null): Parsed<Time> | null {
  const cued = said.cue === 'strong' || said.cue === 'weak' || said.cue === 'list';
  if (hour === null) return cued && endsAt(scan, at + 1) ? hourless(60 - said.before, at + 1) : null;
  // "Wiped blue 10 to 3": no row of ids runs down.
  const down =
    said.cue === 'none' &&
    said.before > hour.value &&
    !/^(from|moved|move|took|between|and|to|,|&)$/.test(textAt(scan, at - 2));
  if (said.cue === 'range' || (said.plain && !cued && !down)) return null;
  return withHour(scan, hour, 60 - said.before, -1);
}

/** "20 past": the hour goes unsaid, so the word must end there. */
function pastAlone(scan: Scan, at: number, minute: number): Parsed<Time> | null {
  return /^(it|the|best|due)$/.test(textAt(scan, at + 1)) ? null : hourless(minute, at + 1);
}

function endsAt(scan: Scan, i: number): boolean {
  const token = scan.tokens[i];
  return token === undefined || token.kind === 'mark';
}

function hourAt(scan: Scan, i: number): Parsed<number> | null {
  const hour = numberAt(scan, i) ?? ishAt(scan, i);
  if (hour === null || hour.value < 1 || hour.value > 12) return noonAt(scan, i);
  return hour;
}

function noonAt(scan: Scan, i: number): Parsed<number> | null {
  const text = textAt(scan, i);
  return text === 'noon' || text === 'midday' ? { value: 12, next: i + 1 } : null;
}

function withHour(scan: Scan, hour: Parsed<number>, minute: number, shift: number): Parsed<Time> | null {
  const clock = /^o'?clock$/.test(textAt(scan, hour.next)) ? hour.next + 1 : hour.next;
  const meridiem = meridiemAt(scan, clock);
  const before = ((hour.value + shift + 11) % 12) + 1;
  const next = meridiem?.next ?? clock;
  if (meridiem === null || shift === 0) {
    const value = timeOf(before, minute, meridiem?.value ?? null);
    return value === null ? null : { value, next };
  }
  // "Quarter to twelve pm" is 11:45 of the morning: the half belongs to the hour that was said.
  const said = timeOf(hour.value, 0, meridiem.value);
  if (said === null || said.hour === null) return null;
  return { value: { ...said, hour: (said.hour + 23) % 24, minute }, next };
}

function hourless(minute: number, next: number): Parsed<Time> {
  return { value: { sort: 'time', hour: null, minute, half: 'open', about: false }, next };
}
