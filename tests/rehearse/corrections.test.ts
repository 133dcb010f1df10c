import { describe, expect, test } from 'vitest';
import { end, play, posts, script, stateOf } from './play.ts';

const COUNTED = ['08:00', 'rosa', 'tips 1 to 8 are sterile and on the shelf'] as const;

describe('an edited note says what it now says, from its own time', () => {
  test('the tip named first is as it was, the other is used since the note', async () => {
    const did = await play([
      ...script([COUNTED, ['09:00', 'tom', 'used tip 4'], ['09:03', 'tom', 'used tip 5', { edits: '$2' }]]),
      end('09:04'),
    ]);
    expect(stateOf(did).tips['4'].state).toBe('sterile');
    expect(stateOf(did).tips['5']).toMatchObject({ state: 'used', since: '2026-11-23T09:00:00Z' });
  });

  test('an edit by somebody else is ignored', async () => {
    const did = await play([
      ...script([COUNTED, ['09:00', 'tom', 'used tip 4'], ['09:03', 'dan', 'used tip 5', { edits: '$2' }]]),
      end('09:04'),
    ]);
    expect(stateOf(did).tips['4'].state).toBe('used');
    expect(stateOf(did).tips['5'].state).toBe('sterile');
  });
});

describe('over a restart', () => {
  const asked = script([COUNTED, ['09:00', 'tom', 'used tip 4. is blue ready?']]);
  const edit = {
    at: '2026-11-23T09:03:00Z',
    room: '!quay:example.org',
    from: '@tom:example.org',
    id: '$9',
    edits: '$2',
    text: 'used tip 5. is blue ready?',
  };

  // What comes back from the record has its members in another order than what was just read.
  test.each([
    ['without', []],
    ['with', [{ at: '2026-11-23T09:02:00Z', restart: true }]],
  ])('a question that an edit leaves as it was is answered once, %s one', async (_, restart) => {
    const did = await play([...asked, ...restart, edit, end('09:04')]);
    expect(stateOf(did).tips['5'].state).toBe('used');
    expect(posts(did, 'answer')).toHaveLength(1);
  });
});

describe('a note taken back says nothing', () => {
  test.each([
    ['undo typed', { text: 'undo' }],
    ['the note deleted', { redacts: '$2' }],
  ])('%s by its author within ten minutes', async (_how, how) => {
    const [first, used] = script([COUNTED, ['09:00', 'tom', 'used tip 4']]);
    const back = {
      at: '2026-11-23T09:05:00Z',
      room: '!quay:example.org',
      from: '@tom:example.org',
      id: '$9',
      ...how,
    };
    const did = await play([first ?? {}, used ?? {}, back, end('09:06')]);
    expect(stateOf(did).tips['4'].state).toBe('sterile');
  });

  test('a bare “undo” is told which note it took back; in reply to the note a thumb is enough', async () => {
    const lines = script([COUNTED, ['09:00', 'tom', 'used tip 4'], ['09:05', 'tom', 'undo']]);
    const bare = await play([...lines, end('09:06')]);
    expect(posts(bare, 'record').at(-1)?.text).toBe('Taken back (noted 09:00): Tip 4 used.');
    const reply = lines.map((line) =>
      'text' in line && line.text === 'undo' ? { ...line, replyTo: '$2' } : line,
    );
    const replied = await play([...reply, end('09:06')]);
    expect(stateOf(replied).tips['4'].state).toBe('sterile');
    expect(posts(replied, 'record')).toEqual([]);
  });

  test('later than that it would make a tip sterile: it waits for the lead, whose yes carries it out', async () => {
    const asked = script([COUNTED, ['09:00', 'tom', 'used tip 4'], ['09:30', 'tom', 'undo']]);
    const waiting = await play([...asked, end('09:31')]);
    expect(stateOf(waiting).tips['4'].state).toBe('used');
    expect(posts(waiting, 'question').at(-1)?.mentions).toEqual(['@rosa:example.org']);
    const yes = {
      at: '2026-11-23T09:40:00Z',
      room: '!quay:example.org',
      from: '@rosa:example.org',
      id: '$9',
      text: 'yes',
    };
    const allowed = await play([...asked, yes, end('09:41')]);
    expect(stateOf(allowed).tips['4'].state).toBe('sterile');
  });

  test('a colleague’s yes does not carry it out, the lead’s still does', async () => {
    const asked = script([
      COUNTED,
      ['09:00', 'tom', 'used tip 4'],
      ['09:30', 'tom', 'undo'],
      ['09:35', 'tom', 'yes'],
    ]);
    const refused = await play([...asked, end('09:36')]);
    expect(stateOf(refused).tips['4'].state).toBe('used');
    const yes = {
      at: '2026-11-23T09:40:00Z',
      room: '!quay:example.org',
      from: '@rosa:example.org',
      id: '$9',
      text: 'yes',
    };
    const allowed = await play([...asked, yes, end('09:41')]);
    expect(stateOf(allowed).tips['4'].state).toBe('sterile');
  });

  test('what it had settled is due again, and the post says so', async () => {
    const did = await play([
      ...script([
        ['10:31', 'tom', 'calibrated blue'],
        ['10:32', 'tom', 'undo'],
      ]),
      end('10:33'),
    ]);
    expect(stateOf(did).scanners.A.ready).toBe(false);
  });
});

describe('"sorry, tip 5 not 4"', () => {
  test('puts the other tip in the note’s place', async () => {
    const did = await play([
      ...script([COUNTED, ['09:00', 'tom', 'used tip 4'], ['09:02', 'tom', 'sorry, tip 5 not 4']]),
      end('09:03'),
    ]);
    expect(stateOf(did).tips['4'].state).toBe('sterile');
    expect(stateOf(did).tips['5']).toMatchObject({ state: 'used', since: '2026-11-23T09:00:00Z' });
  });
});
