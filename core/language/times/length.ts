import { phraseEnd, phraseTable } from './phrases.ts';
import { digitsAt, gluedAt, numberAt, type Parsed, type Scan, textAt } from './scan.ts';
import { UNITS } from './words.ts';

/** A length of time in minutes: "20 min", "an hour and a half", "half an hour", "1.5 hours", "1h20", "a couple of hours". */
export function lengthAt(scan: Scan, i: number): Parsed<number> | null {
  return fractionAt(scan, i) ?? countedLengthAt(scan, i);
}

function fractionAt(scan: Scan, i: number): Parsed<number> | null {
  const start = textAt(scan, i) === 'a' ? i + 1 : i;
  const word = textAt(scan, start);
  let at = start + 1;
  let share = 0;
  if (word === 'half' || word === '½') share = 0.5;
  else if (word === '1' && gluedAt(scan, start + 1) === '/' && gluedAt(scan, start + 2) === '2') {
    share = 0.5;
    at = start + 3;
  } else if (word === 'quarter') share = 0.25;
  else if (textAt(scan, i) === 'three' && textAt(scan, i + 1) === 'quarters') {
    share = 0.75;
    at = i + 2;
  } else return null;
  if (textAt(scan, at) === 'of') at++;
  if (/^(an?|-)$/.test(textAt(scan, at))) at++;
  const unit = textAt(scan, at);
  return unit === 'hour' || unit === 'hr' ? { value: share * 60, next: at + 1 } : null;
}

function countedLengthAt(scan: Scan, i: number): Parsed<number> | null {
  const count = amountAt(scan, i);
  if (count === null) return null;
  // "An hour and a half"; "an hour or two".
  const bare = textAt(scan, count.next);
  const size = UNITS.get(bare);
  if (
    size === undefined ||
    (bare.length === 1 && gluedAt(scan, count.next) === '' && bare !== 'h' && bare !== 'm')
  )
    return null;
  let value = count.value * size;
  let next = count.next + 1;
  if (size === 60) {
    const half = phraseEnd(scan, next, HALF_MORE);
    const quarter = phraseEnd(scan, next, QUARTER_MORE);
    if (half > 0) return { value: value + 30, next: half };
    if (quarter > 0) return { value: value + 15, next: quarter };
    const more = moreMinutes(scan, next);
    if (more !== null) {
      value += more.value;
      next = more.next;
    }
  }
  return { value, next };
}

const HALF_MORE = phraseTable('and a half | and half | n a half | & a half');
const QUARTER_MORE = phraseTable('and a quarter');

/** "1h20", "1 hr 20 min", "2 hours and ten minutes". */
function moreMinutes(scan: Scan, i: number): Parsed<number> | null {
  const at = textAt(scan, i) === 'and' ? i + 1 : i;
  const count = numberAt(scan, at);
  if (count === null || count.value > 59) return null;
  if (UNITS.get(textAt(scan, count.next)) === 1) return { value: count.value, next: count.next + 1 };
  return at === i && /^\d\d$/.test(gluedAt(scan, i)) ? count : null;
}

/** How many: "20", "1.5", "2 and a half", "a", "a couple of", "a few" (taken as three), "several" (five). */
function amountAt(scan: Scan, i: number): Parsed<number> | null {
  const start = /^(a|an|the)$/.test(textAt(scan, i)) ? i + 1 : i;
  const word = textAt(scan, start);
  if (word === 'couple' || word === 'cpl')
    return { value: 2, next: textAt(scan, start + 1) === 'of' ? start + 2 : start + 1 };
  if (word === 'few') return { value: 3, next: start + 1 };
  if (word === 'several') return { value: 5, next: start + 1 };
  if (start > i) return { value: 1, next: start };
  const whole = numberAt(scan, i);
  if (whole === null)
    return UNITS.get(textAt(scan, i)) === 60 && textAt(scan, i).length > 1 ? { value: 1, next: i } : null;
  const fraction = gluedAt(scan, whole.next) === '.' ? digitsAt(scan, whole.next + 1) : '';
  if (fraction !== '') return { value: Number(`${whole.value}.${fraction}`), next: whole.next + 2 };
  const half = phraseEnd(scan, whole.next, HALF_MORE);
  return half > 0 ? { value: whole.value + 0.5, next: half } : whole;
}
