import { unitAt } from './cycles.ts';
import { decimalNumber, type NumberSaid } from './numbers.ts';
import { endOfTag, type Finder, glued, isNumber, type Scan, textAt } from './scan.ts';

/** Air where a scanner stands is never outside these: beyond them the number is something else, or a slip. */
const COLDEST = -10;
const HOTTEST = 50;

/** "17.5", "17 degrees", "64F", "it's 19½ C". A number with neither fraction nor unit is left to the frames. */
export const temperature: Finder = (scan, from) => {
  const minus = textAt(scan, from) === '-' || textAt(scan, from) === 'minus' ? 1 : 0;
  if (minus === 1 && !isNumber(scan, from + 1)) return null;
  const number = decimalNumber(scan, from + minus);
  if (number === null) return null;
  const unit = fahrenheitApart(scan, number)
    ? ({ letter: 'f', to: number.to + 1 } as const)
    : unitAt(scan, number.to);
  const said = unit.to > number.to;
  if (!said && (minus === 1 || !hasFraction(scan, from, number))) return null;
  const half = halfAfter(scan, said ? unit.to : -1);
  const value = (minus === 1 ? -number.value : number.value) + (half > 0 ? 0.5 : 0);
  const celsius = toCelsius(value, unit.letter);
  if (celsius < COLDEST || celsius > HOTTEST) return null;
  const spacedC = !said && textAt(scan, number.to) === 'c' && !glued(scan, number.to);
  return {
    entity: { is: 'celsius', value: celsius, unit: said },
    to: half > 0 ? half : spacedC ? unit.to + 1 : unit.to,
  };
};

/** "17.5" with one figure after the point is a temperature; "24,5" only where one is spoken of. */
function hasFraction(scan: Scan, from: number, number: NumberSaid): boolean {
  const fraction = /^\d+\.\d$/.test(number.text) && !/^(:|am|pm)$/.test(textAt(scan, number.to));
  return fraction && (textAt(scan, from + 1) !== ',' || temperatureNear(scan, from));
}

/** "64 F": the letter may stand apart where the number can be a room's. */
function fahrenheitApart(scan: Scan, number: NumberSaid): boolean {
  return (
    textAt(scan, number.to) === 'f' &&
    number.value >= 40 &&
    number.value < 115 &&
    !/^(to|and|for)$/.test(textAt(scan, number.to + 1))
  );
}

/** "Temperature of surgery is 24,5": a comma is a point where a temperature is spoken of. */
function temperatureNear(scan: Scan, at: number): boolean {
  for (let i = at - 1; i >= 0 && i >= at - 7; i--) if (endOfTag(scan, i, 'temp') > 0) return true;
  return false;
}

/** "16 degrees and half": past the half, −1 where none is said. */
function halfAfter(scan: Scan, at: number): number {
  if (at < 0 || textAt(scan, at) !== 'and') return -1;
  const half = textAt(scan, at + 1) === 'a' ? at + 2 : at + 1;
  return textAt(scan, half) === 'half' ? half + 1 : -1;
}

/** One decimal, as the record keeps it; above 50 with no letter it can only be Fahrenheit. */
export function toCelsius(value: number, letter: 'c' | 'f' | ''): number {
  const hot = letter === 'f' || (letter === '' && value > HOTTEST && value < 115);
  return Math.round((hot ? ((value - 32) * 5) / 9 : value) * 10) / 10;
}
