import { describe, expect, test } from 'vitest';
import { stateOf } from '../play.ts';
import { COUNTED, day, marksOn, PREFIXED, postsFrom, words } from './larkmoor.ts';

describe('a load whose tips were not said', () => {
  test.each([
    ['2 and 3', ['2', '3']],
    ['tips 2 to 4', ['2', '3', '4']],
    ['2, 3 & 5', ['2', '3', '5']],
    ['7', ['7']],
  ])('the answer “%s” puts all of them in, from the note’s own time', async (text, ids) => {
    const did = await day([COUNTED, '10:00 sam: load 61 on', `10:05 sam: ${text}`, '10:06']);
    const { tips } = stateOf(did);
    expect(Object.keys(tips).filter((id) => tips[id].state === 'in-load')).toEqual(ids);
    expect(tips[ids[0] ?? ''].since).toBe('2026-11-24T10:00:00Z');
    expect(marksOn(did, '$3')).toEqual(['👍']);
  });

  test('“all” are those that were offered', async () => {
    const did = await day([
      COUNTED,
      '09:59 sam: used tips 8 and 9',
      '10:00 sam: load 61 on',
      '10:05 sam: all',
      '10:06',
    ]);
    const { tips } = stateOf(did);
    expect(Object.keys(tips).filter((id) => tips[id].state === 'in-load')).toEqual(['8', '9']);
  });

  test('shared prefixes may be left out', async () => {
    const did = await day(
      [
        '08:31 sam: tips 1 to 6 are sterile and on the shelf',
        '10:00 sam: load 61 on',
        '10:05 sam: 2 and 3',
        '10:06',
      ],
      PREFIXED,
    );
    expect(stateOf(did).tips).toMatchObject({
      T2: { state: 'in-load' },
      T3: { state: 'in-load' },
      T1: { state: 'sterile' },
    });
  });

  test.each(['back in 2 minutes', '2 on coral', 'room 2'])('“%s” is no answer', async (text) => {
    const did = await day([COUNTED, '10:00 sam: load 61 on', `10:05 sam: ${text}`, '10:06']);
    expect(stateOf(did).tips['2'].state).not.toBe('in-load');
  });
});

describe('a result alone, of a load that no note started', () => {
  const ALONE = [COUNTED, '11:05 sam: load 9 passed, 134 for 3.5 min'];

  test.each([
    ['5 and 6', '2026-11-24T11:05:00Z'],
    ['load 9 on at 10:20 with tips 5 and 6', '2026-11-24T11:05:00Z'],
  ])('“%s” gives it its tips, and the result stands', async (text, since) => {
    const did = await day([...ALONE, `11:10 sam: ${text}`, '11:11']);
    expect(stateOf(did).tips['5']).toMatchObject({ state: 'sterile', load: '9', cycles: 1, since });
    expect(stateOf(did).tips['7'].cycles).toBe(0);
    expect(postsFrom(did, '11:10', 'load')[0]?.text).toContain('Load 9 passed: tips 5 and 6 are sterile');
    if (text === '5 and 6') expect(postsFrom(did, '11:10', 'record')).toEqual([]);
  });

  test('a failed one fails them, and every scan since its end is listed for the lead', async () => {
    const did = await day([
      COUNTED,
      '11:05 sam: load 9 failed',
      '11:06 joy: used tip 5 on coral',
      '11:10 sam: 5 and 6',
      '11:11',
    ]);
    expect(stateOf(did).tips['6']).toMatchObject({ state: 'used', load: '9' });
    expect(words(postsFrom(did, '11:10', 'warning'))).toMatch(
      /Load 9 failed.*1 scan[\s\S]*11:06, coral scanner/,
    );
  });

  test('a load of that number that goes on later is another one', async () => {
    const did = await day([...ALONE, '11:10 sam: load 9 on with tips 5 and 6', '11:11']);
    expect(stateOf(did).tips['5'].state).toBe('in-load');
    expect(words(postsFrom(did, '11:10', 'load'))).toContain('taken as a new load');
  });

  test('what was noted of a tip since its end stands', async () => {
    const did = await day([
      ...ALONE,
      '11:07 joy: used tip 5',
      '11:10 sam: 5 and 6',
      '11:15 joy: tip 5 on coral',
      '11:16',
    ]);
    expect(stateOf(did).tips['6'].state).toBe('sterile');
    expect(did.filter(({ about }) => about === 'warning').map(({ items }) => items?.[0])).toEqual(['tip:5']);
  });
});

describe('sets are those that the record knows at that moment', () => {
  test('“all the used tips”, “the rest of the bagged ones”, “bar”', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: used tips 1, 2, 3 and 4',
      '09:05 sam: all the used tips are washed',
      '09:10 sam: 1 and 2 are pouched',
      '09:20 sam: tip 3 and the rest of the bagged ones sent to autoclave',
      '09:25 sam: used tips 5 and 6',
      '09:30 sam: all the used ones bar 6 sent to autoclave',
      '09:31',
    ]);
    expect(stateOf(did).tips).toMatchObject({
      1: { state: 'sent' },
      2: { state: 'sent' },
      3: { state: 'sent' },
      4: { state: 'washed' },
      5: { state: 'sent' },
      6: { state: 'used' },
      7: { state: 'sterile' },
    });
  });

  test('what is used later was not meant', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: used tip 1',
      '09:05 sam: all the used tips sent to autoclave',
      '09:10 sam: used tip 2',
      '09:12 sam: all the used tips sent to steri [edits $3]',
      '09:13',
    ]);
    expect(stateOf(did).tips).toMatchObject({ 1: { state: 'sent' }, 2: { state: 'used' } });
  });

  test('of a chat room’s own site only', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: used tip 1',
      '09:01 joy@hill: used tip 20',
      '09:05 joy@hill: all the used tips sent to autoclave',
      '09:06',
    ]);
    expect(stateOf(did).tips).toMatchObject({ 1: { state: 'used' }, 20: { state: 'sent' } });
  });
});

test('tips that a note added are known by their numbers from then on', async () => {
  const did = await day([
    COUNTED,
    '09:00 sam: new tips 13 to 16 arrived',
    '09:10 sam: load 61 on with tips 13 and 14',
    '09:50 sam: load 61 passed, 134 for 4 min',
    '09:55 sam: tip 13 on coral',
    '09:56',
  ]);
  expect(stateOf(did).tips).toMatchObject({
    13: { state: 'fitted', cycles: 1 },
    14: { state: 'sterile' },
    15: { state: 'unknown' },
  });
});
