import type { Head } from './chain.ts';
import { hashOfLine, type JournalLine, lineText, parseLine, schemaVersion } from './line.ts';
import type { People, Person } from './people.ts';
import { openLine, sealTurn } from './seal.ts';
import type { Text, Texts } from './texts.ts';

/** A turn to append: the instant it was made and what it brought, as JSON. */
export interface NewTurn {
  at: string;
  turn: unknown;
}

/** Lines made and not yet written, with what has to be kept beside them first. */
export interface Burst {
  bytes: Uint8Array;
  lines: JournalLine[];
  head: Head;
  met: Person[];
  taken: Text[];
  /** Bytes of the last line with its line end. */
  lastLength: number;
}

const instant = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,9})?Z$/;

/** Makes the lines that follow `head`. People met and texts taken are in memory only. Throws TypeError on no JSON. */
export function makeBurst(head: Head, turns: readonly NewTurn[], people: People, texts: Texts): Burst {
  const burst: Burst = { bytes: Buffer.alloc(0), lines: [], head, met: [], taken: [], lastLength: 0 };
  const written: string[] = [];
  for (const { at, turn } of turns) {
    if (!instant.test(at))
      throw new TypeError(`"${at}" is not an instant in UTC such as 2026-11-23T08:05:00Z.`);
    const { line, met, taken } = makeLine(burst.head, at, turn, people, texts);
    const text = lineText(line);
    // Parsed again, so that what is folded now is to the member's order what a refold will see.
    const kept = parseLine(text);
    if (kept === null) throw new TypeError('The turn does not make a line of the record.');
    openLine(kept, { nameOf: (p) => people.nameOf(p), textOf: (k) => textIn(taken, k) });
    burst.lines.push(kept);
    burst.met.push(...met);
    burst.taken.push(...taken);
    burst.lastLength = Buffer.byteLength(text) + 1;
    burst.head = { n: line.n, hash: hashOfLine(text) };
    written.push(text, '\n');
  }
  burst.bytes = Buffer.from(written.join(''));
  return burst;
}

function makeLine(
  head: Head,
  at: string,
  turn: unknown,
  people: People,
  texts: Texts,
): { line: Omit<JournalLine, 'sum'>; met: Person[]; taken: Text[] } {
  const n = head.n + 1;
  const met: Person[] = [];
  const taken: Text[] = [];
  const sealed = sealTurn(turn, {
    person: (name) => {
      const known = people.find(name);
      if (known !== null) return `p${known.p}`;
      const person = people.meet(name, n);
      met.push(person);
      return `p${person.p}`;
    },
    text: (text) => {
      const { entry, sealed: commitment } = texts.take(text, n);
      taken.push(entry);
      return { ref: entry.k, sealed: commitment };
    },
  });
  const line = { n, at, v: schemaVersion, prev: head.hash, turn: sealed.turn };
  return {
    line: {
      ...line,
      ...(met.length > 0 ? { people: people.commitments(met) } : {}),
      ...(sealed.pointers.length > 0 ? { sealed: sealed.pointers } : {}),
    },
    met,
    taken,
  };
}

function textIn(taken: readonly Text[], k: number): string {
  return taken.find((text) => text.k === k)?.text ?? '';
}
