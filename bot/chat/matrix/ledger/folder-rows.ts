import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { filesOf } from '../../../store/folder.ts';
import { machineFs } from '../../../store/fs-port.ts';
import { hashOfLine, headOf, prevOf } from '../../../store/line.ts';
import { listMonths, type Month } from '../../../store/months.ts';
import { readPerson } from '../../../store/people.ts';
import { readLines } from '../../../store/read-lines.ts';
import { readText } from '../../../store/texts.ts';
import { type Batch, bytesOf, hashOfRows, MOST_BYTES } from './batch.ts';

/** A row with its number. */
interface Row {
  readonly number: number;
  readonly text: string;
}

/** Where reading may go on: a month and the place in its file. */
interface JournalPlace {
  readonly n: number;
  readonly month: string;
  readonly offset: number;
}

/**
 * What a practice's folder has for the ledger, read from the files as they lie there: they only grow, and are on the disk
 * before anything is said.
 */
export class FolderRows {
  readonly #folder: string;
  readonly #sent: DatabaseSync;
  #journal: JournalPlace | null = null;
  #texts = { k: 0, offset: 0 };

  constructor(folder: string) {
    this.#folder = folder;
    this.#sent = new DatabaseSync(join(folder, 'transport.db'), { readOnly: true, timeout: 1000 });
  }

  /** Lines after `after`, through `through`; null when there are none. */
  lines(after: number, through: number, epoch: number): Batch | null {
    const rows = upTo(this.#linesAfter(after), through);
    const [first] = rows;
    const last = rows.at(-1);
    if (first === undefined || last === undefined) return null;
    const prev = prevOf(first.text) ?? '';
    return {
      ...{ kind: 'lines', epoch, prev, hash: hashOfLine(last.text) },
      ...{ first: first.number, last: last.number, rows: rows.map(({ text }) => text) },
    };
  }

  /** Hash of line `n`, or null where there is none. */
  hashOf(n: number): string | null {
    for (const { number, text } of this.#linesAfter(n - 1)) return number === n ? hashOfLine(text) : null;
    return null;
  }

  /** Texts after number `after` that belong to lines through `through`. */
  texts(after: number, through: number, epoch: number): Batch | null {
    return batch('texts', epoch, upTo(this.#textsAfter(after, through), Number.POSITIVE_INFINITY));
  }

  /** Texts `first` to `last` as they stand now. */
  textsBetween(first: number, last: number, epoch: number): Batch | null {
    const all = this.#textsAfter(first - 1, Number.POSITIVE_INFINITY);
    return batch('texts', epoch, upTo(all, last, Number.POSITIVE_INFINITY));
  }

  /** The next person after `after`, one at a time: a name must be forgettable by itself. */
  person(after: number, through: number, epoch: number): Batch | null {
    const path = filesOf(this.#folder).people;
    if (!machineFs.exists(path)) return null;
    for (const { text } of readLines(machineFs, path)) {
      const person = readPerson(text);
      if (person === null || person.p <= after) continue;
      return person.n > through ? null : batch('people', epoch, [{ number: person.p, text }]);
    }
    return null;
  }

  /** Posts that went out, by their place in the outbox, before the first that has not. */
  posts(after: number, through: number, epoch: number): Batch | null {
    const rows = this.#sent
      .prepare(
        `SELECT seq, key, room, event FROM outbox
         WHERE seq > ? AND turn BETWEEN 1 AND ? AND event IS NOT NULL
           AND seq < (SELECT ifnull(min(seq), 1 << 52) FROM outbox WHERE body IS NOT NULL)
         ORDER BY seq LIMIT 500`,
      )
      .all(after, through)
      .map(({ seq, key, room, event }) => ({
        number: Number(seq),
        text: JSON.stringify([key, room, event]),
      }));
    return batch('posts', epoch, upTo(rows, Number.POSITIVE_INFINITY));
  }

  close(): void {
    this.#sent.close();
  }

  *#linesAfter(after: number): Generator<Row> {
    for (const { name, path, offset, size } of this.#monthsFrom(after)) {
      for (const { text, end, whole } of readLines(machineFs, path, offset, size)) {
        const n = whole ? headOf(text)?.n : undefined;
        if (n === undefined) return;
        if (n <= after) this.#journal = { n, month: name, offset: end };
        else yield { number: n, text };
      }
    }
  }

  /** The files that hold what comes after a line, each from the byte at which to begin. */
  #monthsFrom(after: number): readonly (Month & { readonly offset: number })[] {
    const from = this.#journal !== null && this.#journal.n <= after ? this.#journal : null;
    const months = listMonths(machineFs, this.#folder);
    const start = from?.month ?? months.findLast(({ first }) => first !== null && first <= after + 1)?.name;
    return months
      .filter(({ name }) => start !== undefined && name >= start)
      .map((month) => ({ ...month, offset: month.name === from?.month ? from.offset : 0 }));
  }

  *#textsAfter(after: number, through: number): Generator<Row> {
    const path = filesOf(this.#folder).texts;
    if (!machineFs.exists(path)) return;
    const from = this.#texts.k <= after ? this.#texts.offset : 0;
    for (const { text, end, whole } of readLines(machineFs, path, from)) {
      const entry = whole ? readText(text) : null;
      if (entry === null) continue;
      if (entry.n > through) return;
      if (entry.k <= after) this.#texts = { k: entry.k, offset: end };
      else yield { number: entry.k, text };
    }
  }
}

/** Rows numbered up to `through`, as many as go into one event; one at least. */
function upTo(rows: Iterable<Row>, through: number, most = MOST_BYTES): readonly Row[] {
  const taken: Row[] = [];
  let bytes = 0;
  for (const row of rows) {
    bytes += bytesOf(row.text);
    if (row.number > through || (taken.length > 0 && bytes > most)) break;
    taken.push(row);
  }
  return taken;
}

function batch(kind: 'texts' | 'people' | 'posts', epoch: number, rows: readonly Row[]): Batch | null {
  const [first] = rows;
  const last = rows.at(-1);
  if (first === undefined || last === undefined) return null;
  const texts = rows.map(({ text }) => text);
  return {
    ...{ kind, epoch, prev: '', hash: hashOfRows(texts) },
    ...{ first: first.number, last: last.number, rows: texts },
  };
}
