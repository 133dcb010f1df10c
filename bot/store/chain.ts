import { hashOfLine, headOf, prevOf, schemaVersion, sumHolds } from './line.ts';
import { StoreTooNew } from './trouble.ts';

/** Number and hash of a line: a place in the chain. */
export interface Head {
  n: number;
  hash: string;
}

/** What is wrong with a line, in plain words, and whether it is the line before that was changed. */
export interface ChainFault {
  why: string;
  before: boolean;
}

const versionPattern = /"v":(\d{1,9})\}$/;
/** What is said of a line that was changed. */
export const notAsWritten = 'it is not as it was written';

/**
 * Follows the chain from `head`, a line's text at a time. `step` moves `head` on and gives null, or says what is
 * wrong and leaves `head` where it was. Throws StoreTooNew at a line of a newer version.
 */
export class Chain {
  head: Head;

  constructor(from: Head) {
    this.head = from;
  }

  step(text: string): ChainFault | null {
    const { n, hash } = this.head;
    const start = headOf(text);
    if (start === null) return { why: 'it does not read as a line of the record', before: false };
    if (start.n !== n + 1) return { why: numberFault(n, start.n, text), before: false };
    if (prevOf(text) !== hash) return { why: notAsWritten, before: sumHolds(text) };
    if (!text.endsWith(',"v":1}') && newer(text)) refuse(text);
    this.head = { n: n + 1, hash: hashOfLine(text) };
    return null;
  }
}

function numberFault(n: number, found: number, text: string): string {
  if (!sumHolds(text)) return notAsWritten;
  if (found === n + 2) return `line ${n + 1} is missing`;
  if (found > n + 1) return `lines ${n + 1} to ${found - 1} are missing`;
  return `line ${found} stands here a second time`;
}

function newer(text: string): boolean {
  return sumHolds(text) && Number(versionPattern.exec(text)?.[1] ?? 0) > schemaVersion;
}

function refuse(text: string): never {
  const v = versionPattern.exec(text)?.[1];
  throw new StoreTooNew(
    `This folder was written by a newer Scanward (record version ${v}; this one reads up to ${schemaVersion}). Use the newer one.`,
  );
}
