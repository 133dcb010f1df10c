import type { Head } from './chain.ts';
import { type JournalLine, parseLine, schemaVersion, writeLine } from './line.ts';
import { LineBuffer } from './line-buffer.ts';
import type { People, Person } from './people.ts';
import { type Keeper, sealTurn } from './seal.ts';
import type { Text, Texts } from './texts.ts';
import { openLine } from './unseal.ts';

/** A turn to append: the instant it was made and what it brought, as JSON. */
export interface NewTurn {
  at: string;
  turn: unknown;
}

/** Lines made and not yet written, with what has to be kept beside them first. */
export interface Burst {
  /** Good until the next burst is made. */
  bytes: Uint8Array;
  lines: JournalLine[];
  head: Head;
  met: Person[];
  taken: Text[];
  /** Bytes of the last line with its line end. */
  lastLength: number;
}

/** One for all: a burst is written before the next is made. */
const buffer = new LineBuffer();
const none = Buffer.alloc(0);

const instant = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,9})?Z$/;

/** Makes the lines that follow `head`. People met and texts taken are in memory only. Throws TypeError on no JSON. */
export function makeBurst(head: Head, turns: readonly NewTurn[], people: People, texts: Texts): Burst {
  const burst: Burst = { bytes: none, lines: [], head, met: [], taken: [], lastLength: 0 };
  buffer.clear();
  for (const turn of turns) {
    if (!instant.test(turn.at)) {
      throw new TypeError(`"${turn.at}" is not an instant in UTC such as 2026-11-23T08:05:00Z.`);
    }
    addLine(burst, turn, people, texts);
  }
  burst.bytes = buffer.between(0, buffer.length);
  return burst;
}

function addLine(burst: Burst, { at, turn }: NewTurn, people: People, texts: Texts): void {
  const n = burst.head.n + 1;
  const met: Person[] = [];
  const sealed = sealTurn(turn, keeperOf(n, met, burst.taken, people, texts));
  const named = met.length > 0 ? people.commitments(met) : null;
  const prev = burst.head.hash;
  const start = buffer.length;
  const parts = { n, at, prev, people: named, sealed: sealed.pointers, turn: sealed.text };
  const { sum, hash, length } = writeLine(parts, buffer);
  const line: JournalLine = { n, at, v: schemaVersion, prev, sum, turn };
  if (named !== null) line.people = named;
  if (sealed.pointers.length > 0) line.sealed = sealed.pointers;
  if (sealed.changed) line.turn = readAgain(buffer.between(start, start + length - 1), burst.taken, people);
  burst.lines.push(line);
  if (met.length > 0) burst.met.push(...met);
  burst.head = { n, hash };
  burst.lastLength = length;
}

function keeperOf(n: number, met: Person[], taken: Text[], people: People, texts: Texts): Keeper {
  return {
    person: (name) => {
      const known = people.find(name);
      if (known !== null) return `p${known.p}`;
      const person = people.meet(name, n);
      met.push(person);
      return `p${person.p}`;
    },
    text: (text, json) => {
      const { entry, sealed } = texts.take(text, n, json);
      taken.push(entry);
      return { ref: entry.k, sealed };
    },
  };
}

/** The turn as a refold will see it, where that is not what was given. */
function readAgain(bytes: Buffer, taken: readonly Text[], people: People): unknown {
  const line = parseLine(bytes.toString('utf8'));
  if (line === null) throw new TypeError('The turn does not make a line of the record.');
  const textOf = (k: number): string => taken.find((text) => text.k === k)?.text ?? '';
  openLine(line, { nameOf: (pseudonym) => people.nameOf(pseudonym), textOf });
  return line.turn;
}
