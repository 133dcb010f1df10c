import type { Path } from '../mistakes.ts';
import { isFields, stepInto } from './raw.ts';

/** A path for people: entries of lists by their id or name, else by their number from 1. `sites.quay.hours.mon`. */
export function pathByNames(path: Path, raw: unknown): string {
  let here: unknown = raw;
  const parts = path.map((part) => {
    const list = Array.isArray(here);
    here = stepInto(here, part);
    return list && typeof part === 'number' ? (nameOf(here) ?? String(part + 1)) : String(part);
  });
  return parts.join('.');
}

function nameOf(entry: unknown): string | null {
  if (!isFields(entry)) return null;
  // A person is called by name: the chat identity says less.
  const keys = 'part' in entry || String(entry.id).startsWith('@') ? ['name'] : ['id', 'name', 'ids', 'room'];
  for (const key of keys) {
    const value = entry[key];
    if (typeof value === 'string' && value !== '') return value;
  }
  return null;
}
