import { readdirSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { type CorpusCase, loadCorpus } from '../corpus/format.ts';
import { kindsOf, placeOf, table } from '../corpus/report.ts';
import { guessedId, type Slipped, slippedNotes } from './slips-in-notes.ts';

/**
 * `node tests/language/run-slips.ts [FOLDER…] [--seeds N] [--all]`: how notes that are read exactly are read with one slip in each, by
 * operation, kind and voice, with each wrong record (with `--all` whatever is not exact). Of `held` only counts are shown.
 */
const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { seeds: { type: 'string', default: '1' }, all: { type: 'boolean', default: false } },
});
const folders = positionals.length > 0 ? positionals : ['voices', 'kinds'];
const seeds = Array.from({ length: Number(values.seeds) }, (_, i) => i + 1);
const cases = folders.flatMap(casesOf);

function casesOf(folder: string): readonly CorpusCase[] {
  const path = new URL(`../corpus/${folder}/`, import.meta.url).pathname;
  const files = readdirSync(path).filter((name) => name.endsWith('.yaml'));
  return files.flatMap((name) => loadCorpus(path + name).cases);
}

function show(title: string, lines: readonly string[]): void {
  console.log(`\n${title}\n${lines.join('\n')}`);
}

function list(slipped: readonly Slipped[]): void {
  if (folders.includes('held')) return;
  for (const one of slipped) {
    console.log(`\n${one.verdict}  ${placeOf(one)}  ${one.from} → ${one.to}  ${one.text}`);
    console.log(`  want ${JSON.stringify(one.one.expected)}`);
    console.log(`  got  ${JSON.stringify(one.got)}`);
  }
}

const words = seeds.flatMap((seed) => slippedNotes(cases, 'word', seed));
show(
  'one slip in a word',
  table(words, () => ['all']),
);
show(
  'by operation',
  table(words, ({ operation }) => [operation]),
);
show('by kind', table(words, kindsOf));
show(
  'by voice',
  table(words, ({ one }) => [one.voice]),
);
list(words.filter(({ verdict }) => (values.all ? verdict !== 'exact' : verdict === 'wrong')));

const numbers = seeds.flatMap((seed) => slippedNotes(cases, 'number', seed));
const guessed = numbers.filter(guessedId);
show('one slip in an id with a figure', [
  ...table(numbers, ({ operation }) => [operation]),
  `ids guessed that nobody typed: ${guessed.length} of ${numbers.length}`,
]);
list(guessed);
