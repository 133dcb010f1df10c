import { describe, expect, test } from 'vitest';
import { toText } from '../../bot/show/text.ts';
import { answer } from '../../core/answers/answer.ts';
import { changedRules } from '../../core/defaults/changed-rules.ts';
import { PostLog } from '../../core/desk/post-log.ts';
import { Readers } from '../../core/desk/readers.ts';
import { Standing } from '../../core/desk/standing.ts';
import { makeReader } from '../../core/language/reader.ts';
import { baseWith, practiceIn } from '../practice/base-file.ts';

const RULES = 'rules: {loadTable: uk}';

function changes(before: string, after: string) {
  return changedRules(
    practiceIn(baseWith([RULES, `rules: ${before}`])),
    practiceIn(baseWith([RULES, `rules: ${after}`])),
  );
}

describe('what a new practice file changes of the rules', () => {
  test.each([
    ['nothing', '{loadTable: uk}', '{loadTable: uk}', []],
    ['a default that is written down', '{}', '{wipeAfterMinutes: 10}', []],
    ['one set', '{}', '{wipeAfterMinutes: 15}', [{ name: 'wipeAfterMinutes', from: 10, to: 15 }]],
    ['one taken out', '{loadTable: uk}', '{}', [{ name: 'loadTable', from: 'uk', to: 'none' }]],
    [
      'one of a site',
      '{}',
      '{sites: {north: {loadTable: uk}}}',
      [{ name: 'loadTable', site: 'north', from: 'none', to: 'uk' }],
    ],
    [
      'one of a scanner taken out',
      '{scanners: {A: {wipeAfterMinutes: 5}}}',
      '{}',
      [{ name: 'wipeAfterMinutes', scanner: 'A', from: 5, to: 10 }],
    ],
  ])('%s', (_name, before, after, expected) => {
    expect(changes(before, after)).toEqual(expected);
  });
});

describe('given a practice file with another rule is taken into the record', () => {
  const readers = new Readers(makeReader);
  const first = Standing.take(readers, baseWith(), null, {
    turn: 1,
    at: '2026-11-23T09:00:00Z',
    options: {},
  });
  const changed = baseWith([RULES, 'rules: {loadTable: uk, wipeAfterMinutes: 15}']);
  const { practice, timeline } = Standing.take(readers, changed, first, {
    turn: 2,
    at: '2026-11-23T10:00:00Z',
    options: {},
  });
  const view = {
    practice,
    state: timeline.state,
    said: new PostLog(),
    now: Date.parse('2026-11-23T11:00:00Z'),
  };
  const ask = { kind: 'record', from: '2026-11-23', to: '2026-11-23' } as const;
  const { message, file } = answer(ask, { ...view, room: '!quay:example.org', from: '', entries: timeline });

  test('when the record is asked for, then it counts the change', () => {
    expect(toText(message)).toContain('Rules changed in the practice file: 1');
  });

  test('then its file has when, from what to what, and by whom', () => {
    const row = file?.content.split('\r\n')[1];
    expect(row).toBe(
      '2026-11-23 10:00,2026-11-23T10:00:00Z,rule wipeAfterMinutes changed from 10 minutes to 15 minutes,,,practice file,2026-11-23T10:00:00Z',
    );
  });
});
