import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { COUNTED, day, LARKMOOR, marksOn, postsFrom, THREE_AUTOCLAVES, words } from './larkmoor.ts';

describe('a site with several autoclaves and a note that names none', () => {
  test.each(['2', 'small', 'small autoclave', 'the small one'])(
    'a test: the answer “%s” records it at its own time',
    async (text) => {
      const did = await day(
        [COUNTED, '09:10 sam: helix failed', `09:20 sam: ${text}`, '09:21'],
        THREE_AUTOCLAVES,
      );
      const [question] = postsFrom(did, '09:10', 'question');
      expect(question?.text).toBe(
        'Which autoclave? Nothing is recorded until you say.\n1. big autoclave\n2. small autoclave',
      );
      expect(question?.items).toEqual(['autoclave:big', 'autoclave:small']);
      expect(marksOn(did, '$2')).toEqual([]);
      expect(posts(did, 'warning')[0]?.text).toContain('No loads on the small autoclave');
      expect(stateOf(did).autoclaves).toMatchObject({ small: { held: true }, big: { held: false } });
    },
  );

  test('nothing is recorded until it is said', async () => {
    const did = await day([COUNTED, '09:10 sam: spore test positive', '09:40'], THREE_AUTOCLAVES);
    expect(stateOf(did).autoclaves).toMatchObject({ small: { held: false }, big: { held: false } });
  });

  test('anybody answers in reply to the question; a bare number is its author’s', async () => {
    const did = await day(
      [COUNTED, '09:10 sam: helix failed', '09:11 joy: 1', '09:12 joy: 2 [last question]', '09:13'],
      THREE_AUTOCLAVES,
    );
    expect(stateOf(did).autoclaves).toMatchObject({ small: { held: true }, big: { held: false } });
  });

  test('a load is kept, and its autoclave asked for', async () => {
    const did = await day(
      [
        COUNTED,
        '09:01 sam: load 118 on with tips 2 and 5',
        '09:05 sam: 2',
        '09:50 joy: load 118 passed, 134 for 3 min',
        '09:51',
      ],
      THREE_AUTOCLAVES,
    );
    expect(postsFrom(did, '09:01', 'question')[0]?.text).toMatch(/^Which autoclave is load 118 on\?/);
    // 3 min is enough by the UK table; the big one’s own cycle would miss it.
    expect(words(postsFrom(did, '09:50', 'load'))).toContain('Load 118 (the small autoclave) passed');
    expect(postsFrom(did, '09:50', 'load')[0]?.items).toContain('load:small/118');
    expect(stateOf(did).tips['2'].state).toBe('sterile');
  });

  test('of two open loads of one number the answer says which, by number or by name', async () => {
    const two = [
      COUNTED,
      '09:00 sam: load 118 on in the big autoclave with tips 2 and 5',
      '09:01 joy: load 118 on in the small autoclave with tips 1 and 3',
      '09:50 sam: load 118 failed',
    ];
    for (const text of ['2', 'small autoclave', 'the small one']) {
      const did = await day([...two, `09:55 sam: ${text}`, '09:56'], THREE_AUTOCLAVES);
      expect(posts(did, 'question').at(-1)?.text).toContain(
        '1. big autoclave: tips 2 and 5\n2. small autoclave: tips 1 and 3',
      );
      expect(marksOn(did, '$4')).toEqual([]);
      expect(stateOf(did).tips).toMatchObject({
        1: { state: 'used', load: 'small/118' },
        2: { state: 'in-load', load: 'big/118' },
      });
    }
  });

  test('where the chat room’s site has one, it is that', async () => {
    const did = await day(
      [
        '09:00 sam@hill: load 7 on with 20 and 21',
        '09:10 sam@hill: helix failed',
        '09:50 sam@hill: load 7 passed',
        '09:51',
      ],
      THREE_AUTOCLAVES,
    );
    expect(postsFrom(did, '09:00', 'question').filter(({ text }) => text?.includes('autoclave?'))).toEqual(
      [],
    );
    expect(stateOf(did).autoclaves.hc.held).toBe(true);
    expect(posts(did, 'load').at(-1)?.items).toContain('load:hc/7');
  });
});

describe('numbers that start again', () => {
  test('a number that has its result is a new load, and the earlier one keeps its own', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: load 1 on with tips 2 and 5',
      '09:40 sam: load 1 passed, 134 for 4 min',
      '11:00 sam: load 1 on with tip 7',
      '11:40 sam: load 1 failed',
      '11:41',
    ]);
    expect(words(postsFrom(did, '11:00', 'load'))).toContain('taken as a new load');
    expect(stateOf(did).tips).toMatchObject({
      2: { state: 'sterile' },
      5: { state: 'sterile' },
      7: { state: 'used' },
    });
  });

  test('each autoclave counts for itself', async () => {
    const did = await day(
      [
        COUNTED,
        '09:00 sam: load 1 on in the big autoclave with tip 2',
        '09:40 sam: load 1 passed, 134 for 4 min',
        '10:00 sam: load 1 on in the small autoclave with tip 5',
        '10:40 sam: load 1 on the small autoclave failed',
        '10:41',
      ],
      THREE_AUTOCLAVES,
    );
    expect(words(posts(did, 'load'))).not.toContain('taken as a new load');
    expect(stateOf(did).tips).toMatchObject({ 2: { state: 'sterile' }, 5: { state: 'used' } });
  });
});

describe('tips in loads', () => {
  test('in two loads at once: said', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: load 1 on with tip 2',
      '09:10 sam: load 2 on with tip 2',
      '09:11',
    ]);
    expect(posts(did, 'caution')[0]).toMatchObject({ items: ['tip:2', 'load:2'] });
    expect(posts(did, 'caution')[0]?.text).toContain('In two loads at once: tip 2');
  });

  test('never used in a load twice running: said', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: load 1 on with tip 2',
      '09:40 sam: load 1 passed',
      '10:00 sam: load 2 on with tip 2',
      '10:01',
    ]);
    expect(words(postsFrom(did, '10:00', 'load'))).toContain('Not used since the last load: tip 2');
  });
});

test('no autoclave listed: there is one, unnamed, and nothing is asked', async () => {
  const did = await day(
    [COUNTED, '09:00 sam: helix failed', '09:10 sam: load 1 on with tip 2', '09:11'],
    LARKMOOR,
  );
  expect(posts(did, 'warning').map(({ items }) => items)).toEqual([['autoclave'], ['load:1', 'autoclave']]);
});
