import { HOURS, packedAt } from './clock-packed.ts';
import type { CueStrength } from './cue.ts';
import { beFollows, countedAfter, idBefore, mayFollow, measuredAfter } from './guards.ts';
import { timedBefore } from './head.ts';
import { meridiemAt, timeOf } from './meridiem.ts';
import { digitsAt, gluedAt, ishAt, numberAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Clock } from './time-span.ts';

type Time = Clock & { sort: 'time' };

/** A clock time in figures, or an hour in words: "14:05", "10.30", "1030", "10h30", "2pm", "9 o'clock", "at 9", "ten thirty". */
export function digitalAt(scan: Scan, i: number, cue: CueStrength): Parsed<Time> | null {
  const digits = digitsAt(scan, i);
  if (cue === 'none' && idBefore(scan, i)) return null;
  if (digits === '') return wordsAt(scan, i, cue);
  if (digits.length > 2) return packedAt(scan, i, digits, cue);
  return (
    separatedAt(scan, i, digits, cue) ?? hourAt(scan, i, Number(digits), i + 1, cue, digits.startsWith('0'))
  );
}

/** "14:05", "10.30", "10h30". A dot or a comma-free pair alone may be a measure, so it needs a cue or am/pm. */
function separatedAt(scan: Scan, i: number, digits: string, cue: CueStrength): Parsed<Time> | null {
  const mark = gluedAt(scan, i + 1);
  if (mark !== ':' && mark !== '.' && mark !== 'h' && mark !== ';') return null;
  const minutes = gluedAt(scan, i + 2);
  if (!/^\d\d$/.test(minutes)) return null;
  let next = i + 3;
  if (mark === ':' && gluedAt(scan, next) === ':' && /^\d\d$/.test(gluedAt(scan, next + 1))) next += 2;
  if (gluedAt(scan, next) === mark && /^\d+$/.test(gluedAt(scan, next + 1))) return null;
  const meridiem = meridiemAt(scan, next);
  if (meridiem === null && measuredAfter(scan, next) && !HOURS.has(textAt(scan, next))) return null;
  const plain = (mark === '.' || mark === ';') && cue === 'none' && meridiem === null;
  if (plain && !digits.startsWith('0') && !timedBefore(scan, i, next)) return null;
  const value = timeOf(Number(digits), Number(minutes), meridiem?.value ?? null, digits.startsWith('0'));
  if (value === null) return neverAt(scan, digits, minutes, next, cue, mark);
  const end = meridiem?.next ?? next;
  return { value, next: HOURS.has(textAt(scan, end)) ? end + 1 : end };
}

/** "At 27.15", "at 25:10": a time that there is not; it is asked about. */
function neverAt(
  scan: Scan,
  digits: string,
  minutes: string,
  next: number,
  cue: CueStrength,
  mark: string,
): Parsed<Time> | null {
  const ends = scan.tokens[next]?.kind !== 'word' || mayFollow(scan, next);
  if (cue !== 'strong' || digits.length !== 2 || !/^[:.]$/.test(mark) || !ends) return null;
  if (measuredAfter(scan, next)) return null;
  const clock = { hour: Number(digits), minute: Number(minutes), half: 'known', about: false } as const;
  return { value: { sort: 'time', ...clock, never: true }, next };
}

/** "ten", "ten thirty", "nine oh five", "two o'clock". */
function wordsAt(scan: Scan, i: number, cue: CueStrength): Parsed<Time> | null {
  const hour = numberAt(scan, i) ?? ishAt(scan, i);
  if (hour === null || hour.value > 12) return null;
  if (textAt(scan, i).endsWith('ish')) return madeAbout(timeOf(hour.value, 0, null), hour.next);
  const oh = textAt(scan, hour.next) === 'oh' ? hour.next + 1 : hour.next;
  const minute = textAt(scan, hour.next) === '-' ? null : numberAt(scan, oh);
  const spoken = minute !== null && digitsAt(scan, oh) === '' && (minute.value >= 10 || oh > hour.next);
  if (spoken && minute !== null) {
    const meridiem = meridiemAt(scan, minute.next);
    const counted = countedAfter(scan, minute.next);
    if ((cue !== 'none' && cue !== 'evident' && !counted) || meridiem !== null) {
      const value = timeOf(hour.value, minute.value, meridiem?.value ?? null);
      return value === null ? null : { value, next: meridiem?.next ?? minute.next };
    }
  }
  return hourAt(scan, i, hour.value, hour.next, cue, false);
}

/** An hour alone: "2pm", "9 o'clock", "14h"; bare only after a cue that allows it. */
function hourAt(
  scan: Scan,
  i: number,
  hour: number,
  next: number,
  cue: CueStrength,
  leadingZero: boolean,
): Parsed<Time> | null {
  const meridiem = meridiemAt(scan, next);
  if (meridiem !== null) return made(timeOf(hour, 0, meridiem.value), meridiem.next);
  const clock = oclockAt(scan, next);
  if (clock > 0) {
    const after = meridiemAt(scan, clock);
    return made(timeOf(hour, 0, after?.value ?? null, leadingZero), after?.next ?? clock);
  }
  if (gluedAt(scan, next) === 'ish' && hour >= 1 && hour <= 12 && !countedAfter(scan, next + 1))
    return made(timeOf(hour, 0, null), next);
  // "Used 3 this morning" speaks of tip 3.
  const tip = textAt(scan, next) === 'this' && TAKES_TIP.test(textAt(scan, i - 1));
  if (halfOfDayAt(scan, next) && hour >= 1 && hour <= 12 && !tip && !idBefore(scan, i))
    return made(timeOf(hour, 0, null), next);
  if (cue === 'none' || cue === 'evident') return null;
  if (gluedAt(scan, next) === 'h' && cue === 'strong')
    return made(timeOf(hour, 0, null, leadingZero), next + 1);
  if (hour > 12 && hour < 24 && headsPlan(scan, i, next)) return made(timeOf(hour, 0, null), next);
  if (hour < 1 || hour > 12 || !bareAllowed(scan, i, next, cue)) return null;
  return made(timeOf(hour, 0, null, leadingZero), next);
}

const TAKES_TIP =
  /^(used|use|washed|bagged|pouched|sent|scrubbed|rinsed|dropped|binned|lost|found|fitted|put|took|removed|checked|inspected|cleaned|autoclaved|wash|bag|retired)$/;

/** "At 16 I will calibrate": at the head of a note, with who does it after it, no room and no tip. */
function headsPlan(scan: Scan, i: number, next: number): boolean {
  const before = scan.tokens[i - 2];
  return (
    textAt(scan, i - 1) === 'at' &&
    (before === undefined || before.kind === 'mark') &&
    /^(i|we|i'll|we'll|ill|i'm|we're)$/.test(textAt(scan, next))
  );
}

/** "9 in the morning", "8 tonight": the part of the day makes the number an hour. */
function halfOfDayAt(scan: Scan, i: number): boolean {
  const text = textAt(scan, i);
  if (text === 'tonight' || text === 'tonite') return true;
  if (text === 'at') return textAt(scan, i + 1) === 'night';
  if (text === 'this') return /^(morning|afternoon|evening|arvo)$/.test(textAt(scan, i + 1));
  return (
    text === 'in' &&
    textAt(scan, i + 1) === 'the' &&
    /^(morning|afternoon|evening|arvo)$/.test(textAt(scan, i + 2))
  );
}

function bareAllowed(scan: Scan, i: number, next: number, cue: CueStrength): boolean {
  if (countedAfter(scan, next, cue === 'strong')) return false;
  if (gluedAt(scan, next) !== '' && !/^[,.;:!?)\-'"\n]/.test(gluedAt(scan, next))) return false;
  // "At one end", "about one in five".
  if (textAt(scan, i) === 'one' && (cue === 'weak' || !mayFollow(scan, next))) return false;
  if (cue === 'list') return !beFollows(scan, next) && mayFollow(scan, next);
  if (cue === 'range') return mayFollow(scan, next) || !/^\d/.test(textAt(scan, i));
  return cue === 'strong' || (mayFollow(scan, next) && !beFollows(scan, next));
}

function oclockAt(scan: Scan, i: number): number {
  const text = textAt(scan, i);
  if (text === "o'clock" || text === 'oclock' || text === "o'clocks") return i + 1;
  if (text === 'sharp') return i + 1;
  if (text === 'on' && textAt(scan, i + 1) === 'the' && textAt(scan, i + 2) === 'dot') return i + 3;
  return text === 'o' && textAt(scan, i + 1) === 'clock' ? i + 2 : 0;
}

function madeAbout(value: Time | null, next: number): Parsed<Time> | null {
  return value === null ? null : { value: { ...value, about: true }, next };
}

function made(value: Time | null, next: number): Parsed<Time> | null {
  return value === null ? null : { value, next };
}
