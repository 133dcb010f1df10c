import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { edited, lived, told, words } from './lived.ts';
import { HILL_TOP } from './practices.ts';

const FRIDAY = `
  2026-11-20
  08:35 tom@hbr tips 1 to 10 are sterile and on the shelf
  08:40 tom@hbr calibrated kestrel and osprey, passed
  14:00 tom@elm calibrated wren, passed`;

describe('weekly', () => {
  test('asked for on Monday at 10:30 in one post for both, again, then the lead, then nothing that day', async () => {
    const did = await lived(`${FRIDAY}
      2026-11-23
      end 17:29`);
    expect(told(did, 'calibration')).toEqual(['23 10:30 hbr', '23 11:30 hbr']);
    expect(told(did, 'escalation')).toEqual(['23 12:30 hbr']);
    expect(posts(did, 'escalation')[0]?.mentions).toEqual(['@meg:x.org']);
    expect(posts(did, 'calibration')[0]?.items).toEqual(['scanner:K', 'scanner:O']);
    expect(words(did, 'calibration')).toContain('2 to 3 minutes');
    expect(stateOf(did).scanners.K).toMatchObject({ calibrationDue: 'weekly', ready: true });
  });

  test('ready until that day’s closing, then not; a scan on it the day after is a caution; the brief names it', async () => {
    const did = await lived(`${FRIDAY}
      2026-11-24
      08:45 tom@hbr starting a scan with kestrel, tip 3
      end 08:46`);
    expect(stateOf(did).scanners.K).toMatchObject({ ready: false, notReadyBecause: ['weekly'] });
    expect(posts(did, 'caution')[0]).toMatchObject({ at: '2026-11-24T08:45:00Z', items: ['scanner:K'] });
    expect(words(did, 'brief')).toContain('Calibrate kestrel');
  });

  test('a pass on that Monday before 10:30 counts', async () => {
    const did = await lived(`${FRIDAY}
      2026-11-23
      08:40 tom@hbr calibrated kestrel and osprey, both passed
      end 17:00`);
    expect(told(did, 'calibration')).toEqual([]);
  });

  test('a site shut on Monday: asked on the next open day at its own 10:30; a pass on the shut Monday counts', async () => {
    const asked = await lived(`${FRIDAY}
      2026-11-24
      end 15:31`);
    expect(told(asked, 'calibration')).toContain('24 15:30 elm');
    const passed = await lived(`${FRIDAY}
      2026-11-23
      16:00 tom@elm calibrated wren, passed
      2026-11-24
      end 20:00`);
    expect(told(passed, 'calibration').filter((post) => post.endsWith('elm'))).toEqual([]);
  });

  test('Monday closed by the file and Tuesday by a note: asked on Wednesday', async () => {
    const did = await lived(
      `
      2026-11-26
      08:40 tom@hill calibrated swift, passed
      16:00 tom@hill closed on Tuesday
      2026-12-02
      end 10:31`,
      HILL_TOP,
    );
    expect(told(did, 'calibration').at(-1)).toBe('02 10:30 hill');
    expect(told(did, 'calibration').filter((post) => !post.startsWith('02'))).toEqual([]);
  });

  test('asked where the scanner is now, by that site’s clock', async () => {
    const did = await lived(`${FRIDAY}
      14:10 jo@mill kestrel is now at millgate
      14:50 jo@mill calibrated kestrel, passed
      2026-11-23
      end 09:31`);
    expect(told(did, 'calibration').at(-1)).toBe('23 09:30 mill');
  });

  test.each([
    [
      'on its way',
      'kestrel has just left for millgate',
      'jo@mill kestrel is now at millgate',
      '23 12:15 mill',
    ],
    ['held', 'kestrel is out of service', 'tom@hbr kestrel is back in service', '23 11:50 hbr'],
    ['missing', 'can’t find kestrel', 'tom@hbr found kestrel in surgery 2', '23 11:50 hbr'],
  ])('%s at that time: asked for when that is over', async (_why, away, back, when) => {
    const did = await lived(`${FRIDAY}
      2026-11-23
      10:20 tom@hbr ${away}
      11:50 ${back}
      end 12:16`);
    const ofKestrel = posts(did, 'calibration').filter(({ items }) => items?.includes('scanner:K'));
    expect(told(ofKestrel, 'calibration')).toEqual([when]);
  });

  test.each([
    ['finishes at 10:40', '10:40 tom@hbr scan done on kestrel', '23 10:40 hbr'],
    ['goes on', '10:41 tom@hbr morning', '23 11:00 hbr'],
  ])('a scan under way at 10:30 that %s', async (_how, line, when) => {
    const did = await lived(`${FRIDAY}
      2026-11-23
      10:20 tom@hbr starting a scan with kestrel, tip 3
      ${line}
      end 11:01`);
    const ofKestrel = posts(did, 'calibration').filter(({ items }) => items?.includes('scanner:K'));
    expect(told(ofKestrel, 'calibration')).toEqual([when]);
  });
});

describe('other causes', () => {
  const TUESDAY = `
    2026-11-24
    08:30 tom@hbr tips 1 to 10 are sterile and on the shelf
    08:35 tom@hbr 20.0C in surgery 1
    08:40 tom@hbr calibrated kestrel and osprey, passed`;

  test('another room of the same site: not due', async () => {
    const did = await lived(`${TUESDAY}
      09:00 tom@hbr moved kestrel to surgery 2
      end 10:00`);
    expect(stateOf(did).scanners.K).toMatchObject({ room: 'h2', calibrationDue: null, ready: true });
  });

  test('temperature: due at 5 °C, asked at once, still due when it comes back', async () => {
    const did = await lived(`${TUESDAY}
      09:00 tom@hbr 24.9C in surgery 1
      11:00 tom@hbr 25.0C in surgery 1
      11:10 tom@hbr 20.0C in surgery 1
      end 11:20`);
    expect(told(did, 'calibration')).toEqual(['24 11:00 hbr']);
    expect(stateOf(did).scanners.K).toMatchObject({ calibrationDue: 'temperature', ready: false });
  });

  test('dropped: due and held until it passes; nobody’s word releases it', async () => {
    const held = `${TUESDAY}
      09:00 tom@hbr someone dropped kestrel
      09:05 meg@hbr kestrel is back in service`;
    const before = await lived(`${held}
      end 09:06`);
    expect(stateOf(before).scanners.K).toMatchObject({ calibrationDue: 'dropped', ready: false });
    const after = await lived(`${held}
      09:20 tom@hbr calibrated kestrel, passed
      end 09:21`);
    expect(stateOf(after).scanners.K).toMatchObject({ calibrationDue: null, ready: true });
    expect(edited(after)).toContain('Done by Tom, 09:20');
  });

  test('repaired: due', async () => {
    const did = await lived(`${TUESDAY}
      09:00 tom@hbr kestrel is mended
      end 09:01`);
    expect(stateOf(did).scanners.K).toMatchObject({ calibrationDue: 'repaired', ready: false });
    expect(told(did, 'calibration')).toEqual(['24 09:00 hbr']);
  });

  test('failed: what to try; twice: stop and call support; a later pass makes it ready again', async () => {
    const once = `${TUESDAY}
      09:00 tom@hbr calibration failed on kestrel`;
    const first = await lived(`${once}
      end 09:01`);
    expect(words(first, 'calibration')).toMatch(/dust or a hair[\s\S]*Clean both[\s\S]*osprey/);
    const twice = await lived(`${once}
      09:10 tom@hbr calibration failed again on kestrel
      end 09:11`);
    expect(words(twice, 'calibration')).toContain('call support');
    expect(stateOf(twice).scanners.K).toMatchObject({ calibrationDue: 'failed', ready: false });
    const passed = await lived(`${once}
      09:10 tom@hbr calibration failed again on kestrel
      09:30 tom@hbr calibrated kestrel, passed
      end 09:31`);
    expect(stateOf(passed).scanners.K).toMatchObject({ calibrationDue: null, ready: true });
  });

  test.each([
    ['held', 'osprey is out of service'],
    ['on its way', 'osprey has just left for millgate'],
    ['due for a drop', 'someone dropped osprey'],
  ])('a scan started on a scanner that is %s: a caution, with which is ready', async (_why, note) => {
    const did = await lived(`${TUESDAY}
      09:00 tom@hbr ${note}
      09:10 tom@hbr starting a scan with osprey, tip 3
      end 09:11`);
    expect(told(did, 'caution')).toEqual(['24 09:10 hbr']);
    expect(words(did, 'caution')).toContain('kestrel');
    expect(told(did, 'warning')).toEqual([]);
  });

  test('the calibration tip left behind is said at once, naming both sites', async () => {
    const did = await lived(`${TUESDAY}
      09:00 jo@mill kestrel is now at millgate
      09:05 tom@hbr kestrel's calibration tip is at harbour row
      end 09:06`);
    expect(words(did, 'calibration')).toMatch(/Millgate[\s\S]*Harbour Row/);
  });
});

describe('never calibrated', () => {
  test('asked for at 10:30 of the first open day; begun later that day: of the next', async () => {
    const early = await lived(
      `
      2026-11-24
      09:00 tom@hill tips 1 to 6 are sterile and on the shelf
      end 10:31`,
      HILL_TOP,
    );
    expect(told(early, 'calibration')).toEqual(['24 10:30 hill']);
    const late = await lived(
      `
      2026-11-24
      11:00 tom@hill tips 1 to 6 are sterile and on the shelf
      2026-11-25
      end 10:31`,
      HILL_TOP,
    );
    expect(told(late, 'calibration')).toEqual(['25 10:30 hill']);
    expect(stateOf(late).scanners.S1).toMatchObject({ calibrationDue: 'never', ready: false });
  });
});
