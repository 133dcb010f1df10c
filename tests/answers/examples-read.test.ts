import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { guideFor } from '../../core/answers/guide.ts';
import { makeReader } from '../../core/language/reader.ts';
import { howTopic } from '../../core/reading/ask.ts';
import { practiceIn } from '../practice/base-file.ts';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { textOf } from './ask.ts';

const files = [
  ['Ferngate', FERNGATE, '!quay:example.org'],
  [
    'the example',
    readFileSync(new URL('../../config/practices/example.yaml', import.meta.url), 'utf8'),
    '!mill:example.org',
  ],
  [
    'the large one',
    readFileSync(new URL('../../config/practices/large.yaml', import.meta.url), 'utf8'),
    '!garden:example.org',
  ],
] as const;

/** What stands in “ ”: what a person is told to type. */
function examplesIn(text: string): readonly string[] {
  return [...text.matchAll(/“([^”]+)”/g)].map(([, words = '']) => words);
}

describe.each(files)('what a person is told to type is understood, with the names of %s', (_, file, room) => {
  const given = new Given(practiceIn(file));
  const read = makeReader(given.practice);
  const at = Date.parse('2026-11-24T11:00:00Z');
  const sites = given.practice.sites.map(({ id }) => id);
  const texts = [
    textOf(given, { kind: 'help' }, '2026-11-24 11:00', room),
    ...howTopic.options.flatMap((topic) => {
      const { steps, otherwise } = guideFor(topic, given.view('2026-11-24 11:00'), sites);
      return [...steps, ...otherwise];
    }),
    textOf(given, { kind: 'who-can', topic: 'load' }, '2026-11-24 11:00', room),
  ];
  const examples = [...new Set(texts.flatMap(examplesIn))].filter((text) => !text.includes('…'));

  it.each(examples)('%s', (example) => {
    const { reading } = read(example, { at, room });
    expect(reading.unclear).toEqual([]);
    expect(reading.facts.length + reading.asks.length + reading.acts.length).toBeGreaterThan(0);
  });
});
