import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { lived, told, words } from './lived.ts';
import { HILL_TOP } from './practices.ts';

describe('until a stocktake', () => {
  test('one question per chat room, once its site is open; named in the brief; not tip by tip', async () => {
    const did = await lived(`
      2026-11-24
      07:00 tom@hbr morning
      2026-11-25
      end 09:00`);
    expect(told(did, 'question')).toEqual(['24 08:00 mill', '24 08:30 hbr', '24 13:00 elm']);
    expect(words(did, 'brief')).toMatch(/not known/);
  });

  test('an unknown tip is warned of once: fitting it and scanning with it are one', async () => {
    const did = await lived(
      `
      2026-11-24
      08:35 tom@hill calibrated swift, passed
      09:00 tom@hill tip 2 on swift
      09:01 tom@hill starting a scan with swift
      end 09:02`,
      HILL_TOP,
    );
    expect(told(did, 'warning')).toEqual(['24 09:00 hill']);
  });

  test('half of a site’s tips, in several notes, are a stocktake: the rest is listed once', async () => {
    const did = await lived(
      `
      2026-11-24
      08:35 tom@hill tips 1 and 2 are sterile and on the shelf
      08:36 tom@hill tip 3 is used
      2026-11-26
      end 12:00`,
      HILL_TOP,
    );
    expect(posts(did, 'tips').map(({ items }) => items)).toEqual([['tip:4', 'tip:5', 'tip:6']]);
    expect(words(did, 'brief')).not.toContain('Not counted yet');
  });

  test('a count is asked for each quarter', async () => {
    const did = await lived(
      `
      2026-11-24
      09:00 tom@hill tips 1 to 6 are sterile and on the shelf
      2027-02-24
      end 09:00`,
      HILL_TOP,
    );
    expect(words(did, 'question')).toContain('quarter');
    expect(told(did, 'question').at(-1)).toBe('24 08:30 hill');
  });

  test('what is in the state, by name', async () => {
    const did = await lived(`
      2026-11-24
      end 09:00`);
    expect(Object.keys(stateOf(did).scanners.K).sort()).toEqual(
      [
        'calibrated',
        'calibrationDue',
        'clean',
        'covered',
        'inTransit',
        'notReadyBecause',
        'ready',
        'room',
        'site',
        'tip',
      ].sort(),
    );
    expect(Object.keys(stateOf(did).tips['1']).sort()).toEqual(
      ['cycles', 'load', 'room', 'since', 'site', 'state'].sort(),
    );
    expect(stateOf(did).tips['1']).toMatchObject({ state: 'unknown', site: 'hbr' });
  });
});
