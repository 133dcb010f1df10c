import type { DatabaseSync, SQLOutputValue } from 'node:sqlite';
import type { KeptBase } from '../../../core/record/archive.ts';
import type { Entry } from '../../../core/record/entry.ts';
import type { Place } from '../../../core/record/order.ts';
import { entryIn } from './entry-row.ts';
import { RowDamage } from './row-damage.ts';
import { sumOfRow } from './sums.ts';

/** A row of a table, its columns by name. */
export type Row = Record<string, SQLOutputValue>;

/** Columns of each table in the order in which its sum takes them. */
const SUMMED = {
  row: ['list', 'at', 'key', 'body', 'base'],
  value: ['map', 'key', 'base', 'body'],
  entry: ['at', 'turn', 'place', 'about', 'body'],
  item: ['item', 'at', 'turn', 'place'],
  base: ['number', 'at', 'turn', 'place', 'body'],
} as const;

/** A table whose rows carry a sum. */
export type Summed = keyof typeof SUMMED;

/** A row as it was written; throws RowDamage where it is not. */
export function checked(table: Summed, row: Row): Row {
  const parts = SUMMED[table].map((name) => row[name] ?? null);
  if (
    parts.some((part) => typeof part === 'object' && part !== null) ||
    row.sum !== sumOfRow(...plain(parts))
  )
    throw new RowDamage(`A row of ${table} is not as it was written.`);
  return row;
}

function plain(parts: readonly SQLOutputValue[]): (string | number | null)[] {
  return parts.map((part) => (typeof part === 'string' || typeof part === 'number' ? part : null));
}

/** What was put in. */
export function bodyIn(table: Summed, row: Row): unknown {
  return JSON.parse(String(checked(table, row).body));
}

/** The entry in a row of `entry`. */
export function entryOf(row: Row): Entry {
  return entryIn(checked('entry', row));
}

/** The place in a row of `item`. */
export function itemPlace(row: Row): Place {
  return placeIn(checked('item', row));
}

/** The state kept in a row of `base`. */
export function baseIn(row: Row): KeptBase {
  return { number: Number(row.number), through: placeIn(row), state: bodyIn('base', row) };
}

/** Every state kept to go back to, the oldest first. */
export function* basesIn(db: DatabaseSync): Generator<KeptBase> {
  for (const row of db.prepare('SELECT * FROM base ORDER BY number').iterate()) yield baseIn(row);
}

/** A place as SQLite keeps it: a stretch without beginning or end is at the end of its safe numbers. */
export function numbersOf({ when, turn, index }: Place): [at: number, turn: number, place: number] {
  return [Math.min(Math.max(when, Number.MIN_SAFE_INTEGER), Number.MAX_SAFE_INTEGER), turn, index];
}

function placeIn({ at, turn, place }: Row): Place {
  return { when: Number(at), turn: Number(turn), index: Number(place) };
}
