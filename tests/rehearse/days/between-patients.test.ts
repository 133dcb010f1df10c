import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { edited, lived, marks, told, words } from './lived.ts';

const READY = `
  2026-11-24
  08:30 tom@hbr tips 1 to 10 are sterile and on the shelf
  08:40 tom@hbr calibrated kestrel and osprey, passed`;

describe('warm-up', () => {
  test.each([
    ['22.0', '09:00:45'],
    // 41 · ln(20 / 6) = 49.4
    ['20.0', '09:00:50'],
    // 41 · ln(10 / 6) = 20.9, never under 30
    ['30.0', '09:00:30'],
  ])('%s °C in the scanner’s room', async (celsius, about) => {
    const did = await lived(`${READY}
      08:50 tom@hbr kestrel is in surgery 1
      08:51 tom@hbr ${celsius}C in surgery 1
      09:00 tom@hbr tip 3 on kestrel
      end 09:02`);
    expect(marks(did, '$5').map((mark) => mark.slice(9))).toEqual(['⏳', '🟢']);
    expect(marks(did, '$5')[0]).toBe('09:00:00 ⏳');
    const ready = marks(did, '$5').find((mark) => mark.endsWith('🟢'));
    const seconds = (mark = '') => Number(mark.slice(3, 5)) * 60 + Number(mark.slice(6, 8));
    expect(Math.abs(seconds(ready) - seconds(about))).toBeLessThanOrEqual(1);
  });

  test('no reading: a minute', async () => {
    const did = await lived(`${READY}
      09:00 tom@hbr tip 3 on kestrel
      end 09:02`);
    expect(marks(did, '$3')).toContain('09:01:00 🟢');
  });

  test('off again before the time is up: no ready mark', async () => {
    const did = await lived(`${READY}
      09:00:00 tom@hbr tip 3 on kestrel
      09:00:20 tom@hbr took tip 3 off kestrel
      end 09:02`);
    expect(marks(did, '$3')).not.toContain('09:01:00 🟢');
  });

  test('a scan that is told of when it is over: no marks, whatever time it was', async () => {
    const did = await lived(`${READY}
      09:00 tom@hbr scan done on kestrel with tip 3
      09:14 tom@hbr scan done on osprey with tip 4 at 09:05
      end 09:20`);
    expect([...marks(did, '$3'), ...marks(did, '$4')]).toEqual(['09:00:00 👍', '09:14:00 👍']);
  });

  test('a tip that went on ten minutes ago is warm: nothing is waited for', async () => {
    const did = await lived(`${READY}
      09:14 tom@hbr tip 3 on kestrel at 09:04
      end 09:20`);
    expect(marks(did, '$3')).toEqual(['09:14:00 👍', '09:14:00 🟢']);
  });

  test('a tip that is warned of gets no marks; one that is sterile on a scanner not wiped gets both', async () => {
    const unsafe = await lived(`${READY}
      09:00 tom@hbr used tip 3
      09:10 tom@hbr tip 3 on osprey
      end 09:12`);
    expect(told(unsafe, 'warning')).toEqual(['24 09:10 hbr']);
    expect(marks(unsafe, '$4')).toEqual([]);
    const unwiped = await lived(`${READY}
      09:00 tom@hbr scan done on kestrel with tip 3
      09:05 tom@hbr tip 4 on kestrel
      end 09:07`);
    expect(told(unwiped, 'warning')).toEqual(['24 09:05 hbr']);
    expect(marks(unwiped, '$4')).toEqual(['09:05:00 ⏳', '09:06:00 🟢']);
  });
});

describe('wiping down', () => {
  const SCANNED = `${READY}
    09:00 tom@hbr starting a scan with kestrel, tip 3, room 1
    09:10 tom@hbr scan done on kestrel`;

  test('one reminder ten minutes after a finished scan; its own notes are said; struck by whoever wiped', async () => {
    const did = await lived(`${SCANNED}
      09:25 tom@hbr Jo wiped down kestrel at 09:24
      end 10:00`);
    expect(told(did, 'clean')).toEqual(['24 09:20 hbr']);
    expect(words(did, 'clean')).toContain('No sprays');
    expect(edited(did)).toEqual(['Done by Jo, 09:24']);
    expect(stateOf(did).scanners.K.clean).toBe(true);
  });

  test.each(['cleaned the lens on kestrel', 'wiped the base of kestrel'])(
    '%s is not a wipe-down',
    async (note) => {
      const did = await lived(`${SCANNED}
      09:15 tom@hbr ${note}
      end 09:21`);
      expect(told(did, 'clean')).toEqual(['24 09:20 hbr']);
      expect(stateOf(did).scanners.K.clean).toBe(false);
    },
  );

  test.each(['starting a scan with kestrel, tip 4', 'tip 4 on kestrel'])(
    '“%s” on a scanner not wiped: a warning with when, where and who; no thumb',
    async (note) => {
      const did = await lived(`${SCANNED}
        09:15 jo@hbr ${note}
        end 09:16`);
      expect(words(did, 'warning')).toMatch(/kestrel[\s\S]*09:10[\s\S]*Surgery 1[\s\S]*Tom/);
      expect(posts(did, 'warning')[0]).toMatchObject({ replyTo: '$5', mentions: ['@jo:x.org'] });
      expect(marks(did, '$5').some((mark) => mark.endsWith('👍'))).toBe(false);
    },
  );

  test('the same patient: neither the tip nor the wiping is warned of', async () => {
    const did = await lived(`${SCANNED}
      09:12 tom@hbr starting another scan on kestrel, same patient
      end 09:13`);
    expect(told(did, 'warning')).toEqual([]);
  });

  test('typed more than an hour after its time: no reminder, and still not clean', async () => {
    const did = await lived(`${READY}
      11:00 tom@hbr scan done on kestrel with tip 3 at 9:30
      end 12:00`);
    expect(told(did, 'clean')).toEqual([]);
    expect(stateOf(did).scanners.K.clean).toBe(false);
  });

  test('the note deleted by the lead: the reminder is struck', async () => {
    const did = await lived(`${SCANNED}
      09:22 meg@hbr {"redacts": "$4"}
      end 09:23`);
    expect(stateOf(did).scanners.K.clean).toBe(true);
    expect(edited(did)).toEqual(['Taken back by Meg, 09:22']);
  });

  test('left for another site meanwhile: nobody is named for a wipe that nobody noted', async () => {
    const did = await lived(`${SCANNED}
      09:25 jo@hbr kestrel has just left for millgate
      end 09:30`);
    expect(edited(did).filter((line) => line.startsWith('Done'))).toEqual([]);
  });
});

describe('the cover', () => {
  test('no tip, not covered, 15 min after the last note of it: one reminder, and one more once it was off again', async () => {
    const did = await lived(`${READY}
      09:00 tom@hbr used tip 3 on kestrel
      09:02 tom@hbr wiped down kestrel and took tip 3 off
      09:30 tom@hbr cover back on kestrel
      10:00 tom@hbr tip 4 on kestrel
      10:05 tom@hbr took tip 4 off kestrel
      end 11:00`);
    expect(told(did, 'cover')).toEqual(['24 09:17 hbr', '24 10:20 hbr']);
    expect(edited(did)).toEqual(['Done by Tom, 09:30']);
  });

  test('only for a scanner used that day', async () => {
    const did = await lived(`${READY}
      09:00 tom@hbr tip 4 on kestrel
      09:05 tom@hbr took tip 4 off kestrel
      end 11:00`);
    expect(told(did, 'cover')).toEqual([]);
  });
});
