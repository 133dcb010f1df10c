import fc from 'fast-check';
import { expect, test } from 'vitest';
import { NeedsWholeRecord, Timeline } from '../../core/record/timeline.ts';
import { anyEntries } from './any-entry.ts';
import { ferngate } from './ferngate.ts';

type Step = readonly [turn: number, minutes: number];

/** What is done to a timeline after the snapshot: turns set aside, or put again at another time. */
const steps = fc.array(fc.tuple(fc.nat({ max: 60 }), fc.integer({ min: -600, max: 0 })), { maxLength: 6 });

function change(timeline: Timeline, [turn, minutes]: Step): void {
  const gone = timeline.setAside(turn);
  if (minutes < -300) return;
  timeline.add(gone.map((entry) => ({ ...entry, when: entry.when + minutes * 60_000 })));
}

test('a timeline from a snapshot either gives what the whole one gives, or says that it cannot', () => {
  const seen = { cut: 0, same: 0, needsWhole: 0 };
  const drawn = fc.tuple(anyEntries(30), anyEntries(15), fc.nat({ max: 20 }), steps, steps);
  fc.assert(
    fc.property(drawn, ([before, later, keep, first, then]) => {
      const whole = new Timeline(ferngate());
      whole.add(before);
      for (const step of first) change(whole, step);
      const saved = JSON.parse(JSON.stringify(whole.save(keep)));
      if (saved.through !== null) seen.cut += 1;
      const restored = Timeline.restore(saved);
      expect(restored.state).toEqual(whole.state);
      // Saved again at the same place, it is the same to the letter.
      expect(JSON.stringify(restored.save(0, saved.through))).toBe(JSON.stringify(saved));
      const more = later.map((entry) => {
        const turn = entry.turn + 100;
        return { ...entry, turn, id: `${turn}.${entry.index}`, when: entry.when + 3_600_000 * 40 };
      });
      try {
        restored.add(more.map((entry) => ({ ...entry, noted: entry.when })));
        for (const step of then) change(restored, step);
        expect(restored.state).toBeDefined();
      } catch (error) {
        expect(error).toBeInstanceOf(NeedsWholeRecord);
        seen.needsWhole += 1;
        return;
      }
      whole.add(more.map((entry) => ({ ...entry, noted: entry.when })));
      for (const step of then) change(whole, step);
      expect(restored.state).toEqual(whole.state);
      seen.same += 1;
    }),
    { numRuns: 300 },
  );
  // A check that never cuts, or never goes on, checks nothing.
  expect(seen.cut).toBeGreaterThan(30);
  expect(seen.same).toBeGreaterThan(50);
  expect(seen.needsWhole).toBeGreaterThan(10);
});
