import { describe, expect, test } from 'vitest';
import { makeReader } from '../../core/language/reader.ts';
import { practiceIn } from '../practice/base-file.ts';
import { FERNGATE } from '../rules/loads/heard.ts';

const read = makeReader(practiceIn(FERNGATE));
const at = Date.UTC(2026, 10, 23, 10, 15);
const room = '!quay:example.org';

/** Notes of one thing, done or not, with and without a verb. */
const NOTES = [
  'tip 4 is sterile',
  '4 and 6 sterile',
  'used 5',
  'tip 6 on blue scanner',
  'wiped blue scanner',
  'load 118 passed',
  'load 119 failed',
  'don’t use 7',
  'tip 8 not sterile',
  'need to send 2',
  'is 3 sterile?',
  'sent 1 and 2',
  'took 3 off',
  '2 is missing',
  'bagged 7 and 8',
  'lunch is at 1',
  'calibrated blue scanner',
  'red scanner is not calibrated',
];
const JOINTS = [', ', '. ', ' and ', ' but ', ' - ', '; ', '\n', ', also ', ' then '];

const GOOD = new Set(['sterile', 'released', 'wiped', 'covered', 'sent', 'washed', 'bagged']);

/** Facts that make something count as done or safe, as text without their time. */
function goodFacts(text: string): readonly string[] {
  return read(text, { at, room }).reading.facts.flatMap((fact) => {
    const { when: _, ...told } = fact;
    const isGood = GOOD.has(fact.kind) || ('outcome' in fact && fact.outcome === 'passed');
    return isGood ? [JSON.stringify(told)] : [];
  });
}

describe('two things in one note', () => {
  test('nothing good is told of either that it does not tell by itself', () => {
    const wrong = NOTES.flatMap((one) =>
      NOTES.filter((other) => other !== one).flatMap((other) => {
        const told = new Set([...goodFacts(one), ...goodFacts(other)]);
        return JOINTS.flatMap((joint) => {
          const text = `${one}${joint}${other}`;
          return goodFacts(text).flatMap((fact) => (told.has(fact) ? [] : [`${text} → ${fact}`]));
        });
      }),
    );
    expect(wrong).toEqual([]);
  });

  test.each([
    ['used 5, 4 and 6 sterile', ['4', '6']],
    ['bagged 7 and 8 and tip 4 is sterile', ['4']],
    ['sent 1 and 2 - tip 4 is sterile', ['4']],
    ['used 5, also tip 4 is sterile', ['4']],
  ])('%s', (text, tips) => {
    const { facts } = read(text, { at, room }).reading;
    expect(facts.find(({ kind }) => kind === 'sterile')).toMatchObject({ tips });
  });

  test.each([
    'haven’t wiped or covered blue scanner',
    'haven’t wiped and covered blue scanner',
    'haven’t wiped, covered or calibrated blue scanner',
    'haven’t wiped, covered, or calibrated blue scanner',
    'neither wiped nor covered blue scanner',
    'not wiped or covered blue scanner',
    'tip 4 hasn’t been washed, bagged or sent',
    'haven’t washed or bagged 4',
    'tips 4 and 5 not washed or bagged',
    'no wiping or covering done on blue scanner',
    'nobody’s wiped or covered blue scanner',
  ])('one denial for a row of acts: %s', (text) => {
    expect(read(text, { at, room }).reading.facts).toEqual([]);
  });

  test.each([
    ['not wiped blue scanner yet, moved it to north clinic', 'moved'],
    ['haven’t calibrated red scanner, wiped blue scanner', 'wiped'],
    ['didn’t use 4, used 5', 'used'],
    ['didn’t wipe blue scanner but covered it', 'covered'],
    ['forgot to cover blue scanner. 2 is missing', 'missing'],
  ])('a denial stays with its own: %s', (text, kind) => {
    const { facts } = read(text, { at, room }).reading;
    expect(facts.map((fact) => fact.kind)).toEqual([kind]);
    expect(JSON.stringify(facts)).not.toContain('"tips":["4"]');
  });

  test.each([
    ['used tip 4, 9am', '2026-11-23T09:00:00Z'],
    ['used tip 4. lunch is at 9', '2026-11-23T10:15:00Z'],
    ['wiped blue scanner. Tom is in at 9', '2026-11-23T10:15:00Z'],
    ['used tip 4, that was at 9', '2026-11-23T09:00:00Z'],
  ])('a time is its own: %s', (text, when) => {
    expect(read(text, { at, room }).reading.facts).toMatchObject([{ when }]);
  });
});
