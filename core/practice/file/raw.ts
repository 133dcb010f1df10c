import { isId } from '../expand-tips.ts';
import type { Path } from '../mistakes.ts';

/** One entry of a list of the file as YAML gave it, for the checks that look across entries. */
export interface Entry {
  readonly path: Path;
  readonly fields: Readonly<Record<string, unknown>>;
}

/** The maps in the list under a key, with their paths; whatever else stands there is the schema's to object to. */
export function entriesOf(fields: unknown, key: string, path: Path = []): readonly Entry[] {
  const list = isFields(fields) ? fields[key] : undefined;
  if (!Array.isArray(list)) return [];
  return list.flatMap((entry: unknown, index) => {
    return isFields(entry) ? [{ path: [...path, key, index], fields: entry }] : [];
  });
}

export function isFields(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The text under a key, or `undefined`. */
export function textOf(entry: Entry, key: string): string | undefined {
  const value = Object.hasOwn(entry.fields, key) ? entry.fields[key] : undefined;
  return typeof value === 'string' && value !== '' ? value : undefined;
}

/** The id of an entry where it has a good one. */
export function idOf(entry: Entry): string | undefined {
  const id = textOf(entry, 'id');
  return id !== undefined && isId(id) ? id : undefined;
}

/** The texts of a list, or of one text with commas, each with its path. */
export function textsOf(
  entry: Entry,
  key: string,
): readonly { readonly text: string; readonly path: Path }[] {
  const value = Object.hasOwn(entry.fields, key) ? entry.fields[key] : undefined;
  const path = [...entry.path, key];
  if (typeof value === 'string') {
    return value
      .split(/\s*,\s*/)
      .filter((text) => text !== '')
      .map((text) => ({ text, path }));
  }
  if (!Array.isArray(value)) return [];
  return value.flatMap((text: unknown, index) => {
    return typeof text === 'string' && text !== '' ? [{ text, path: [...path, index] }] : [];
  });
}

/** What stands at a path, `undefined` where nothing does. */
export function valueAt(raw: unknown, path: Path): unknown {
  let here = raw;
  for (const part of path) here = stepInto(here, part);
  return here;
}

export function stepInto(value: unknown, part: string | number): unknown {
  if (Array.isArray(value)) return typeof part === 'number' ? value[part] : undefined;
  return isFields(value) && Object.hasOwn(value, part) ? value[part] : undefined;
}
