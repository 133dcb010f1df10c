import { endOfTag, type Scan, textAt } from './scan.ts';
import { type IdSaid, idAt } from './tip-id.ts';

const RANGES = new Set(['-', 'to', 'thru', 'through', 'til', 'till', 'until', '--', 'upto', 'tru']);

/** More ids than this are no list that anybody types. */
export const LONGEST_RANGE = 200;

/** One id, or a stretch of them ("3-6", "one thru four"); `dashes`: whether a dash set apart makes one. */
export function rangeAt(
  scan: Scan,
  at: number,
  words: boolean,
  dashes = true,
): { said: IdSaid[]; to: number } | null {
  const first = idAt(scan, at, words);
  if (first === null) return null;
  const joint =
    textAt(scan, first.to) === 'up' && textAt(scan, first.to + 1) === 'to' ? first.to + 1 : first.to;
  const apart = !dashes && /^--?$/.test(textAt(scan, joint)) && scan.tokens[joint]?.spaced === true;
  if (apart || !RANGES.has(textAt(scan, joint))) return { said: [first], to: first.to };
  const noun = endOfTag(scan, joint + 1, 'tip');
  const last = idAt(scan, noun > 0 ? noun : joint + 1, words);
  const start = Number(first.digits);
  const end = last === null ? Number.NaN : Number(last.digits);
  const sameLetters = last !== null && (last.letters === first.letters || last.letters === '');
  if (last === null || !sameLetters || !(end > start) || end - start > LONGEST_RANGE)
    return { said: [first], to: first.to };
  const said = Array.from({ length: end - start + 1 }, (_, i) => ({ ...first, digits: String(start + i) }));
  return { said, to: last.to };
}
