import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../core/reading/reading.ts';
import { loadCorpus } from './format.ts';
import { matches } from './same-reading.ts';

const here = fileURLToPath(new URL('.', import.meta.url));
const files = ['voices', 'kinds', 'talk', 'held'].flatMap((folder) =>
  existsSync(here + folder)
    ? readdirSync(here + folder)
        .filter((name) => name.endsWith('.yaml'))
        .map((name) => `${folder}/${name}`)
    : [],
);

describe('the corpus', () => {
  it('has files', () => expect(files).not.toEqual([]));

  it.each(files)('%s is valid', (name) => {
    const { cases, errors } = loadCorpus(here + name);
    const held = name.startsWith('held/');
    const report = errors.map((e) =>
      held ? `${name} case ${e.number}` : `${name}:${e.line} case ${e.number}: ${e.message}`,
    );
    expect(report).toEqual([]);
    expect(cases.length).toBeGreaterThan(0);
  });

  it.each(files)('%s gives no note twice', (name) => {
    const seen = new Map<string, number>();
    const again = loadCorpus(here + name).cases.flatMap((c) => {
      const key = JSON.stringify([c.note, c.context]);
      const first = seen.get(key);
      seen.set(key, c.number);
      return first === undefined ? [] : [`cases ${first} and ${c.number}`];
    });
    expect(again).toEqual([]);
  });
});

describe('a mistake in a corpus file', () => {
  const wrong = loadCorpus(`${here}fixtures/mistakes.yaml`);
  it('is told by line and case', () => {
    expect(
      wrong.errors.map((e) => `${e.line} ${e.number} ${e.message.split('.').slice(0, 3).join('.')}`),
    ).toEqual([
      '8 1 no tip 44',
      '11 2 sent: tips out of order',
      '14 3 no room at cottage: m1',
      '17 4 sent is after its note',
      '18 5 facts.0.kind: Invalid discriminator value',
    ]);
  });
  it('leaves the other cases standing, filled in', () => {
    expect(wrong.cases.map((c) => [c.line, c.note, c.context, c.expected.facts])).toEqual([
      [
        23,
        'used tip 2',
        { at: '2026-11-24T09:00:00Z', from: '@gwen:example.org' },
        [{ kind: 'used', tips: ['2'], when: '2026-11-24T09:00:00Z' }],
      ],
    ]);
  });
});

describe('the same reading', () => {
  const empty: Reading = { facts: [], asks: [], acts: [], plans: [], unclear: [] };
  const when = '2026-11-23T10:15:00Z';
  const held = (reason?: string): Reading => ({
    ...empty,
    facts: [{ kind: 'held', when, items: ['tip:4'], ...(reason === undefined ? {} : { reason }) }],
  });
  it('minds every slot but the wording of a reason', () => {
    expect(matches(held('mirror cracked'), held('Mirror cracked!'))).toBe(true);
    expect(matches(held('mirror cracked'), held('the mirror cracked'))).toBe(true);
    expect(matches(held('mirror cracked'), held('fogs'))).toBe(false);
    expect(matches(held('mirror cracked'), held())).toBe(false);
    expect(matches(held(), empty)).toBe(false);
    expect(matches(empty, held())).toBe(false);
  });
  it('minds choices only where the gold gives them', () => {
    const bare: Reading = { ...empty, unclear: [{ kind: 'unclear', about: 'scanner' }] };
    const full: Reading = { ...empty, unclear: [{ kind: 'unclear', about: 'scanner', choices: ['A'] }] };
    expect(matches(bare, full)).toBe(true);
    expect(matches(full, bare)).toBe(false);
  });
});
