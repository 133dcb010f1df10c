import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MemoryArchive } from '../../core/record/memory-archive.ts';
import { Timeline, type TimelineOptions } from '../../core/record/timeline.ts';
import { anyEntries } from './any-entry.ts';
import { ferngate } from './ferngate.ts';
import { plainState } from './plain-state.ts';

type Step = readonly [turn: number, minutes: number];

/** What is done to a timeline: turns set aside, or put again at another time. */
const steps = fc.array(fc.tuple(fc.nat({ max: 50 }), fc.integer({ min: -600, max: 0 })), { maxLength: 6 });

function change(timeline: Timeline, [turn, minutes]: Step): void {
  const gone = timeline.setAside(turn);
  if (minutes < -300) return;
  timeline.add(gone.map((entry) => ({ ...entry, when: entry.when + minutes * 60_000 })));
}

/** Little stays in memory, so that nearly everything is far. */
function tight(keep: number, archive = new MemoryArchive()): TimelineOptions & { archive: MemoryArchive } {
  return { archive, keep, most: keep + 4, days: 0 };
}

const drawn = fc.record({
  before: anyEntries(50),
  later: anyEntries(15),
  keep: fc.nat({ max: 20 }),
  first: steps,
  last: steps,
  bit: fc.integer({ min: 1, max: 12 }),
});

/** The same entries a good day later, as turns of their own. */
function laterOn(later: readonly Parameters<Timeline['add']>[0][number][]) {
  return later.map((entry) => {
    const turn = entry.turn + 100;
    const when = entry.when + 3_600_000 * 40;
    return { ...entry, turn, id: `${turn}.${entry.index}`, when, noted: when };
  });
}

test('a timeline that keeps next to nothing in memory gives what one gives that keeps everything', () => {
  const seen = { archived: 0, far: 0 };
  fc.assert(
    fc.property(drawn, ({ before, later, keep, first, last, bit }) => {
      const whole = new Timeline(ferngate());
      const little = new Timeline(ferngate(), tight(keep));
      const both = (work: (timeline: Timeline) => void) => {
        work(whole);
        work(little);
        expect(little.size).toBeLessThanOrEqual(keep + 4 + 200);
      };
      const all = [...before, ...laterOn(later)];
      for (let at = 0; at < before.length; at += bit) both((one) => one.add(all.slice(at, at + bit)));
      expect(plainState(little.state)).toEqual(plainState(whole.state));
      for (const step of first) {
        if (little.isFar(step[0])) seen.far += 1;
        both((one) => change(one, step));
      }
      expect(plainState(little.state)).toEqual(plainState(whole.state));
      both((one) => one.add(all.slice(before.length)));
      for (const step of last) both((one) => change(one, step));
      expect(plainState(little.state)).toEqual(plainState(whole.state));
      if (little.size < whole.size) seen.archived += 1;
      expect(little.entries).toEqual(whole.entries);
      expect([...little.newestFirst()]).toEqual([...whole.newestFirst()]);
      for (const { turn, id } of whole.entries) {
        expect(little.ofTurn(turn)).toEqual(whole.ofTurn(turn));
        expect(little.entry(id)).toEqual(whole.entry(id));
      }
      const places = (one: Timeline) => one.placesAbout('tip:4').map(({ turn, index }) => [turn, index]);
      expect(places(little)).toEqual(places(whole));
    }),
    { numRuns: 300 },
  );
  // A check in which nothing is archived, or nothing archived is corrected, checks nothing.
  expect(seen.archived).toBeGreaterThan(100);
  expect(seen.far).toBeGreaterThan(40);
});

test('a timeline from a snapshot and its archive goes on as the one that wrote it', () => {
  const seen = { cut: 0, far: 0 };
  fc.assert(
    fc.property(drawn, ({ before, later, keep, first, last }) => {
      const whole = new Timeline(ferngate());
      const options = tight(keep);
      const little = new Timeline(ferngate(), options);
      for (const one of [whole, little]) {
        one.add(before);
        for (const step of first) change(one, step);
      }
      const saved = JSON.parse(JSON.stringify(little.save()));
      if (saved.through !== null) seen.cut += 1;
      const restored = Timeline.restore(saved, tight(keep, options.archive.copy()));
      expect(plainState(restored.state)).toEqual(plainState(whole.state));
      // Saved again at the same place, it is the same to the letter; so it is from a record folded anew.
      expect(JSON.stringify(restored.save(saved.through))).toBe(JSON.stringify(saved));
      for (const one of [whole, little, restored]) {
        one.add(laterOn(later));
        for (const step of last) {
          if (one === restored && one.isFar(step[0])) seen.far += 1;
          change(one, step);
        }
      }
      expect(plainState(restored.state)).toEqual(plainState(whole.state));
      expect(plainState(little.state)).toEqual(plainState(whole.state));
      expect(restored.entries).toEqual(whole.entries);
    }),
    { numRuns: 200 },
  );
  // A check that never cuts, or never goes back behind the cut, checks nothing.
  expect(seen.cut).toBeGreaterThan(100);
  expect(seen.far).toBeGreaterThan(40);
});

test('what a snapshot holds does not depend on the stops on the way to it', () => {
  let cut = 0;
  fc.assert(
    fc.property(drawn, fc.nat({ max: 30 }), ({ before, first, last, keep, bit }, more) => {
      const one = new Timeline(ferngate(), tight(keep));
      const other = new Timeline(ferngate(), { ...tight(keep), most: keep + 5 + more });
      for (let at = 0; at < before.length; at += bit) one.add(before.slice(at, at + bit));
      other.add(before);
      for (const step of [...first, ...last]) {
        change(one, step);
        expect(one.state).toBeDefined();
        change(other, step);
      }
      const saved = one.save();
      // What waits to be folded again may change how much is in memory.
      expect(other.state).toBeDefined();
      if (saved.through !== null) cut += 1;
      // What went to the archive stays there; only one of the two may have gone so far.
      const [late, early] = other.size <= one.size ? [other.save(), one] : [saved, other];
      expect(JSON.stringify(early.save(late.through))).toBe(JSON.stringify(late));
    }),
    { numRuns: 200 },
  );
  expect(cut).toBeGreaterThan(100);
});
