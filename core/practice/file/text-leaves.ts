import { z } from 'zod';
import { expandTips, isId } from '../expand-tips.ts';
import { leaf, type Say, shown } from './leaf.ts';
import { nearest } from './nearest.ts';

/** One text that must be there. `example` shows what would be right. */
export function text(example: string) {
  return leaf((value, say) => {
    if (typeof value === 'string' && value !== '') return value;
    say(value === undefined ? 'it is missing' : `${shown(value)} where one text belongs`, example);
    return '';
  });
}

/** One text that may be left out. */
export const maybeText = leaf((value, say) => {
  if (value === undefined || (typeof value === 'string' && value !== '')) return value;
  say(`${shown(value)} where one text belongs`, 'one text, or leave the key out');
  return undefined;
});

export function id(example: string) {
  return leaf((value, say) => {
    if (typeof value === 'string' && isId(value)) return value;
    const wrong = value === undefined ? 'it is missing' : `${shown(value)} cannot be an id`;
    say(wrong, `letters and numbers without blanks, such as ${example}`);
    return '';
  });
}

/** A list of texts; a single text is a list of one. With `commas`, `main, quay` is two. */
export function texts(commas: 'commas' | 'whole') {
  return leaf((value, say): readonly string[] => {
    if (value === undefined) return [];
    if (typeof value === 'string') {
      return commas === 'commas' ? value.split(/\s*,\s*/).filter((part) => part !== '') : [value];
    }
    if (!Array.isArray(value)) {
      say(`${shown(value)} where a list of texts belongs`, '[one, two]');
      return [];
    }
    return value.filter((entry: unknown, index): entry is string => {
      if (typeof entry === 'string' && entry !== '') return true;
      say(`${shown(entry)} in a list of texts`, 'a text, or take the entry out', [index]);
      return false;
    });
  });
}

interface Bounds {
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
}

/** A number within bounds (both allowed); `fallback` where the key is left out. */
export function number<F extends number | null>(fallback: F, bounds: Bounds) {
  return leaf((value, say): number | F => (value === undefined ? fallback : readNumber(value, bounds, say)));
}

/** As `number`, where the key must be there. */
export function neededNumber(bounds: Bounds) {
  return leaf((value, say) => readNumber(value, bounds, say));
}

function readNumber(value: unknown, { min, max, whole }: Bounds, say: Say): number {
  const right = `a ${whole ? 'whole ' : ''}number from ${min} to ${max}`;
  const read = typeof value === 'string' && /^[+-]?\d+(?:\.\d+)?$/.test(value) ? Number(value) : Number.NaN;
  if (read >= min && read <= max && (!whole || Number.isInteger(read))) return read;
  say(value === undefined ? 'it is missing' : `${shown(value)} is not ${right}`, right);
  return min;
}

/** One of a few words; the first is meant where the key is left out. */
export function choice<const C extends readonly [string, ...string[]]>(choices: C) {
  return leaf((value, say): C[number] => {
    if (value === undefined) return choices[0];
    const found =
      typeof value === 'string' ? choices.find((each) => each === value.toLowerCase()) : undefined;
    if (found !== undefined) return found;
    const near = typeof value === 'string' ? nearest(value, choices) : null;
    say(`${shown(value)} is none of ${choices.join(', ')}`, near ?? `one of ${choices.join(', ')}`);
    return choices[0];
  });
}

/** Ids of tips: `5`, `1-12`, `N1-N4`, or a list of these. */
export const tipIds = leaf((value, say): readonly string[] => {
  const entries: readonly unknown[] = Array.isArray(value) ? value : [value];
  return entries.flatMap((entry, index) => {
    const inside = Array.isArray(value) ? [index] : [];
    if (typeof entry !== 'string') {
      const right = 'ids: 1-12, or ids: [N1, N2]';
      say(entry === undefined ? 'it is missing' : `${shown(entry)} where tip ids belong`, right, inside);
      return [];
    }
    const expanded = expandTips(entry);
    if ('ids' in expanded) return expanded.ids;
    say(`${shown(entry)} cannot be read as tip ids`, expanded.right, inside);
    return [];
  });
});

/** A list that may be left out; each entry is a block of its own. */
export function listOf<T extends z.ZodType>(entry: T) {
  return z.array(entry).default([]);
}
