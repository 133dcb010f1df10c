import { describe, expect, test } from 'vitest';
import { ClockWatch } from '../../bot/keeper/clock-watch.ts';
import { temporaryFolders } from '../store/temp-folder.ts';
import { at, House, note } from './house.ts';

const newFolder = temporaryFolders();
const MINUTE = 60_000;
const HOUR = 60 * MINUTE;

/** Looks at a clock: each pair is what it says and the count of minutes that nobody sets. */
function looks(last: number | null, ...pairs: readonly (readonly [now: number, minutes: number])[]) {
  const watch = new ClockWatch(last);
  return pairs.map(([now, minutes]) => watch.look(now, minutes * MINUTE));
}

describe('the clock of the machine', () => {
  const ten = at('10:00');

  test('running, or put right by seconds, is believed', () => {
    const seen = looks(ten, [ten, 0], [ten + 60_000, 1], [ten + 90_000, 2], [ten + 6 * HOUR, 361]);
    expect(seen.every(({ hold, jumpedFrom }) => !hold && jumpedFrom === null)).toBe(true);
  });

  test('set back an hour: noted once, and held until it passes where it was', () => {
    const seen = looks(null, [ten, 0], [ten - HOUR, 0], [ten - HOUR + MINUTE, 1], [ten + 1, 2]);
    expect(seen.map(({ hold }) => hold)).toEqual([false, true, true, false]);
    expect(seen.map(({ jumpedFrom }) => jumpedFrom)).toEqual([null, ten, null, null]);
  });

  test('set back and left so: believed after ten minutes', () => {
    const seen = looks(
      null,
      [ten, 0],
      [ten - HOUR, 0],
      [ten - HOUR + 9 * MINUTE, 9],
      [ten - 50 * MINUTE, 10],
    );
    expect(seen.map(({ hold }) => hold)).toEqual([false, true, true, false]);
    expect(
      looks(null, [ten, 0], [ten - HOUR, 0], [ten - 50 * MINUTE, 10], [ten - 45 * MINUTE, 15])[3],
    ).toEqual({
      hold: false,
      jumpedFrom: null,
    });
  });

  test('before the last instant of the record at the start: held', () => {
    expect(looks(ten, [ten - HOUR, 0])[0]).toEqual({ hold: true, jumpedFrom: ten });
  });

  test('forward a day while running: noted, and believed; over a restart nobody can tell', () => {
    expect(looks(null, [ten, 0], [ten + 24 * HOUR, 1])[1]).toEqual({ hold: false, jumpedFrom: ten + MINUTE });
    expect(looks(ten, [ten + 24 * HOUR, 0])[0]).toEqual({ hold: false, jumpedFrom: null });
  });
});

describe('a keeper on such a clock', () => {
  test('reminds of nothing while the clock is not believed, notes the jump, and goes on', async () => {
    let minutes = 0;
    const house = new House(newFolder(), { count: () => minutes * MINUTE });
    await house.hear('09:00', note('$1', '09:00', 'calibrated blue, all good'));
    await house.hear('09:00', note('$2', '09:00', 'scan done on blue'));
    minutes = 1;
    // Set back to 08:00: what falls due at 09:10 by the old clock does not come now, nor does what was due at eight.
    const before = house.delivered.length;
    await house.work('08:00');
    minutes = 5;
    await house.work('08:04');
    expect(house.delivered.length).toBe(before);
    const jumps = [...house.store.lines()].filter(({ turn }) =>
      JSON.stringify(turn).includes('"sort":"clock"'),
    );
    expect(jumps).toHaveLength(1);
    expect(jumps[0]?.turn).toMatchObject({
      cause: { was: '2026-11-23T09:01:00Z' },
      at: '2026-11-23T08:00:00Z',
    });
    // A note is taken in all the while.
    await house.hear('08:05', note('$3', '08:05', 'wiped down green'));
    expect(house.reactions).toContain('👍 $3');
    minutes = 72;
    await house.work('09:11');
    expect(house.posts.join('\n')).toMatch(/wipe/i);
    house.close();
    const again = new House(house.store.folder);
    expect(again.keeper.desk.turns).toBe(again.store.head.n);
    again.close();
  });
});
