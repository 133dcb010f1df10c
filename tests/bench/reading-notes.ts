import { readdirSync, readFileSync } from 'node:fs';
import { makeReader } from '../../core/language/reader.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import { loadCorpus } from '../corpus/format.ts';

const root = new URL('../../', import.meta.url).pathname;

/** Every note of the open corpus, as typed. */
export function corpusNotes(): readonly string[] {
  return ['voices', 'kinds', 'talk'].flatMap((folder) => {
    const path = `${root}tests/corpus/${folder}/`;
    const files = readdirSync(path).filter((name) => name.endsWith('.yaml'));
    return files.flatMap((name) => loadCorpus(path + name).cases.map(({ note }) => note));
  });
}

/** Our reader for the larger example practice, as a function of the note alone. */
export function largeReader(): (note: string) => unknown {
  const parsed = parsePractice(readFileSync(`${root}config/practices/large.yaml`, 'utf8'));
  if ('mistakes' in parsed) throw new Error(JSON.stringify(parsed.mistakes));
  const read = makeReader(parsed.practice);
  const at = Date.parse('2026-11-23T10:15:00Z');
  return (note) => read(note, { at });
}
