import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { edited, lived, told, words } from './lived.ts';

const TUESDAY = `
  2026-11-24
  08:30 tom@hbr tips 1 to 10 are sterile and on the shelf
  08:40 tom@hbr calibrated kestrel and osprey, passed`;

describe('departed', () => {
  test('what to pack, with the practice’s own notes; on its way until it is there', async () => {
    const did = await lived(`${TUESDAY}
      09:00 jo@hbr kestrel has just left for millgate
      end 09:01`);
    expect(words(did, 'set-up')).toMatch(
      /Cover on[\s\S]*Calibration tip[\s\S]*Cable coiled[\s\S]*car[\s\S]*Grey case/,
    );
    expect(stateOf(did).scanners.K).toMatchObject({ inTransit: true, ready: false });
  });
});

describe('moved to another site', () => {
  test('how to set up, then until when it settles by local time, then the request; 25 min by default', async () => {
    const did = await lived(`${TUESDAY}
      09:00 jo@mill kestrel is now at millgate
      end 09:26`);
    expect(words(did, 'set-up')).toMatch(
      /Base steady[\s\S]*Cable[\s\S]*never into a network socket or switch[\s\S]*on the left/,
    );
    expect(words(did, 'settle')).toContain('10:25');
    expect(told(did, 'calibration')).toEqual(['24 09:25 mill']);
    expect(stateOf(did).scanners.K).toMatchObject({ site: 'mill', calibrationDue: 'moved', ready: false });
  });

  test('with readings at both sites and a journey of 20 min the gap fades: 21 min', async () => {
    // 6 · e^(−20/20) + 10 · (1 − e^(−20/20)) = 8.53; 20 · ln(8.53 / 3) = 20.9, rounded up to the minute.
    const did = await lived(`${TUESDAY}
      08:45 tom@hbr 21.0C in surgery 1
      08:46 jo@mill 15.0C in chair 1
      09:00 jo@hbr kestrel has just left for millgate
      09:20 jo@mill kestrel is now at millgate
      end 09:42`);
    expect(told(did, 'calibration')).toEqual(['24 09:41 mill']);
  });

  test('every cause there is in one post: moved and weekly on a Monday', async () => {
    const did = await lived(`
      2026-11-20
      08:40 tom@hbr calibrated kestrel, passed
      2026-11-23
      09:00 jo@mill kestrel is now at millgate
      end 10:31`);
    const here = posts(did, 'calibration').filter(({ room }) => room === '!mill:x.org');
    expect(here.map(({ at }) => at.slice(11, 16))).toEqual(['09:25', '10:25']);
    expect(here[0]?.text).toMatch(/Harbour Row[\s\S]*weekly/);
  });

  describe('a pass before settling is over is asked back', () => {
    const early = `${TUESDAY}
      09:00 jo@mill kestrel is now at millgate
      09:10 jo@mill calibrated kestrel, passed`;

    test('until the answer it stays due', async () => {
      const did = await lived(`${early}
        end 09:11`);
      expect(words(did, 'caution')).toMatch(/sat at room temperature/);
      expect(stateOf(did).scanners.K.calibrationDue).toBe('moved');
    });

    test('yes makes it count from its own time', async () => {
      const did = await lived(`${early}
        09:13 jo@mill yes
        end 09:30`);
      expect(stateOf(did).scanners.K).toMatchObject({ calibrated: '2026-11-24T09:10:00Z', ready: true });
      expect(told(did, 'calibration')).toEqual([]);
    });

    test('no: asked for when settling is over', async () => {
      const did = await lived(`${early}
        09:13 jo@mill no
        end 09:30`);
      expect(told(did, 'calibration')).toEqual(['24 09:25 mill']);
    });

    test('a reaction is no typed word: the pass does not count by it', async () => {
      const did = await lived(`${early}
        09:13 jo@mill {"reacts": {"last": "caution"}, "key": "✅"}
        end 09:14`);
      expect(stateOf(did).scanners.K.calibrationDue).toBe('moved');
    });
  });

  test('two in one note are one post each of set-up, settling and request', async () => {
    const did = await lived(`${TUESDAY}
      09:00 jo@mill kestrel and osprey are now at millgate
      end 09:26`);
    for (const about of ['set-up', 'settle', 'calibration'])
      expect(posts(did, about).map(({ items }) => items)).toEqual([['scanner:K', 'scanner:O']]);
  });

  test('at night: set up and settling are said at once, the request waits for the site to open', async () => {
    const did = await lived(`${TUESDAY}
      20:00 jo@mill kestrel is now at millgate
      2026-11-25
      end 08:01`);
    expect(told(did, 'set-up')).toEqual(['24 20:00 mill']);
    expect(told(did, 'calibration').at(-1)).toBe('25 08:00 mill');
  });

  test('taken back: its posts are struck, and nothing is asked', async () => {
    const did = await lived(`${TUESDAY}
      09:00 jo@mill kestrel is now at millgate
      09:03 jo@mill undo
      end 10:00`);
    expect(edited(did)).toEqual(['Taken back by Jo, 10:03', 'Taken back by Jo, 10:03']);
    expect(told(did, 'calibration')).toEqual([]);
    expect(stateOf(did).scanners.K).toMatchObject({ site: 'hbr', ready: true });
  });
});

describe('a Monday on which the room still changes', () => {
  const MONDAY = `
    2026-11-20
    08:40 tom@hbr calibrated kestrel and osprey, passed
    2026-11-23
    08:35 tom@hbr 15.0C in surgery 1
    09:35 tom@hbr 17.0C in surgery 1`;

  test('one post at 10:30 says why; a calmer reading ends the wait at once', async () => {
    const did = await lived(`${MONDAY}
      11:10 tom@hbr 17.4C in surgery 1
      end 11:11`);
    expect(told(did, 'settle')).toEqual(['23 10:30 hbr']);
    expect(told(did, 'calibration')).toEqual(['23 11:10 hbr']);
  });

  test('at most until 12:00; a pass noted meanwhile counts', async () => {
    const did = await lived(`${MONDAY}
      10:45 tom@hbr calibrated osprey, passed
      end 12:01`);
    expect(posts(did, 'calibration').map(({ at, items }) => [at, items])).toEqual([
      ['2026-11-23T12:00:00Z', ['scanner:K']],
    ]);
  });

  test('a degree an hour is calm: asked for at 10:30', async () => {
    const did = await lived(`
      2026-11-20
      08:40 tom@hbr calibrated kestrel and osprey, passed
      2026-11-23
      08:35 tom@hbr 15.0C in surgery 1
      09:35 tom@hbr 16.0C in surgery 1
      end 10:31`);
    expect(told(did, 'calibration')).toEqual(['23 10:30 hbr']);
  });
});
