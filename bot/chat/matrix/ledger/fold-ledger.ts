import { Chain } from '../../../store/chain.ts';
import { noHash } from '../../../store/line.ts';
import { readPerson } from '../../../store/people.ts';
import { readText } from '../../../store/texts.ts';
import type { Batch, LedgerKind, Piece } from './batch.ts';

/** A piece with the event that brought it. */
export interface KeptPiece {
  readonly event: string;
  readonly piece: Piece;
}

/** A post of ours: its key, its chat room and the event that it became. */
export interface SentPost {
  readonly key: string;
  readonly room: string;
  readonly event: string;
}

/** The record as the ledger room has it. */
export interface FoldedLedger {
  /** Line n of the journal at n − 1, as it was written. */
  readonly lines: readonly string[];
  /** Hash of each. */
  readonly hashes: readonly string[];
  /** Rows of texts.jsonl and people.jsonl by their number; what was redacted is not there. */
  readonly texts: ReadonlyMap<number, string>;
  readonly people: ReadonlyMap<number, string>;
  readonly posts: readonly SentPost[];
  /** The highest epoch in which anything was written. */
  readonly epoch: number;
  /** Why the record cannot be had from here, in plain words; null when it can. */
  readonly fault: string | null;
}

/**
 * Puts the record together from the events of the ledger room, in whatever order and however often they came. Of two
 * machines that wrote the same line the later epoch holds: it took over there. Lines that are missing, or that do not
 * follow from one another, are a fault; then everything before them is given.
 */
export function foldLedger(kept: readonly KeptPiece[]): FoldedLedger {
  const batches = wholeBatches(kept);
  const of = (kind: LedgerKind) => batches.filter((batch) => batch.kind === kind);
  const chained = chain(of('lines'));
  return {
    lines: chained.lines.map(({ text }) => text),
    hashes: chained.lines.map(({ hash }) => hash),
    fault: chained.fault,
    texts: latest(of('texts'), (row) => {
      const text = readText(row);
      return text === null ? null : { number: text.k, erased: text.salt === null ? 1 : 0 };
    }),
    people: latest(of('people'), (row) => {
      const person = readPerson(row);
      return person === null ? null : { number: person.p, erased: person.salt === null ? 1 : 0 };
    }),
    posts: postsIn(
      of('posts'),
      chained.lines.map(({ epoch }) => epoch),
    ),
    epoch: Math.max(0, ...batches.map(({ epoch }) => epoch)),
  };
}

/** Batches of which every part is there, the oldest epoch first, each in order of its numbers. */
function wholeBatches(kept: readonly KeptPiece[]): readonly Batch[] {
  const groups = Map.groupBy(kept, ({ piece }) => {
    return [piece.kind, piece.epoch, piece.first, piece.last, piece.parts, piece.hash].join(' ');
  });
  const batches = [...groups.values()].flatMap((pieces): Batch[] => {
    const parts = new Map(pieces.map(({ piece }) => [piece.part, piece]));
    const [first] = parts.values();
    if (first === undefined || parts.size !== first.parts) return [];
    const texts = [...parts.values()].sort((a, b) => a.part - b.part).map(({ text }) => text);
    const { part: _, parts: __, text: ___, ...about } = first;
    return [{ ...about, rows: texts.join('').split('\n') }];
  });
  return batches.sort((a, b) => a.epoch - b.epoch || a.first - b.first);
}

interface ChainedLine {
  readonly text: string;
  readonly hash: string;
  readonly epoch: number;
}

function chain(batches: readonly Batch[]): { lines: readonly ChainedLine[]; fault: string | null } {
  const lines: ChainedLine[] = [];
  for (const batch of batches) {
    const fault = take(batch, lines);
    if (fault !== null) return { lines, fault };
  }
  return { lines, fault: null };
}

/** Adds a batch's lines, or says why they do not fit. */
function take({ first, prev, epoch, rows }: Batch, lines: ChainedLine[]): string | null {
  if (first > lines.length + 1) return `lines ${lines.length + 1} to ${first - 1} are missing`;
  const before = hashAt(lines, first - 1);
  if (prev !== before) return `line ${first} does not follow from the line before it`;
  const chained = new Chain({ n: first - 1, hash: before });
  for (const text of rows) {
    const fault = chained.step(text);
    const { n, hash } = chained.head;
    if (fault !== null) return `line ${n + 1}: ${fault.why}`;
    const stands = lines[n - 1];
    if (stands?.hash === hash) continue;
    if (stands !== undefined && stands.epoch >= epoch) return `two machines wrote line ${n} at the same time`;
    // Another machine took over here: what the one before still wrote does not count.
    lines.length = n - 1;
    lines.push({ text, hash, epoch });
  }
  return null;
}

function hashAt(lines: readonly ChainedLine[], n: number): string | null {
  return n === 0 ? noHash : (lines[n - 1]?.hash ?? null);
}

/** The last of each number; what was forgotten stays so, whatever else stands in the room. */
function latest(
  batches: readonly Batch[],
  read: (row: string) => { number: number; erased: number } | null,
): ReadonlyMap<number, string> {
  const rows = new Map<number, { row: string; erased: number }>();
  for (const row of batches.flatMap((batch) => batch.rows)) {
    const about = read(row);
    if (about === null) continue;
    const stands = rows.get(about.number);
    if (stands === undefined || about.erased >= stands.erased)
      rows.set(about.number, { row, erased: about.erased });
  }
  return new Map([...rows].map(([number, { row }]) => [number, row]));
}

/** Those of lines that stand; a machine that lost its place may have posted under a number that another then used. */
function postsIn(batches: readonly Batch[], epochs: readonly number[]): readonly SentPost[] {
  const posts = new Map<string, SentPost>();
  for (const { rows, epoch } of batches) {
    for (const row of rows) {
      const post = postIn(row);
      const wrote = post === null ? undefined : epochs[Number(post.key.split('/')[0]) - 1];
      if (post !== null && wrote !== undefined && epoch >= wrote) posts.set(post.key, post);
    }
  }
  return [...posts.values()];
}

function postIn(row: string): SentPost | null {
  const read: unknown = JSON.parse(row);
  if (!Array.isArray(read)) return null;
  const [key, room, event]: unknown[] = read;
  if (typeof key !== 'string' || typeof room !== 'string' || typeof event !== 'string') return null;
  return { key, room, event };
}
