import { describe, expect, test } from 'vitest';
import { type Short, stateOf } from '../play.ts';
import { answeredAfter, heard, NORTH, underLast } from './heard.ts';

describe('“it” is what this person told of last', () => {
  test.each([
    ['tip 7 fell on the floor', 'binned it', 'Taken as: tip 7 retired.'],
    ["can't find tip 4", 'found it', 'Taken as: tip 4 found.'],
    ['used tip 5', 'sent it off', 'Taken as: tip 5 sent to the autoclave.'],
    ['used tip 5 on green', 'it’s gone to steri', 'Taken as: tip 5 sent to the autoclave.'],
    ['used tip 5 on green', 'wiped it', 'Taken as: green scanner wiped down.'],
    ['used tip 5', 'washed it and bagged it', 'Taken as: tip 5 washed; tip 5 bagged.'],
    ['scan done on green', 'wiped it down', 'Taken as: green scanner wiped down.'],
    ['wiped green', 'covered it', 'Taken as: green scanner cover on.'],
    ['wiped green', 'dropped it', 'Taken as: green scanner: dropped.'],
    ['wiped green', 'wiped the other one', 'Taken as: blue scanner wiped down.'],
    [
      'scan done on green',
      'wiped down and covered',
      'Taken as: green scanner wiped down; green scanner cover on.',
    ],
    ['used tips 3 and 4', 'washed, bagged', 'Taken as: tips 3, 4 washed; tips 3, 4 bagged.'],
    ['used tip 5 on green', 'wiped', 'Taken as: green scanner wiped down.'],
    ['used tips 4 and 6', 'both bagged', 'Taken as: tips 4, 6 bagged.'],
    ['used tips 4, 5 and 6', 'they’ve been washed', 'Taken as: tips 4–6 washed.'],
  ])('“%s”, “%s”: %s', async (first, then, line) => {
    const said = await underLast(['09:00', 'tom', first], ['09:04', 'tom', then]);
    expect(said).toContain(line);
  });

  test('both are two that were told of one by one', async () => {
    const did = await heard([
      ['08:58', 'tom', 'tip 8 fell on the floor'],
      ['09:00', 'tom', 'used tip 4'],
      ['09:02', 'tom', 'used tip 6'],
      ['09:04', 'tom', "they're both in the ultrasonic"],
    ]);
    expect(stateOf(did).tips['4'].state).toBe('washed');
    expect(stateOf(did).tips['6'].state).toBe('washed');
  });

  test('what was told of before something else, where nothing else can be meant', async () => {
    const said = await underLast(
      ['09:00', 'tom', 'used tip 5 on green'],
      ['09:01', 'tom', 'wiped it'],
      ['09:02', 'tom', 'sent it off'],
    );
    expect(said).toContain('Taken as: tip 5 sent to the autoclave.');
  });
});

describe('it is asked', () => {
  test.each([
    [
      'where only a room is said',
      'moved blue to north',
      'left it in surgery 1',
      'Blue scanner moved to Surgery 1, Quay Street? yes or no',
    ],
    [
      'where it would loosen',
      'tip 5 sent to autoclave',
      'it’s sterile',
      'Tip 5 said to be sterile? yes or no',
    ],
    [
      'where several are meant',
      'used tips 4 and 5',
      'binned it',
      'Which one? Such as: tip 4 retired.\n1️⃣ tip 4\n2️⃣ tip 5\nTap, or type its own number.',
    ],
    [
      'where it goes is not said',
      'moved blue to north',
      'it’s arrived',
      'Blue scanner moved to Quay Street? yes or no',
    ],
    ['where somebody else is named', 'used tip 5', 'Dan lost it', 'Tip 5 missing? yes or no'],
  ])('%s: “%s”, “%s”', async (_, first, then, line) => {
    expect(await underLast(['09:00', 'tom', first], ['09:04', 'tom', then])).toEqual([line]);
  });

  test.each([
    ['5', '5'],
    ['1', '4'],
    ['tip 5', '5'],
  ])('“%s” then means tip %s', async (answer, tip) => {
    const did = await heard([
      ['09:00', 'tom', 'used tips 4 and 5'],
      ['09:01', 'tom', 'binned it'],
      ['09:02', 'tom', answer],
    ]);
    const other = tip === '4' ? '5' : '4';
    expect(stateOf(did).tips[tip].state).toBe('retired');
    expect(stateOf(did).tips[other].state).toBe('used');
  });

  test('of an older note where a later one would do as well', async () => {
    const said = await underLast(
      ['09:00', 'tom', 'used tip 4'],
      ['09:01', 'tom', 'used tip 5'],
      ['09:02', 'tom', 'wiped green'],
      ['09:03', 'tom', 'binned it'],
    );
    expect(said).toEqual(['Tip 5 retired? yes or no']);
  });

  test('where somebody else told of it', async () => {
    const lines: Short[] = [
      ['09:00', 'tom', "can't find tip 4"],
      ['09:01', 'dan', 'found it'],
    ];
    expect(await underLast(...lines)).toEqual(['Tip 4 found? yes or no']);
    expect(stateOf(await heard(lines)).tips['4'].state).toBe('missing');
  });

  test('what would loosen is typed: a tap is refused', async () => {
    const did = await heard([
      ['09:00', 'tom', 'tip 5 sent to autoclave'],
      ['09:01', 'tom', 'it’s sterile'],
      ['09:02', 'tom', '', { reacts: { last: 'question' }, key: '✅' }],
    ]);
    expect(stateOf(did).tips['5'].state).toBe('sent');
  });

  test('where a question is asked anyway, with what was told of last in front', async () => {
    const said = await underLast(['09:00', 'tom', 'scan done on green'], ['09:01', 'tom', 'calibrated it']);
    expect(said).toEqual(['Which scanner was calibrated?\n1. green scanner\n2. blue scanner']);
  });
});

describe('nothing is taken', () => {
  test.each([
    ['after more than ten minutes', '09:11', {}],
    ['in another chat room', '09:01', NORTH],
  ])('%s', async (_, time, more) => {
    const lines: Short[] = [
      ['09:00', 'tom', 'tip 7 fell on the floor'],
      [time, 'tom', 'binned it', more],
    ];
    expect(await underLast(...lines)).toEqual([]);
    expect(stateOf(await heard(lines)).tips['7'].state).toBe('used');
  });

  test('talk, denials, requests, plans and questions a minute after a note draw nothing', async () => {
    const words = [
      'binned it?',
      'haven’t binned it',
      'can you bin it',
      'will bin it later',
      'if it fogs bin it',
      'love it',
      'got it',
      'it’s raining',
      'that’s it for me',
      'found it hilarious',
      'found it',
      'both of us are knackered',
      'they were so rude',
      'did it hurt',
      'sorry about it',
      'covered for Amy',
      'washed up',
      'it’s frozen',
      'the bridge, then it’s broken regardless',
      'cleaned',
      'sent',
    ];
    expect(await answeredAfter('used tip 5', words)).toEqual([]);
  });
});
