import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { COUNTED, day, words } from './larkmoor.ts';

// "Did load 118 pass?" is answered by people with all they know, not by one of two words.
const OUT = [
  COUNTED,
  '09:00 sam: used tips 2 and 5',
  '09:10 sam: load 118 on with tips 2, 5',
  '09:50 sam: load 118 is out',
];

describe('an answer that tells more than the outcome', () => {
  test.each([
    ['passed 134 for 3.5', 'sterile'],
    ['passed, 134 for 3.5 mins, strip turned, dry', 'sterile'],
    ['pass', 'sterile'],
    ['it passed', 'sterile'],
    ['failed, strip didn’t turn', 'used'],
    ['no, failed', 'used'],
    ['134 for 2 min', 'in-load'],
  ])('“%s” leaves the tips %s', async (answer, state) => {
    const did = await day([...OUT, `09:52 sam: ${answer}`, '09:53']);
    expect(stateOf(did).tips['5']).toMatchObject({ state, load: '118' });
  });

  test('it counts from the note that was asked about, with the figures', async () => {
    const did = await day([
      ...OUT,
      '09:58 sam: passed 134 for 3.5',
      '09:59 sam: what was in load 118?',
      '10:00',
    ]);
    expect(words(posts(did, 'answer'))).toContain('134');
    expect(words(posts(did, 'answer'))).toContain('09:50');
  });

  test('other talk meanwhile is no answer', async () => {
    const did = await day([...OUT, '09:52 sam: passed my driving test!', '09:53']);
    expect(stateOf(did).tips['5'].state).toBe('in-load');
  });
});
