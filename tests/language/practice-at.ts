import { readFileSync } from 'node:fs';
import type { Reader } from '../../core/language/read.ts';
import { makeReader } from '../../core/language/reader.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import type { Practice } from '../../core/practice/practice.ts';

const practices = new Map<string, Practice>();
const readers = new Map<string, Reader>();

/** The practice of a file; throws on one that is not a practice. */
export function practiceAt(path: string): Practice {
  const known = practices.get(path);
  if (known !== undefined) return known;
  const parsed = parsePractice(readFileSync(path, 'utf8'));
  if (!('practice' in parsed)) throw new Error(`${path}: ${JSON.stringify(parsed.mistakes)}`);
  practices.set(path, parsed.practice);
  return parsed.practice;
}

/** A reader for the practice of a file, made once. */
export function readerAt(path: string): Reader {
  const known = readers.get(path);
  if (known !== undefined) return known;
  const reader = makeReader(practiceAt(path));
  readers.set(path, reader);
  return reader;
}

/** Path of one of the practices that the corpus works at. */
export function corpusPractice(name: string): string {
  return new URL(`../corpus/practices/${name}.yaml`, import.meta.url).pathname;
}
