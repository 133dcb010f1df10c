import { unitAt } from './loads.ts';
import { decimalNumber } from './numbers.ts';
import { type Finder, glued, isNumber, textAt } from './scan.ts';

/** Air where a scanner stands is never outside these: beyond them the number is something else, or a slip. */
const COLDEST = -10;
const HOTTEST = 50;

/** "17.5", "17 degrees", "64F", "it's 19½ C". A number with neither fraction nor unit is left to the frames. */
export const temperature: Finder = (scan, from) => {
  const minus = textAt(scan, from) === '-' || textAt(scan, from) === 'minus' ? 1 : 0;
  if (minus === 1 && !isNumber(scan, from + 1)) return null;
  const number = decimalNumber(scan, from + minus);
  if (number === null) return null;
  const apart =
    /^f$/.test(textAt(scan, number.to)) &&
    number.value >= 40 &&
    number.value < 115 &&
    !/^(to|and|for)$/.test(textAt(scan, number.to + 1));
  const unit = apart ? ({ letter: 'f', to: number.to + 1 } as const) : unitAt(scan, number.to);
  const fraction = /^\d+\.\d$/.test(number.text) && !/^(:|am|pm)$/.test(textAt(scan, number.to));
  const spacedC =
    unit.to === number.to && textAt(scan, number.to) === 'c' && !glued(scan, number.to) && fraction;
  if (unit.to === number.to && (!fraction || textAt(scan, from + minus + 1) === ',')) return null;
  if (minus === 1 && unit.to === number.to) return null;
  const value = minus === 1 ? -number.value : number.value;
  const celsius = toCelsius(value, unit.letter);
  if (celsius < COLDEST || celsius > HOTTEST) return null;
  return {
    entity: { is: 'celsius', value: celsius, unit: unit.to > number.to },
    to: spacedC ? unit.to + 1 : unit.to,
  };
};

/** One decimal, as the record keeps it; above 50 with no letter it can only be Fahrenheit. */
export function toCelsius(value: number, letter: 'c' | 'f' | ''): number {
  const hot = letter === 'f' || (letter === '' && value > HOTTEST && value < 115);
  return Math.round((hot ? ((value - 32) * 5) / 9 : value) * 10) / 10;
}
