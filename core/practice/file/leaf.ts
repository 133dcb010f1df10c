import { z } from 'zod';
import { isFields } from './raw.ts';

/** Says one mistake of a value: what is wrong, what would be right, and where inside the value it is. */
export type Say = (wrong: string, right: string, inside?: readonly (string | number)[], at?: 'key') => void;

/** What a mistake said by `leaf` carries through zod. */
export interface Said {
  readonly wrong: string;
  readonly right: string;
  readonly at?: 'key';
}

/**
 * A zod type for one value of the file, read by hand so that each mistake is told in plain words. `read` gets what YAML
 * gave (text, list, map, `undefined` where it is absent), says every mistake, and returns what it could make of it.
 */
export function leaf<T>(read: (value: unknown, say: Say) => T) {
  return z.unknown().transform((value, context): T => {
    return read(value, (wrong, right, inside = [], at) => {
      context.issues.push({
        code: 'custom',
        input: value,
        path: [...inside],
        params: at === undefined ? { wrong, right } : { wrong, right, at },
        message: wrong,
        continue: true,
      });
    });
  });
}

/** The mistake of `leaf` again, out of zod's parameters; `null` for an issue of zod's own. */
export function saidOf(params: Readonly<Record<string, unknown>> | undefined): Said | null {
  const wrong = params?.wrong;
  const right = params?.right;
  if (typeof wrong !== 'string' || typeof right !== 'string') return null;
  return params?.at === 'key' ? { wrong, right, at: 'key' } : { wrong, right };
}

/**
 * A map with these keys and no others. Absent keys are set to `undefined` first, so that each leaf sees them and says
 * in its own words what is missing. The message of an unknown key carries the known ones, for the suggestion.
 */
export function block<S extends z.ZodRawShape>(shape: S) {
  const known = Object.keys(shape);
  const absent = Object.fromEntries(known.map((key) => [key, undefined]));
  const object = z.strictObject(shape, {
    error: (issue) => (issue.code === 'unrecognized_keys' ? known.join(' ') : undefined),
  });
  return z.preprocess(
    (value) =>
      isFields(value) ? Object.fromEntries([...Object.entries(absent), ...Object.entries(value)]) : value,
    object,
  );
}

/** A value as shown in a message: short, in quotes, a list or map by its sort. */
export function shown(value: unknown): string {
  if (typeof value === 'string') return `"${value.length > 40 ? `${value.slice(0, 39)}…` : value}"`;
  if (Array.isArray(value)) return 'a list';
  return value === undefined || value === null ? 'nothing' : 'a block of its own';
}
