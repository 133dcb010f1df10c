import fc from 'fast-check';
import { expect, test } from 'vitest';
import { waitingMatters } from '../../core/rules/matters.ts';
import { MINUTE } from '../../core/time/instant.ts';
import { anyDay, anyScene } from './any-day.ts';
import { Day } from './play-day.ts';

test('what is remembered of earlier looks is what every rule says when it is asked anew, at every step of any day', () => {
  let found = 0;
  const expectSame = (day: Day) => {
    const view = day.desk.view(day.now);
    const known = waitingMatters(view);
    found += known.length;
    // A copy of a view has nothing remembered: every rule is asked. Lines and items are written as they are read.
    expect(JSON.stringify(known)).toBe(JSON.stringify(waitingMatters({ ...view })));
  };
  fc.assert(
    fc.property(anyDay(24), anyScene, fc.nat({ max: 90 }), (happenings, scene, idle) => {
      const day = new Day(scene);
      for (const one of happenings) {
        day.happen(one);
        expectSame(day);
      }
      // Nothing but time goes by.
      for (let step = 0; step < 4; step += 1) {
        day.runTo(day.now + idle * MINUTE);
        expectSame(day);
      }
    }),
    { numRuns: 120 },
  );
  // A check that finds nothing due checks nothing.
  expect(found).toBeGreaterThan(5_000);
}, 600_000);
