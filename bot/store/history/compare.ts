import type { DatabaseSync, SQLOutputValue } from 'node:sqlite';
import canonicalize from 'canonicalize';

/** Rows of a table in the order of their keys; how a row is named; which of its columns is JSON. */
interface Table {
  readonly sql: string;
  readonly key: readonly string[];
  readonly body: string | null;
  readonly name: (row: Row) => string;
}

type Row = Record<string, SQLOutputValue>;

const TABLES: readonly Table[] = [
  {
    sql: 'SELECT at, turn, place, about, body FROM entry ORDER BY at, turn, place',
    ...{ key: ['at', 'turn', 'place', 'about'], body: 'body' },
    name: ({ turn, place }) => `the entry ${turn}.${place} (line.place)`,
  },
  {
    sql: 'SELECT item, at, turn, place FROM item ORDER BY item, at, turn, place',
    ...{ key: ['item', 'at', 'turn', 'place'], body: null },
    name: ({ item, turn, place }) => `${item} in the entry ${turn}.${place} (line.place)`,
  },
  {
    sql: 'SELECT list, at, key, body FROM row ORDER BY list, at',
    ...{ key: ['list', 'at', 'key'], body: 'body' },
    name: ({ list, at }) => `row ${at} of ${list}`,
  },
  {
    sql: 'SELECT map, key, max(base) AS base, body FROM value GROUP BY map, key ORDER BY map, key',
    ...{ key: ['map', 'key'], body: 'body' },
    name: ({ map, key }) => `${key} of ${map}`,
  },
];

/**
 * The first row in which two histories differ, in words; `null`: there is none. Stops and kept states are left out, since
 * they may be elsewhere, and so is a value that is `atHand`: what is in the state counts, not what was handed over before.
 */
export function firstDifference(
  found: DatabaseSync,
  wanted: DatabaseSync,
  atHand: (map: string, key: string) => boolean,
): string | null {
  for (const table of TABLES) {
    const [one, other] = [found, wanted].map((db) => counting(db, table, atHand));
    if (one === undefined || other === undefined) continue;
    for (;;) {
      const [here, there] = [one.next().value, other.next().value];
      if (here === undefined && there === undefined) break;
      if (here === undefined || there === undefined || textOf(table, here) !== textOf(table, there))
        return inWords(here && table.name(here), there && table.name(there));
    }
  }
  return null;
}

function* counting(
  db: DatabaseSync,
  { sql }: Table,
  atHand: (map: string, key: string) => boolean,
): Generator<Row, undefined> {
  for (const row of db.prepare(sql).iterate())
    if (row.map === undefined || !atHand(String(row.map), String(row.key))) yield row;
  return undefined;
}

function inWords(here: string | undefined, there: string | undefined): string {
  if (here === undefined) return `${there} is missing`;
  if (there === undefined) return `${here} is not in the record`;
  return here === there
    ? `${here} is not so in the record`
    : `${here} stands where the record gives ${there}`;
}

/** Members of an object may have come in another order. */
function textOf({ key, body }: Table, row: Row): string {
  const values = key.map((name) => String(row[name]));
  return [...values, body === null ? '' : canonicalize(JSON.parse(String(row[body])))].join('\n');
}
