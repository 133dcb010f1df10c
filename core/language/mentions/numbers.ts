import { numberWord } from '../lexicon/words.ts';
import { glued, isNumber, type Scan, textAt } from './scan.ts';

export interface NumberSaid {
  readonly value: number;
  readonly text: string;
  readonly to: number;
  readonly words: boolean;
}

/** A whole number in figures or in words up to ninety-nine. */
export function wholeNumber(scan: Scan, at: number): NumberSaid | null {
  if (isNumber(scan, at)) {
    const text = textAt(scan, at);
    return text.length > 9 ? null : { value: Number(text), text, to: at + 1, words: false };
  }
  const value = numberWord(textAt(scan, at));
  if (value === undefined) return null;
  if (value > 0 && value < 10 && textAt(scan, at + 1) === 'hundred') return hundreds(scan, at, value);
  if (value >= 20) {
    const dash = textAt(scan, at + 1) === '-' ? at + 2 : at + 1;
    const ones = numberWord(textAt(scan, dash));
    if (ones !== undefined && ones > 0 && ones < 10) {
      return { value: value + ones, text: String(value + ones), to: dash + 1, words: true };
    }
  }
  return { value, text: String(value), to: at + 1, words: true };
}

/** "One hundred and thirty four". */
function hundreds(scan: Scan, at: number, value: number): NumberSaid {
  const and = textAt(scan, at + 2) === 'and' ? at + 3 : at + 2;
  const rest = isNumber(scan, and) ? null : wholeNumber(scan, and);
  const total = value * 100 + (rest !== null && rest.value < 100 ? rest.value : 0);
  return {
    value: total,
    text: String(total),
    to: rest !== null && rest.value < 100 ? rest.to : at + 2,
    words: true,
  };
}

/** A number that may have a fraction: "17.5", "17,5", "seventeen point five", "3 and a half", "3½". */
export function decimalNumber(scan: Scan, at: number): NumberSaid | null {
  const whole = wholeNumber(scan, at);
  if (whole === null) return null;
  const next = textAt(scan, whole.to);
  if (
    (next === '.' || next === ',') &&
    glued(scan, whole.to) &&
    isNumber(scan, whole.to + 1) &&
    glued(scan, whole.to + 1)
  ) {
    const text = `${whole.text}.${textAt(scan, whole.to + 1)}`;
    return { value: Number(text), text, to: whole.to + 2, words: false };
  }
  if (next === 'point' || next === 'pt') {
    const part = wholeNumber(scan, whole.to + 1);
    if (part !== null && part.value < 10) {
      const text = `${whole.text}.${part.text}`;
      return { value: Number(text), text, to: part.to, words: true };
    }
  }
  if (next === '½')
    return { value: whole.value + 0.5, text: `${whole.value}.5`, to: whole.to + 1, words: false };
  if (next === 'and' && textAt(scan, whole.to + 1) === 'a' && textAt(scan, whole.to + 2) === 'half') {
    return { value: whole.value + 0.5, text: `${whole.value}.5`, to: whole.to + 3, words: true };
  }
  return whole;
}

const UNITS = new Set(
  "min mins minute minutes sec secs second seconds hour hours hr hrs day days week weeks month months year years degree degrees deg degs celsius percent per cent % ° times am pm oclock o'clock st nd rd th ish".split(
    ' ',
  ),
);
const COUNTED = new Set(
  'c f scan scans patient patients pt pts px people bookings appointments appts uses goes cycles loads more of quid pounds litres ml mm cm kg packs boxes rooms surgeries scanners tips sites pouches bar left staff nurses chairs sets new old spare extra other others'.split(
    ' ',
  ),
);

/** True where what follows shows the number to be a count, a measure or a time, not an id. */
export function isMeasured(scan: Scan, to: number, named = false): boolean {
  const next = textAt(scan, to);
  // "1 to 6 bar 4" leaves one out; "2.2 bar" is a pressure.
  if (next === 'bar' && (isNumber(scan, to + 1) || /^(tips?|the|number)$/.test(textAt(scan, to + 1))))
    return false;
  if (UNITS.has(next) || (!named && COUNTED.has(next))) return true;
  if (next === ':' || next === '.') return glued(scan, to) && isNumber(scan, to + 1) && glued(scan, to + 1);
  return false;
}

/** The number of a load as people say it: "118", "one one eight", "one eighteen", "one hundred and eighteen". */
export function longNumber(scan: Scan, at: number): NumberSaid | null {
  if (isNumber(scan, at)) return wholeNumber(scan, at);
  let digits = '';
  let to = at;
  while (digits.length < 6) {
    const part = spokenDigits(scan, to, digits !== '');
    if (part === null) break;
    digits += part.text;
    to = part.to;
  }
  return digits === '' ? null : { value: Number(digits), text: digits, to, words: true };
}

/** The next figures of a number that is spelt out; "oh" is one inside it. */
function spokenDigits(scan: Scan, at: number, inside: boolean): { text: string; to: number } | null {
  const word = textAt(scan, at);
  if (inside && (word === 'oh' || word === 'o')) return { text: '0', to: at + 1 };
  return isNumber(scan, at) ? null : wholeNumber(scan, at);
}
