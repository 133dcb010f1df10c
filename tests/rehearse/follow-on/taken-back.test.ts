import { describe, expect, test } from 'vitest';
import { posts, type Short, stateOf } from '../play.ts';
import { type Between, heard, under } from './heard.ts';

const USED: readonly Short[] = [
  ['09:00', 'tom', 'used tip 5'],
  ['09:02', 'tom', '6 as well'],
];

describe('what was taken stands in its own note’s place', () => {
  test.each([
    ['undone', { text: 'undo' }],
    ['deleted', { redacts: '$3' }],
  ])('%s, it alone is taken back', async (_, how) => {
    const did = await heard([...USED, ['09:04', 'tom', '', how]]);
    expect(stateOf(did).tips['5'].state).toBe('used');
    expect(stateOf(did).tips['6'].state).toBe('sterile');
  });

  test.each([
    ['7 as well', '7'],
    ['used tip 7', '7'],
  ])('edited to “%s”, it says that from its own time', async (text, tip) => {
    const did = await heard([...USED, ['09:04', 'tom', text, { edits: '$3' }]]);
    expect(stateOf(did).tips['6'].state).toBe('sterile');
    expect(stateOf(did).tips[tip]).toMatchObject({ state: 'used', since: '2026-11-23T09:02:00Z' });
  });

  test('edited to talk, it says nothing', async () => {
    const did = await heard([...USED, ['09:04', 'tom', 'tea anyone', { edits: '$3' }]]);
    expect(stateOf(did).tips['6'].state).toBe('sterile');
  });

  test('talk edited to lean on the note before it leans on nothing later', async () => {
    const did = await heard([
      ['09:00', 'tom', 'used tip 5'],
      ['09:01', 'tom', 'where is blue?'],
      ['09:02', 'tom', 'wiped green'],
      ['09:04', 'tom', '6 as well', { edits: '$3' }],
    ]);
    expect(stateOf(did).tips['6']).toMatchObject({ state: 'used', since: '2026-11-23T09:01:00Z' });
  });

  test('a question about it lapses with its note', async () => {
    const did = await heard([
      ['09:00', 'tom', 'used and sent tip 5'],
      ['09:02', 'tom', '6 as well'],
      ['09:03', 'tom', '', { redacts: '$3' }],
      ['09:04', 'tom', '1'],
    ]);
    expect(stateOf(did).tips['6'].state).toBe('sterile');
  });
});

describe('when the note before is corrected, what was taken from it stays, and that is said', () => {
  const LINE = /^Still recorded \(noted 09:02\): /;

  test.each<readonly [string, string, string, Short]>([
    [
      'edited to another result',
      'calibrated green, all good',
      'blue too',
      ['09:04', 'tom', 'calibration failed on green', { edits: '$2' }],
    ],
    ['taken back', 'used tip 5', '6 as well', ['09:04', 'tom', '', { redacts: '$2' }]],
    [
      'of another tip',
      'tip 7 fell on the floor',
      'binned it',
      ['09:04', 'tom', 'tip 8 fell on the floor', { edits: '$2' }],
    ],
  ])('%s: “%s”, “%s”', async (_, first, then, correction) => {
    const did = await heard([['09:00', 'tom', first], ['09:02', 'tom', then], correction]);
    const said = under(did, '$3').filter((text) => LINE.test(text));
    expect(said).toHaveLength(1);
  });

  test.each<readonly [string, string, string, Short]>([
    ['another item in its place', 'used tip 5', '6 as well', ['09:04', 'tom', 'sorry, tip 4 not 5']],
    [
      'more said of it',
      'used tip 5',
      'binned it',
      ['09:04', 'tom', 'used tip 5, mirror cracked', { edits: '$2' }],
    ],
  ])('not where it still follows: %s', async (_, first, then, correction) => {
    const did = await heard([['09:00', 'tom', first], ['09:02', 'tom', then], correction]);
    expect(posts(did, 'record').filter(({ text = '' }) => LINE.test(text))).toEqual([]);
  });
});

test('“sorry, tip 4 not 5” corrects the latest note that said 5, not the one that leans on it', async () => {
  const did = await heard([...USED, ['09:04', 'tom', 'sorry, tip 4 not 5']]);
  const { 4: four, 5: five, 6: six } = stateOf(did).tips;
  expect([four.state, five.state, six.state]).toEqual(['used', 'sterile', 'used']);
});

describe('over a restart', () => {
  const RESTART: readonly Between[] = [{ at: '2026-11-23T09:01:00Z', restart: true }];

  test('what leans on a note of before it is taken', async () => {
    const did = await heard(USED, RESTART);
    expect(stateOf(did).tips['6'].state).toBe('used');
    expect(under(did, '$3')).toEqual(['Tip 6 used.', '👍']);
  });

  test('what was taken is kept as facts: nothing is worked out again', async () => {
    const did = await heard(
      [...USED, ['09:05', 'tom', '', { redacts: '$2' }]],
      [{ at: '2026-11-23T09:06:00Z', restart: true }],
    );
    expect(stateOf(did).tips['5'].state).toBe('sterile');
    expect(stateOf(did).tips['6'].state).toBe('used');
  });

  test('a question waits for its answer', async () => {
    const did = await heard(
      [
        ['09:00', 'tom', 'used tip 5'],
        ['09:00', 'dan', '6 as well'],
        ['09:02', 'dan', 'yes'],
      ],
      RESTART,
    );
    expect(stateOf(did).tips['6'].state).toBe('used');
  });

  test('notes that waited while the program was away lean on each other as typed', async () => {
    const did = await heard(USED, [
      { at: '2026-11-23T08:50:00Z', restart: true, back: '2026-11-23T09:30:00Z' },
    ]);
    expect(stateOf(did).tips['6']).toMatchObject({ state: 'used', since: '2026-11-23T09:02:00Z' });
  });
});

test('in reply to an earlier note of one’s own, it leans on that one', async () => {
  const did = await heard([
    ['09:00', 'tom', 'used tip 5'],
    ['09:01', 'tom', 'wiped green'],
    ['09:02', 'tom', '6 as well', { replyTo: '$2' }],
  ]);
  expect(under(did, '$4')).toEqual(['Tip 6 used.', '👍']);
});
