import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyDay, anyScene } from './any-day.ts';
import { type Seen, wrongWith } from './checks.ts';
import { playDay } from './play-day.ts';

test('2,000 generated days: nothing unsafe is called safe, nobody is nagged, and the journal gives the same desk', () => {
  const seen: Seen = { sterile: 0, ready: 0, posted: 0, warned: 0, ticked: 0, matters: 0 };
  fc.assert(
    fc.property(anyDay(18), anyScene, (happenings, scene) => {
      expect(wrongWith(playDay(happenings, scene), seen)).toEqual([]);
    }),
    { numRuns: 2_000 },
  );
  // A check that never meets what it is about checks nothing.
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(200);
}, 900_000);
