import { decimalNumber, longNumber, wholeNumber } from './numbers.ts';
import { endOfTag, type Finder, type Found, glued, isNumber, type Scan, textAt } from './scan.ts';

const HOLDS = new Set(['for', 'time', 'x', '@', '/', 'at', ',', 'held', '×', 'and']);

/** What the autoclave ran: "134 for 3.5 min", "134°C, 3.5 minutes", "3 and a half minutes at 134", "273F for 4". */
export const cycles: Finder = (scan, from) => {
  const first = spokenHeat(scan, from) ?? decimalNumber(scan, from);
  if (first === null) return null;
  const heat = degreesOf(scan, first.value, first.to);
  if (heat !== null) return heldFor(scan, heat, from);
  const minutes = minutesOf(scan, first.value, first.to, false);
  if (minutes === null || !/^(at|@)$/.test(textAt(scan, minutes.to))) return null;
  const other = spokenHeat(scan, minutes.to + 1) ?? decimalNumber(scan, minutes.to + 1);
  const then = other === null ? null : degreesOf(scan, other.value, other.to);
  if (then === null) return null;
  return { entity: { is: 'cycle', celsius: then.celsius, minutes: minutes.value }, to: then.to };
};

/** "One three four", "one thirty four", "a hundred and thirty four": a band of an autoclave as it is dictated. */
function spokenHeat(scan: Scan, from: number): { value: number; to: number } | null {
  const at = textAt(scan, from) === 'a' && textAt(scan, from + 1) === 'hundred' ? from + 1 : from;
  if (at > from) {
    const and = textAt(scan, at + 1) === 'and' ? at + 2 : at + 1;
    const rest = wholeNumber(scan, and);
    return rest?.words && rest.value < 100 ? { value: 100 + rest.value, to: rest.to } : null;
  }
  if (isNumber(scan, at)) return null;
  const number = longNumber(scan, at);
  return number !== null && /^(12[1-9]|13[2-7])$/.test(number.text) ? number : null;
}

interface Heat {
  readonly celsius: number;
  readonly to: number;
  readonly unit: boolean;
}

/** How long a temperature was held, where that is said; the temperature alone only with its unit. */
function heldFor(scan: Scan, heat: Heat, from: number): Found | null {
  let at = heat.to;
  while (HOLDS.has(textAt(scan, at)) && at < heat.to + 2) at++;
  const hold = decimalNumber(scan, at);
  const before = textAt(scan, at - 1);
  const bare = at > heat.to ? before !== ',' && before !== 'and' : hold?.text.includes('.') === true;
  const minutes = hold === null ? null : minutesOf(scan, hold.value, hold.to, bare);
  if (minutes !== null)
    return { entity: { is: 'cycle', celsius: heat.celsius, minutes: minutes.value }, to: minutes.to };
  return heat.unit || printed(scan, from)
    ? { entity: { is: 'cycle', celsius: heat.celsius }, to: heat.to }
    : null;
}

/** "Printout says 131.8", "peaked at 134.6": a figure with a decimal behind such a word needs no unit. */
function printed(scan: Scan, from: number): boolean {
  if (!/^\d+\.\d/.test(decimalNumber(scan, from)?.text ?? '')) return false;
  for (let at = from - 1; at >= Math.max(0, from - 3); at--)
    if (
      /^(says|said|reads|read|reading|shows|showed|printout|print|peak|peaked|max|reached|hit|got|topped)$/.test(
        textAt(scan, at),
      )
    )
      return true;
  return false;
}

function degreesOf(scan: Scan, value: number, at: number): Heat | null {
  const unit = spacedUnit(scan, at) ?? unitAt(scan, at);
  const fahrenheit = unit.letter === 'f' || (unit.letter !== 'c' && value >= 245 && value <= 290);
  const celsius = fahrenheit ? Math.round(((value - 32) * 50) / 9) / 10 : value;
  return celsius >= 105 && celsius <= 145 ? { celsius, to: unit.to, unit: unit.to > at } : null;
}

/** "270 F": above a hundred the letter may stand apart. */
function spacedUnit(scan: Scan, at: number): { letter: 'c' | 'f'; to: number } | null {
  const letter = textAt(scan, at);
  return letter === 'c' || letter === 'f' ? { letter, to: at + 1 } : null;
}

/** Past "°C", "degrees", "C" and which it is. */
export function unitAt(scan: Scan, at: number): { letter: 'c' | 'f' | ''; to: number } {
  let to = at;
  if (textAt(scan, to) === '°' || textAt(scan, to) === 'º') to++;
  const noun = endOfTag(scan, to, 'degree');
  const hot = endOfTag(scan, to, 'fahrenheit');
  if (hot > 0) return { letter: 'f', to: hot };
  if (noun > 0) to = noun;
  const letter = textAt(scan, to);
  const next = textAt(scan, to + 1);
  if ((letter === 'c' || letter === 'f') && next !== "'s" && (glued(scan, to) || noun > 0 || to > at))
    return { letter, to: to + 1 };
  if (noun > 0 && /^(c|celsius|centigrade)/.test(textAt(scan, noun - 1))) return { letter: 'c', to };
  return { letter: '', to };
}

function minutesOf(
  scan: Scan,
  value: number,
  at: number,
  bare: boolean,
): { value: number; to: number } | null {
  const noun = endOfTag(scan, at, 'minute');
  if (noun > 0) return withSeconds(scan, value, noun);
  if (textAt(scan, at) === 'm' && glued(scan, at)) return { value, to: at + 1 };
  return bare && value > 0 && value <= 60 ? { value, to: at } : null;
}

/** "3 min 15", "3 minutes 30 seconds". */
function withSeconds(scan: Scan, value: number, at: number): { value: number; to: number } {
  const seconds = Number.isInteger(value) ? decimalNumber(scan, at) : null;
  if (seconds === null || seconds.words || !Number.isInteger(seconds.value)) return { value, to: at };
  const unit = /^(s|sec|secs|second|seconds)$/.test(textAt(scan, seconds.to));
  const alone = /^([,.;]|)$/.test(textAt(scan, seconds.to)) && seconds.value % 5 === 0;
  if (seconds.value > 59 || seconds.value < 1 || !(unit || alone)) return { value, to: at };
  return { value: value + seconds.value / 60, to: unit ? seconds.to + 1 : seconds.to };
}
