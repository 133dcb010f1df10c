import { hash } from 'node:crypto';
import { crc32 } from 'node:zlib';
import canonicalize from 'canonicalize';
import type { LineBuffer } from './line-buffer.ts';

/** The schema version that this program writes. */
export const schemaVersion = 1;

/** The hash before the first line. */
export const noHash = '0'.repeat(64);

/** One line of the journal, as kept and as given back. */
export interface JournalLine {
  /** Its number, from 1. */
  n: number;
  /** The instant the turn was made, ISO, UTC. */
  at: string;
  /** Schema version of the line. */
  v: number;
  /** SHA-256 (hex) of the line before, as written, without its line end. */
  prev: string;
  /** CRC-32 (8 hex) of this line without this member: a flipped bit shows even in the last line. */
  sum: string;
  /** Salted SHA-256 of the names of people first met in this line, by pseudonym. */
  people?: Record<string, string>;
  /** JSON Pointers (RFC 6901) into `turn` of what is kept beside the chain. */
  sealed?: string[];
  /** What one note, tick or change of settings brought. */
  turn: unknown;
}

/** What a line says of itself before it is parsed. */
export interface LineHead {
  at: string;
  n: number;
}

/** SHA-256 as hex of a line's text, without its line end. */
export function hashOfLine(text: string | Uint8Array): string {
  return hash('sha256', text, 'hex');
}

/** A line before it is written: its turn is canonical JSON already. */
export interface LineParts {
  n: number;
  at: string;
  prev: string;
  people: Record<string, string> | null;
  sealed: readonly string[];
  turn: string;
}

/** A line written: its sum and hash, and how many bytes it takes with its line end. */
export interface WrittenLine {
  sum: string;
  hash: string;
  length: number;
}

/** Characters of `,"sum":"01234567"`. */
const sumLength = 17;

/**
 * Adds a line to `into` as RFC 8785 canonical JSON; members are in its order: at, n, people, prev, sealed, sum, turn, v. Its
 * bytes are made once, and sum and hash are taken of them: cold after a sync, each walk through the text counts.
 */
export function writeLine(parts: LineParts, into: LineBuffer): WrittenLine {
  const people = parts.people === null ? '' : `"people":${canonicalize(parts.people)},`;
  const sealed = parts.sealed.length === 0 ? '' : `,"sealed":${JSON.stringify(parts.sealed)}`;
  const start = into.length;
  const hole = into.add(`{"at":"${parts.at}","n":${parts.n},${people}"prev":"${parts.prev}"${sealed}`);
  const rest = into.leave(sumLength);
  const end = into.add(`,"turn":${parts.turn},"v":${schemaVersion}}\n`);
  const sum = hexOf(crc32(into.between(rest, end - 1), crc32(into.between(start, hole))));
  into.put(`,"sum":"${sum}"`, hole);
  return { sum, hash: hashOfLine(into.between(start, end - 1)), length: end - start };
}

/** CRC-32 of a text's UTF-8 bytes, 8 hex digits. */
export function sumOf(text: string | Uint8Array): string {
  return hexOf(crc32(text));
}

function hexOf(crc: number): string {
  return crc.toString(16).padStart(8, '0');
}

const headPattern = /^\{"at":"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,9})?Z)","n":([1-9]\d{0,15}),/;
const prevPattern = /"prev":"([0-9a-f]{64})","(?:sealed|sum)":/;

/** Instant and number at the start of a line's text, or null where it does not start as a line does. */
export function headOf(text: string): LineHead | null {
  const match = headPattern.exec(text);
  if (match?.[1] === undefined || match[2] === undefined) return null;
  return { at: match[1], n: Number(match[2]) };
}

/** The hash of the line before that a line's text carries, or null. */
export function prevOf(text: string): string | null {
  // Where nobody new is named, `prev` follows the number at once; the pattern is the slow way round.
  const from = text.indexOf(',"prev":"');
  if (from > 0 && from < 80) return text.slice(from + 9, from + 73);
  return prevPattern.exec(text)?.[1] ?? null;
}

const sumPattern = /,"sum":"([0-9a-f]{8})"/;

/** Whether a line's text still gives the `sum` that was written into it. */
export function sumHolds(text: string): boolean {
  const match = sumPattern.exec(text);
  if (match === null) return false;
  return sumOf(text.slice(0, match.index) + text.slice(match.index + match[0].length)) === match[1];
}

/** A line's text parsed, its turn still sealed; null where it is not a line. */
export function parseLine(text: string): JournalLine | null {
  try {
    const line: unknown = JSON.parse(text);
    return isLine(line) ? line : null;
  } catch {
    return null;
  }
}

function isLine(line: unknown): line is JournalLine {
  return (
    typeof line === 'object' &&
    line !== null &&
    'n' in line &&
    typeof line.n === 'number' &&
    'at' in line &&
    typeof line.at === 'string' &&
    'v' in line &&
    typeof line.v === 'number' &&
    'prev' in line &&
    typeof line.prev === 'string' &&
    'sum' in line &&
    typeof line.sum === 'string' &&
    'turn' in line &&
    (!('sealed' in line) || Array.isArray(line.sealed))
  );
}
