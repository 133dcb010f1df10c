import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { edited, lived, told, words } from './lived.ts';
import { HILL_TOP } from './practices.ts';

const hill = (script: string) => lived(script, HILL_TOP);
const USED = `
  2026-11-24
  08:30 tom@hill tips 1 to 6 are sterile and on the shelf
  09:00 tom@hill used tip 4`;

function used(did: Parameters<typeof stateOf>[0]): readonly string[] {
  const tips: Record<string, { state: string }> = stateOf(did).tips;
  return Object.entries(tips).flatMap(([id, { state }]) => (state === 'used' ? [id] : []));
}

describe('edits and deletions', () => {
  test.each([
    ['an edit', ['{"edits": "$2"} used tip 5'], ['5']],
    ['an edit of the edit', ['{"edits": "$2"} used tip 5', '{"edits": "$3"} used tip 6'], ['6']],
    ['a second edit of the note', ['{"edits": "$2"} used tip 5', '{"edits": "$2"} used tip 6'], ['6']],
    ['the edit deleted', ['{"edits": "$2"} used tip 5', '{"redacts": "$3"}'], ['4']],
    ['the note deleted after an edit', ['{"edits": "$2"} used tip 5', '{"redacts": "$2"}'], []],
    ['edited into talk', ['{"edits": "$2"} morning all'], []],
    ['undone, then edited', ['undo', '{"edits": "$2"} used tip 5'], ['5']],
    ['the same event again', ['{"id": "$2"} used tip 5', '{"id": "$2", "redacts": "$1"}'], ['4']],
  ])('%s', async (_what, lines, tips) => {
    const did = await hill(`${USED}
      ${lines.map((line, minute) => `09:0${minute + 1} tom@hill ${line}`).join('\n')}
      end 09:05`);
    expect(used(did)).toEqual(tips);
  });

  test('what could not be read and was put right counts from its own time, also after a restart', async () => {
    const did = await hill(`
      2026-11-24
      08:30 tom@hill tips 1 to 6 are sterile and on the shelf
      09:00 tom@hill hello everyone
      restart 09:01
      09:03 tom@hill {"edits": "$2"} used tip 5
      09:04 tom@hill undo
      09:05 tom@hill {"edits": "$2"} used tip 6
      end 09:06`);
    expect(stateOf(did).tips['6']).toMatchObject({ state: 'used', since: '2026-11-24T09:00:00Z' });
    expect(used(did)).toEqual(['6']);
  });

  test('an edit that asks is answered', async () => {
    const did = await hill(`${USED}
      09:01 tom@hill hello
      09:02 tom@hill {"edits": "$3"} which tips are used?
      end 09:03`);
    expect(posts(did, 'answer')[0]).toMatchObject({ replyTo: '$3', text: expect.stringContaining('4') });
  });
});

describe('what a correction settles and unsettles', () => {
  test('a pass taken back: its request stands again, and it is asked for again', async () => {
    const did = await hill(`
      2026-11-23
      08:30 tom@hill tips 1 to 6 are sterile and on the shelf
      10:40 tom@hill calibrated swift, passed
      10:45 tom@hill undo
      end 11:31`);
    expect(edited(did)).toEqual(['Done by Tom, 10:40', 'Due again: Tom took that back, 10:45.']);
    expect(told(did, 'calibration')).toEqual(['23 10:30 hill', '23 11:30 hill']);
  });

  test('of two in one post only the one taken back stands again', async () => {
    const did = await lived(`
      2026-11-23
      08:30 tom@hbr tips 1 to 10 are sterile and on the shelf
      10:36 jo@hbr calibrated kestrel, passed
      10:37 tom@hbr calibrated osprey, passed
      10:39 tom@hbr {"redacts": "$3"}
      end 10:40`);
    expect(edited(did)[0]).toMatch(/^Done by (Tom and Jo|Jo and Tom), 10:37$/);
    const again = did.findLast((one) => one.does === 'edit')?.text ?? '';
    expect(again).toContain('osprey');
    expect(again).not.toContain('kestrel');
  });

  test('a warning that lost its ground is struck with its question, which nobody can answer any more', async () => {
    const did = await hill(`${USED}
      09:30 tom@hill tip 4 on swift
      09:31 tom@hill {"edits": "$3"} tip 5 on swift
      09:32 tom@hill yes
      end 09:40`);
    expect(edited(did)).toEqual(['Taken back by Tom, 09:31', 'Taken back by Tom, 09:31']);
    expect(told(did, 'incident')).toEqual([]);
    expect(stateOf(did).tips['4'].state).toBe('used');
  });

  test('“sorry, tip 4 not 3” brings a warning to light', async () => {
    const did = await hill(`${USED}
      10:00 tom@hill tip 3 on swift
      10:01 tom@hill sorry, tip 4 not 3
      end 10:02`);
    expect(told(did, 'warning')).toEqual(['24 10:01 hill']);
    expect(stateOf(did).scanners.S1.tip).toBe('4');
    expect(stateOf(did).tips['3'].state).toBe('sterile');
  });
});

describe('what loosens', () => {
  test.each([
    ['undo', '09:30 tom@hill undo'],
    ['a deletion', '09:30 tom@hill {"redacts": "$2"}'],
    ['an edit', '09:30 tom@hill {"edits": "$2"} used tip 5'],
    ['a colleague’s undo', '09:03 jo@hill {"replyTo": "$2"} undo'],
  ])(
    '%s after ten minutes or by another is kept as a question to the lead, and nothing changes',
    async (_what, line) => {
      const did = await hill(`${USED}
      ${line}
      end 09:31`);
      expect(used(did)).toEqual(['4']);
      expect(posts(did, 'question').at(-1)?.mentions).toEqual(['@meg:x.org']);
      expect(words(did, 'question')).toContain('tip 4 sterile');
    },
  );

  test.each([
    ['yes', []],
    ['no', ['4']],
  ])('the lead’s %s', async (answer, left) => {
    const did = await hill(`${USED}
      09:30 tom@hill undo
      09:31 meg@hill ${answer}
      end 09:32`);
    expect(used(did)).toEqual(left);
  });

  test('a scanner that would be ready by it is named as people call it', async () => {
    const did = await hill(`${USED}
      09:05 tom@hill calibrated swift, passed
      09:10 tom@hill someone dropped swift
      09:25 tom@hill undo
      end 09:26`);
    expect(words(did, 'question')).toContain('swift ready');
    expect(stateOf(did).scanners.S1.ready).toBe(false);
  });

  test('the lead’s own correction needs nobody', async () => {
    const did = await hill(`${USED}
      11:00 meg@hill {"replyTo": "$2"} undo
      end 11:01`);
    expect(used(did)).toEqual([]);
  });
});

describe('privacy', () => {
  test.each([
    'used tip 2 on patient Mary Jones',
    'used tip 2, DOB 12/03/1984',
    'used tip 2, call 07700 900123',
    'used tip 2, NHS 943 476 5919',
    'used tip 2, joe.bloggs@mail.com',
  ])('“%s” is asked to be removed; what it tells of ours is kept', async (note) => {
    const did = await hill(`
      2026-11-24
      08:30 tom@hill tips 1 to 6 are sterile and on the shelf
      09:00 tom@hill ${note}
      end 09:01`);
    expect(posts(did, 'privacy')[0]).toMatchObject({ replyTo: '$2', mentions: ['@tom:x.org'] });
    expect(stateOf(did).tips['2'].state).toBe('used');
    expect(JSON.stringify(did)).not.toMatch(/Mary|1984|900123|5919|bloggs/);
  });

  test('a number that fails its check digit, and talk of patients without a name, are nobody’s business', async () => {
    const did = await hill(`
      2026-11-24
      09:00 tom@hill next patient is here
      09:01 tom@hill order 943 476 5918
      end 09:02`);
    expect(told(did, 'privacy')).toEqual([]);
  });

  test('edited clean: the request is struck', async () => {
    const did = await hill(`
      2026-11-24
      08:30 tom@hill tips 1 to 6 are sterile and on the shelf
      09:00 tom@hill used tip 2 on patient Mary Jones
      09:06 tom@hill {"edits": "$2"} used tip 2
      end 09:07`);
    expect(edited(did)).toEqual(['Taken back by Tom, 09:06']);
  });
});

describe('a correction that waits', () => {
  test('is out of date once the note was corrected otherwise: a late yes changes nothing', async () => {
    const did = await hill(`${USED}
      09:30 tom@hill undo
      09:35 meg@hill {"replyTo": "$2"} undo
      09:36 tom@hill used tip 4
      09:40 meg@hill yes
      end 09:41`);
    expect(used(did)).toEqual(['4']);
    expect(edited(did)).toContain('Taken back by Meg, 09:35');
  });

  test('asked for twice, the last is the one that counts', async () => {
    const did = await hill(`${USED}
      09:30 tom@hill {"edits": "$2"} used tip 5
      09:31 tom@hill {"edits": "$2"} used tip 6
      09:40 meg@hill yes
      09:41 meg@hill yes
      end 09:42`);
    expect(used(did)).toEqual(['6']);
  });
});

test('undo means the note that is still asked about, not the one before it', async () => {
  const did = await lived(`
    2026-11-24
    08:30 tom@hbr tips 1 to 10 are sterile and on the shelf
    09:00 tom@hbr used tip 4
    09:01 tom@hbr calibrated the scanner, passed
    09:02 tom@hbr undo
    09:03 tom@hbr kestrel
    end 09:04`);
  expect(used(did)).toEqual(['4']);
  expect(stateOf(did).scanners.K.calibrated).toBeNull();
});

test('an edit that leaves the warning standing leaves its question standing', async () => {
  const did = await hill(`${USED}
    09:30 tom@hill tip 4 on swift
    09:31 tom@hill {"edits": "$3"} tip 4 on swift at 9:25
    09:32 tom@hill yes
    end 09:33`);
  expect(told(did, 'warning')).toEqual(['24 09:30 hill']);
  expect(told(did, 'incident')).toHaveLength(1);
  expect(stateOf(did).tips['4'].state).toBe('held');
});

describe('a tick taken back', () => {
  test.each(['undo', '{"redacts": "$5"}'])('%s', async (how) => {
    const did = await hill(`${USED}
      09:05 tom@hill tip 4 sent to autoclave
      10:00 tom@hill scan done on swift with tip 2
      10:12 tom@hill {"reacts": {"last": "clean"}, "key": "✅"}
      10:13 tom@hill ${how}
      end 10:14`);
    expect(stateOf(did).scanners.S1.clean).toBe(false);
    expect(stateOf(did).tips['4'].state).toBe('sent');
    expect(edited(did)).toEqual(['Done by Tom, 10:12', 'Due again: Tom took that back, 10:13.']);
  });
});

test('an edit that asks something else is answered, the same again is not', async () => {
  const did = await hill(`${USED}
    09:01 tom@hill which tips are used?
    09:02 tom@hill {"edits": "$3"} which tips are used??
    09:03 tom@hill {"edits": "$3"} which tips are sterile?
    end 09:04`);
  expect(told(did, 'answer')).toEqual(['24 09:01 hill', '24 09:03 hill']);
});
