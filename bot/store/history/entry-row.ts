import type { SQLOutputValue } from 'node:sqlite';
import type { Entry } from '../../../core/record/entry.ts';

type Body = Omit<Entry, 'id' | 'turn' | 'index' | 'when'>;

/** What of an entry is not in its place. */
export function bodyOf({ id: _id, turn: _turn, index: _index, when: _when, ...body }: Entry): string {
  return JSON.stringify(body satisfies Body);
}

/** The entry in a row of the table. */
export function entryIn(row: Record<string, SQLOutputValue>): Entry {
  const turn = Number(row.turn);
  const index = Number(row.place);
  // Only `bodyOf` writes there, and the file fits the snapshot of this very build.
  const body = JSON.parse(String(row.body)) as Body;
  return { id: `${turn}.${index}`, turn, index, when: Number(row.at), ...body };
}
