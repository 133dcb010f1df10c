import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { edited, lived, told, words } from './lived.ts';
import { HILL_TOP } from './practices.ts';

const hill = (script: string) => lived(script, HILL_TOP);
const COUNTED = `
  2026-11-24
  08:30 tom@hill tips 1 to 6 are sterile and on the shelf
  08:40 tom@hill calibrated swift, passed`;

describe('brief and close-out', () => {
  test('nothing to say: one line, 15 min before opening; nothing open: no close-out', async () => {
    const did = await hill(`${COUNTED}
      2026-11-26
      end 18:00`);
    expect(told(did, 'brief')).toEqual(['25 08:15 hill', '26 08:15 hill']);
    expect(words(did, 'brief').split('\n')).toHaveLength(1);
    expect(told(did, 'close-out')).toEqual([]);
  });

  test('per site, by its own clock, in its own chat room', async () => {
    const did = await lived(`
      2026-11-24
      07:00 tom@hbr morning
      end 13:00`);
    expect(told(did, 'brief')).toEqual(['24 07:45 mill', '24 08:15 hbr', '24 12:45 elm']);
    expect(words(did, 'brief')).toMatch(/Wren: not ready/);
  });

  test('a break in the hours: by the first opening and the last closing', async () => {
    const did = await hill(`${COUNTED}
      2026-11-25
      09:00 tom@hill used tip 2
      end 18:00`);
    expect(told(did, 'brief')).toEqual(['25 08:15 hill']);
    expect(told(did, 'close-out')).toEqual(['25 17:15 hill']);
  });

  test('the close-out names tips not sent, scanners not wiped and not covered', async () => {
    const did = await hill(`${COUNTED}
      16:50 tom@hill scan done on swift with tip 2
      16:55 tom@hill used tip 3
      end 17:16`);
    expect(words(did, 'close-out')).toMatch(/Wipe down swift[\s\S]*tip 3[\s\S]*tip 2[\s\S]*Cover swift/);
    expect(posts(did, 'close-out')[0]?.items).toEqual(
      expect.arrayContaining(['scanner:S1', 'tip:2', 'tip:3']),
    );
  });

  test('hours changed by a note move it', async () => {
    const did = await hill(`${COUNTED}
      10:00 tom@hill finishing at 3 today
      11:00 tom@hill used tip 3
      end 18:00`);
    expect(told(did, 'close-out')).toEqual(['24 14:45 hill']);
  });
});

describe('quiet', () => {
  test('what falls due in the break or after closing waits for the next opening; the closing minute is open', async () => {
    const inBreak = await hill(`${COUNTED}
      2026-11-25
      12:25 tom@hill scan done on swift with tip 2
      end 14:00`);
    expect(told(inBreak, 'clean')).toEqual(['25 13:30 hill']);
    const atClosing = await hill(`${COUNTED}
      17:20 tom@hill scan done on swift with tip 2
      end 18:00`);
    expect(told(atClosing, 'clean')).toEqual(['24 17:30 hill']);
    const after = await hill(`${COUNTED}
      17:21 tom@hill scan done on swift with tip 2
      2026-11-25
      end 08:31`);
    expect(told(after, 'clean')).toEqual(['25 08:30 hill']);
    expect(words(after, 'clean')).toContain('yesterday');
  });
});

describe('✅ and done', () => {
  const SCANNED = `${COUNTED}
    10:00 tom@hill scan done on swift with tip 2`;

  test.each(['{"reacts": {"last": "clean"}, "key": "✅"}', '{"replyTo": {"last": "clean"}} done', 'done'])(
    '%s records the wipe, by whom',
    async (how) => {
      const did = await hill(`${SCANNED}
        10:12 meg@hill ${how}
        end 10:13`);
      expect(stateOf(did).scanners.S1.clean).toBe(true);
      expect(edited(did)).toEqual(['Done by Meg, 10:12']);
    },
  );

  test('a bare done for what was asked twice is not asked back', async () => {
    const did = await hill(`
      2026-11-23
      08:30 tom@hill tips 1 to 6 are sterile and on the shelf
      11:31 tom@hill done
      end 11:32`);
    expect(told(did, 'calibration')).toEqual(['23 10:30 hill', '23 11:30 hill']);
    expect(stateOf(did).scanners.S1.calibrated).toBe('2026-11-23T11:31:00Z');
  });

  test('with several reminders open a bare done asks which', async () => {
    const did = await hill(`
      2026-11-23
      08:30 tom@hill tips 1 to 6 are sterile and on the shelf
      10:31 tom@hill scan done on swift with tip 2
      10:42 tom@hill done
      10:43 tom@hill 2
      end 10:44`);
    expect(words(did, 'question')).toContain('Which one is done?');
    const { calibrated, clean } = stateOf(did).scanners.S1;
    expect([calibrated !== null, clean].filter(Boolean)).toHaveLength(1);
  });

  test('a post that names two asks which; only that one is recorded', async () => {
    const did = await lived(`
      2026-11-23
      08:30 tom@hbr tips 1 to 10 are sterile and on the shelf
      10:35 jo@hbr {"reacts": {"last": "calibration"}, "key": "✅"}
      10:36 jo@hbr kestrel
      end 10:37`);
    expect(stateOf(did).scanners.K.calibrated).toBe('2026-11-23T10:36:00Z');
    expect(stateOf(did).scanners.O.calibrated).toBeNull();
  });

  test('on a close-out that names one tip: sent; one that names several asks which', async () => {
    const one = await hill(`${COUNTED}
      16:50 tom@hill used tip 3
      17:16 tom@hill {"replyTo": {"last": "close-out"}} done
      end 17:17`);
    expect(stateOf(one).tips['3'].state).toBe('sent');
    const two = await hill(`${COUNTED}
      16:50 tom@hill used tips 3 and 4
      17:16 tom@hill {"replyTo": {"last": "close-out"}} done
      end 17:17`);
    expect(words(two, 'question')).toMatch(/tip 3[\s\S]*tip 4/);
    expect(stateOf(two).tips['3'].state).toBe('used');
  });

  test('never a load’s result: the close-out of an open load has to be typed', async () => {
    const did = await hill(`${COUNTED}
      16:50 tom@hill load 7 on with tip 3
      17:16 tom@hill {"reacts": {"last": "close-out"}, "key": "✅"}
      end 17:17`);
    expect(stateOf(did).tips['3'].state).toBe('in-load');
  });

  test('in reply to a colleague, or to nothing, done is no tick', async () => {
    const did = await hill(`${SCANNED}
      10:11 meg@hill {"replyTo": {"last": "load"}} done
      10:12 meg@hill {"replyTo": "$3"} done
      end 10:13`);
    expect(stateOf(did).scanners.S1.clean).toBe(false);
  });

  test.each([
    ['{"reacts": {"last": "clean"}, "key": "⏰"}', '24 10:32 hill'],
    ['{"replyTo": {"last": "clean"}} remind me in 40 minutes', '24 10:52 hill'],
  ])('%s puts it off, and then it is asked for again', async (how, again) => {
    const did = await hill(`${SCANNED}
      10:12 tom@hill ${how}
      end 11:30`);
    expect(told(did, 'clean')).toEqual(['24 10:10 hill', again]);
  });
});

describe('down for a while', () => {
  test('what fell due is posted once, saying since when; what was noted meanwhile is read first', async () => {
    const did = await hill(`
      2026-11-23
      08:30 tom@hill tips 1 to 6 are sterile and on the shelf
      restart 08:31 back 11:40
      09:00 tom@hill scan done on swift with tip 2
      09:20 tom@hill wiped down swift
      end 11:50`);
    expect(told(did, 'calibration')).toEqual(['23 11:40 hill']);
    expect(words(did, 'calibration')).toContain('10:30');
    expect(told(did, 'clean')).toEqual([]);
    expect(stateOf(did).scanners.S1.clean).toBe(true);
  });

  test('asks older than ten minutes: one post a chat room of what was recorded and what was not answered', async () => {
    const did = await lived(`
      2026-11-24
      08:30 tom@hbr tips 1 to 10 are sterile and on the shelf
      restart 09:05 back 10:10
      09:12 jo@hbr which tips are out?
      09:20 jo@hbr used tip 4
      09:30 jo@mill which tips are sterile?
      09:25 jo@hbr {"edits": "$3"} used tip 5
      10:05 jo@hbr which tips are used?
      end 10:15`);
    const late = posts(did, 'record').filter(({ replyTo }) => replyTo === undefined);
    expect(late.map(({ room }) => room)).toEqual(['!hbr:x.org', '!mill:x.org']);
    expect(late[0]?.text).toMatch(/09:20[\s\S]*tip 5[\s\S]*Not answered: Jo 09:12/);
    expect(late[0]?.text).not.toContain('tip 4');
    expect(posts(did, 'answer').map(({ replyTo }) => replyTo)).toEqual(['$6']);
  });

  test('a missed brief comes once it is back, if the site is open', async () => {
    const did = await hill(`${COUNTED}
      restart 17:00 back 18:00
      2026-11-25
      restart 07:00 back 09:40
      end 10:00`);
    expect(told(did, 'brief')).toEqual(['25 09:40 hill']);
  });

  test('a question stays open over a restart', async () => {
    const did = await lived(`
      2026-11-24
      08:30 tom@hbr used tip 4, calibrated the scanner
      restart 08:31
      08:32 tom@hbr kestrel
      end 08:33`);
    expect(stateOf(did).scanners.K.calibrated).toBe('2026-11-24T08:30:00Z');
    expect(stateOf(did).tips['4'].state).toBe('used');
  });
});

describe('the script', () => {
  test('ends while the bot is down, or restarts it twice: nothing is lost', async () => {
    const did = await hill(`${COUNTED}
      restart 09:00 back 12:00
      09:10 tom@hill used tip 2
      restart 09:20 back 11:00
      09:30 tom@hill used tip 3
      end 10:00`);
    expect(stateOf(did).tips['2'].state).toBe('used');
    expect(stateOf(did).tips['3'].state).toBe('used');
  });

  test('gives the same to the byte each time', async () => {
    const script = `${COUNTED}
      10:00 tom@hill scan done on swift with tip 2
      restart 10:05 back 10:20
      10:10 tom@hill which tips are used?
      end 12:00`;
    expect(JSON.stringify(await hill(script))).toBe(JSON.stringify(await hill(script)));
  });

  test('later, yes or a number where nothing is asked draws no answer', async () => {
    const did = await hill(`${COUNTED}
      10:00 tom@hill later
      10:01 tom@hill yes
      10:02 tom@hill 2
      10:03 tom@hill {"reacts": "$nothing", "key": "✅"}
      end 10:04`);
    expect(did.filter(({ at }) => at >= '2026-11-24T10:00:00Z')).toEqual([]);
  });
});

describe('a question that has lapsed', () => {
  const asked = `
    2026-11-24
    08:40 tom@hbr calibrated the scanner, passed`;

  test('is no longer answered by a bare word', async () => {
    const did = await lived(`${asked}
      11:00 tom@hbr kestrel
      end 11:01`);
    expect(stateOf(did).scanners.K.calibrated).toBeNull();
  });

  test('is answered in reply to it', async () => {
    const did = await lived(`${asked}
      11:00 tom@hbr {"replyTo": {"last": "question"}} kestrel
      end 11:01`);
    expect(stateOf(did).scanners.K.calibrated).toBe('2026-11-24T08:40:00Z');
  });
});

test('a tick on a brief or on the count’s question only says that it was seen', async () => {
  const did = await hill(`
    2026-11-24
    08:16 tom@hill morning
    08:31 tom@hill {"reacts": {"last": "question"}, "key": "✅"}
    08:32 tom@hill {"reacts": {"last": "brief"}, "key": "✅"}
    end 08:33`);
  expect(told(did, 'record')).toEqual([]);
});

test('done and more in reply to a reminder: ticked off, and the rest is recorded', async () => {
  const did = await hill(`${COUNTED}
    10:00 tom@hill scan done on swift with tip 2
    10:11 tom@hill {"replyTo": {"last": "clean"}} done, tip 2 sent to autoclave
    end 10:12`);
  expect(stateOf(did).scanners.S1.clean).toBe(true);
  expect(stateOf(did).tips['2'].state).toBe('sent');
});
