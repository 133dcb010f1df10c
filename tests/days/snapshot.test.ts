import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Desk } from '../../core/desk/desk.ts';
import { NeedsWholeRecord } from '../../core/record/timeline.ts';
import { MINUTE } from '../../core/time/instant.ts';
import { anyDay } from './any-day.ts';
import { entriesOf } from './checks.ts';
import { Day, READERS } from './play-day.ts';

/** Which words gave what is kept in memory only, for the latest notes: "why?" is answered otherwise after a restart. */
const anyDayWithoutWhy = (most: number) =>
  anyDay(most).map((day) => day.filter((one) => !('text' in one) || one.text !== 'why?'));

/** A desk from a snapshot of `day` that is cut after entry `cut` of the record, through JSON. */
function fromSnapshot(day: Day, cut: number): { desk: Desk; isCut: boolean } {
  const entries = entriesOf(day.turns);
  const place = entries[cut % (entries.length + 1)];
  const saved = JSON.parse(JSON.stringify(day.desk.save(place ?? null)));
  const desk = new Desk(READERS);
  expect(desk.restore(saved)).toBe(true);
  return { desk, isCut: saved.timeline.through !== null };
}

test('a desk from a snapshot goes on as the one that wrote it, or says that it needs the whole record', () => {
  const seen = { cut: 0, same: 0, needsWhole: 0 };
  const drawn = fc.tuple(anyDay(16), anyDayWithoutWhy(16), fc.nat(), fc.nat({ max: 30 }));
  fc.assert(
    fc.property(drawn, ([before, after, cut, tail]) => {
      const whole = new Day();
      for (const one of before) whole.happen(one);
      const { desk, isCut } = fromSnapshot(whole, cut);
      if (isCut) seen.cut += 1;
      const restored = whole.goingOn(desk);
      // Some of it is read from the journal, as after a start; the rest happens.
      const written = whole.turns.length;
      for (const one of after) whole.happen(one);
      whole.runTo(whole.now + tail * MINUTE);
      try {
        expect(restored.desk.turns).toBe(written);
        for (const one of after) restored.happen(one);
        restored.runTo(whole.now);
      } catch (error) {
        if (!(error instanceof NeedsWholeRecord)) throw error;
        seen.needsWhole += 1;
        return;
      }
      expect(restored.turns.length).toBe(whole.turns.length);
      for (const [index, turn] of whole.turns.entries()) expect(restored.turns[index]).toEqual(turn);
      expect(restored.desk.exported(whole.now)).toEqual(whole.desk.exported(whole.now));
      expect(restored.desk.next(whole.now)).toBe(whole.desk.next(whole.now));
      seen.same += 1;
    }),
    { numRuns: 150 },
  );
  // A check that never cuts, or never goes on, checks nothing.
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
}, 120_000);

test('a snapshot and the lines after it give what the whole journal gives, to the letter', () => {
  const seen = { cut: 0, same: 0 };
  fc.assert(
    fc.property(anyDay(14), anyDay(14), fc.nat(), (before, after, cut) => {
      const day = new Day();
      for (const one of before) day.happen(one);
      const { desk, isCut } = fromSnapshot(day, cut);
      const written = day.turns.length;
      for (const one of after) day.happen(one);
      try {
        for (const [index, turn] of day.turns.slice(written).entries())
          desk.replay(written + index + 1, JSON.parse(JSON.stringify(turn)));
      } catch (error) {
        if (!(error instanceof NeedsWholeRecord)) throw error;
        return;
      }
      const saved = desk.save(null);
      expect(JSON.stringify(day.desk.save(saved?.timeline.through ?? null))).toBe(JSON.stringify(saved));
      seen.same += 1;
      if (isCut) seen.cut += 1;
    }),
    { numRuns: 150 },
  );
  for (const count of Object.values(seen)) expect(count).toBeGreaterThan(20);
}, 120_000);

test('what another build made is not taken', () => {
  const day = new Day();
  const saved = day.desk.save();
  expect(new Desk(READERS).restore({ ...saved, made: 'before' })).toBe(false);
  expect(new Desk(READERS).restore(null)).toBe(false);
  expect(new Desk(READERS).restore('{}')).toBe(false);
});
