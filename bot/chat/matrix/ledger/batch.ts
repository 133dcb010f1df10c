import { createHash } from 'node:crypto';
import { type Fields, fields } from '../sync/to-heard.ts';

/**
 * What the ledger room holds, by the type of its events: lines of the journal; texts and people, which stand beside the
 * chain so that they can be forgotten; which event each post of ours became; and in the room's state who writes.
 */
export const LEDGER_TYPES = {
  lines: 'scanward.ledger.lines',
  texts: 'scanward.ledger.texts',
  people: 'scanward.ledger.people',
  posts: 'scanward.ledger.posts',
} as const;

export type LedgerKind = keyof typeof LEDGER_TYPES;

/** Rows of one kind, numbered `first` to `last`. The rows travel as one text: a homeserver refuses floats in events. */
export interface Batch {
  readonly kind: LedgerKind;
  /** Counts up when another machine takes over. */
  readonly epoch: number;
  readonly first: number;
  readonly last: number;
  /** Hash of the line before the first; empty for what is no chain. */
  readonly prev: string;
  /** Hash of the last line; of all rows where they are no chain. */
  readonly hash: string;
  readonly rows: readonly string[];
}

/** One event of a batch: a row too long for an event goes in several. `part` counts from 1. */
export interface Piece extends Omit<Batch, 'rows'> {
  readonly part: number;
  readonly parts: number;
  readonly text: string;
}

/**
 * An event may have 65,536 bytes as the homeserver sends it on, and encryption makes a third more of it: rows are put
 * together up to so many bytes of JSON.
 */
export const MOST_BYTES = 40_000;
/** UTF-16 units a piece: three bytes each at the most, since a row is JSON and has no character that is escaped to six. */
const PIECE_UNITS = 12_000;

/** The events of a batch, in order. */
export function piecesOf({ rows, ...about }: Batch): readonly Piece[] {
  const whole = rows.join('\n');
  const texts = bytesOf(whole) <= MOST_BYTES ? [whole] : cut(whole);
  return texts.map((text, index) => ({ ...about, part: index + 1, parts: texts.length, text }));
}

/** A piece as the content of an event. */
export function contentOf({ kind: _, ...content }: Piece): Fields {
  return content;
}

/** A piece out of an event, or null where it is none. */
export function pieceIn(type: string, content: Fields): Piece | null {
  const kind = kindOf(type);
  const { epoch, first, last, part, parts, prev, hash, text } = fields(content);
  if (kind === null || typeof prev !== 'string' || typeof hash !== 'string' || typeof text !== 'string')
    return null;
  if (!isCount(epoch) || !isCount(first) || !isCount(last) || !isCount(part) || !isCount(parts)) return null;
  return { kind, epoch, first, last, part, parts, prev, hash, text };
}

/** SHA-256 (hex) of rows that are no chain. */
export function hashOfRows(rows: readonly string[]): string {
  return createHash('sha256').update(rows.join('\n')).digest('hex');
}

/** Bytes of a text in the JSON of an event. */
export function bytesOf(text: string): number {
  return Buffer.byteLength(JSON.stringify(text));
}

function kindOf(type: string): LedgerKind | null {
  for (const kind of ['lines', 'texts', 'people', 'posts'] as const)
    if (LEDGER_TYPES[kind] === type) return kind;
  return null;
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;
}

/** Never between the halves of one character: half of one is no text that can be sent. */
function cut(text: string): string[] {
  const pieces: string[] = [];
  for (let from = 0; from < text.length; ) {
    let to = Math.min(from + PIECE_UNITS, text.length);
    if (to < text.length && /[\ud800-\udbff]/.test(text.charAt(to - 1))) to--;
    pieces.push(text.slice(from, to));
    from = to;
  }
  return pieces;
}
