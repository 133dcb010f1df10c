import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { formatMistakes } from '../../core/practice/mistakes.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import type { Practice } from '../../core/practice/practice.ts';
import { PlainError } from '../plain-error.ts';

/** No practice needs more; a file of this size is something else. */
const MOST_BYTES = 2_000_000;

/**
 * The practice in a file, and the text it was read from. Throws PlainError where the file cannot be read, is no text,
 * or has mistakes: all of them, with lines.
 */
export function loadPractice(path: string): { readonly practice: Practice; readonly text: string } {
  const text = readText(path);
  const parsed = parsePractice(text);
  if ('practice' in parsed) return { practice: parsed.practice, text };
  throw new PlainError(formatMistakes(parsed.mistakes, basename(path)));
}

function readText(path: string): string {
  const bytes = readBytes(path);
  if (bytes.length > MOST_BYTES) {
    throw new PlainError(`The practice file ${path} is over 2 MB. Is it the right file?`);
  }
  try {
    // The byte order mark that some editors write is taken off.
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new PlainError(
      `The practice file ${path} is not plain text (UTF-8). Save it as UTF-8 and try again.`,
    );
  }
}

function readBytes(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    const why = WHY[code] ?? `could not be read (${code || String(error)})`;
    throw new PlainError(`The practice file ${path} ${why}.`);
  }
}

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'does not exist. Check the name and the folder',
  ENOTDIR: 'does not exist. Check the name and the folder',
  EISDIR: 'is a folder. Name the file in it',
  EACCES: 'may not be read by this account. Check who owns it',
  EPERM: 'may not be read by this account. Check who owns it',
};
