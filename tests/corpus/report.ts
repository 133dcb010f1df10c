import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Reader } from '../../core/language/read.ts';
import { makeReader } from '../../core/language/reader.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import type { Reading } from '../../core/reading/reading.ts';
import { type CorpusCase, loadCorpus } from './format.ts';
import { matches } from './same-reading.ts';

/** How one note was read beside what it should have been. */
export type Verdict = 'exact' | 'wrong' | 'missed' | 'needless-question' | 'noise' | 'other';

/** One note with its verdict. */
export interface Judged {
  readonly one: CorpusCase;
  readonly got: Reading;
  readonly verdict: Verdict;
}

const HERE = fileURLToPath(new URL('.', import.meta.url));

/** Reads every case of the corpus files in a folder under tests/corpus. */
export function judgeFolder(folder: string): readonly Judged[] {
  const files = readdirSync(join(HERE, folder)).filter((file) => file.endsWith('.yaml'));
  const readers = new Map<string, Reader>();
  return files.flatMap((file) => {
    const { cases, errors } = loadCorpus(join(HERE, folder, file));
    if (errors.length > 0) throw new Error(`${file} has mistakes: run tests/corpus/format.test.ts`);
    return cases.map((one) => judge(one, readerFor(one.practicePath, readers)));
  });
}

function judge(one: CorpusCase, read: Reader): Judged {
  const { at, from, room } = one.context;
  const { reading: got } = read(one.note, {
    at: Date.parse(at),
    ...(from === undefined ? {} : { from }),
    ...(room === undefined ? {} : { room }),
  });
  return { one, got, verdict: verdictOf(one.expected, got) };
}

/**
 * `wrong`: a fact that should not be there, the worst; `noise`: any reply to what is nobody's business; `missed`: nothing where
 * something was meant; `needless-question`: asked though the note was clear.
 */
export function verdictOf(expected: Reading, got: Reading): Verdict {
  if (matches(expected, got)) return 'exact';
  const kept = got.facts.filter(
    (fact) => !expected.facts.some((other) => matches(alone(other), alone(fact))),
  );
  if (kept.length > 0) return 'wrong';
  if (size(expected) === 0) return 'noise';
  if (size(got) === 0) return 'missed';
  return got.unclear.length > expected.unclear.length ? 'needless-question' : 'other';
}

function alone(fact: Reading['facts'][number]): Reading {
  return { facts: [fact], asks: [], acts: [], plans: [], unclear: [] };
}

function size({ facts, asks, acts, plans, unclear }: Reading): number {
  return facts.length + asks.length + acts.length + plans.length + unclear.length;
}

function readerFor(path: string, readers: Map<string, Reader>): Reader {
  const known = readers.get(path);
  if (known !== undefined) return known;
  const parsed = parsePractice(readFileSync(path, 'utf8'));
  if ('mistakes' in parsed) throw new Error(`${path}: ${JSON.stringify(parsed.mistakes)}`);
  const reader = makeReader(parsed.practice);
  readers.set(path, reader);
  return reader;
}

/** Counts of verdicts by a key: voice, kind or tag. */
export function table<One extends Judged>(
  judged: readonly One[],
  keysOf: (one: One) => readonly string[],
): readonly string[] {
  const rows = new Map<string, Map<Verdict, number>>();
  for (const one of judged) {
    for (const key of keysOf(one)) {
      const row = rows.get(key) ?? new Map<Verdict, number>();
      row.set(one.verdict, (row.get(one.verdict) ?? 0) + 1);
      rows.set(key, row);
    }
  }
  return [...rows].sort(([a], [b]) => a.localeCompare(b)).map(([key, row]) => line(key, row));
}

function line(key: string, row: ReadonlyMap<Verdict, number>): string {
  const all = [...row.values()].reduce((sum, count) => sum + count, 0);
  const exact = row.get('exact') ?? 0;
  const rest = [...row]
    .filter(([verdict]) => verdict !== 'exact')
    .map(([verdict, count]) => `${verdict} ${count}`);
  return `${key.padEnd(36)} ${String(exact).padStart(5)} of ${String(all).padStart(5)}  ${((100 * exact) / all).toFixed(1)} %  ${rest.join(', ')}`;
}

/** Kinds that a note should give; `talk` where it should give nothing. */
export function kindsOf({ one }: Judged): readonly string[] {
  const { facts, asks, acts, plans, unclear } = one.expected;
  const kinds = [
    ...facts.map(({ kind }) => kind),
    ...asks.map(({ kind }) => `ask ${kind}`),
    ...acts.map(({ kind }) => `act ${kind}`),
    ...plans.map(() => 'plan'),
    ...unclear.map(({ about }) => `unclear ${about}`),
  ];
  return kinds.length === 0 ? ['talk'] : [...new Set(kinds)];
}

/** Where a case stands, for finding it. */
export function placeOf({ one }: Judged): string {
  return `${relative(HERE, one.file)}:${one.line}`;
}
