import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Desk } from '../../core/desk/desk.ts';
import { MemoryArchive } from '../../core/record/memory-archive.ts';
import { MINUTE } from '../../core/time/instant.ts';
import { anyDay } from './any-day.ts';
import { Day } from './play-day.ts';
import { PLAIN } from './scenes.ts';

/** Which words gave what is kept in memory only, for the latest notes: "why?" is answered otherwise after a restart. */
const anyDayWithoutWhy = (most: number) =>
  anyDay(most).map((day) => day.filter((one) => !('text' in one) || one.text !== 'why?'));

/** A desk that keeps so many entries in memory and no history, so that nearly everything is in its archive. */
function tightDesk(keep: number, archive = new MemoryArchive()): Desk {
  return new Desk(PLAIN.readers, { archive, keep, most: keep + 3, days: 0 });
}

/** `one` did and said what the other did, and waits for the same. */
function expectSame(one: Day, other: Day): void {
  expect(one.turns.length).toBe(other.turns.length);
  for (const [index, turn] of other.turns.entries()) expect(one.turns[index]).toEqual(turn);
  expect(one.desk.exported(other.now)).toEqual(other.desk.exported(other.now));
  expect(one.desk.next(other.now)).toBe(other.desk.next(other.now));
}

test('a desk that keeps next to nothing in memory does and says what one does that keeps everything', () => {
  let archived = 0;
  const drawn = fc.tuple(anyDay(30), fc.nat({ max: 6 }), fc.nat({ max: 30 }));
  fc.assert(
    fc.property(drawn, ([happenings, keep, tail]) => {
      const whole = new Day();
      const little = new Day(PLAIN, tightDesk(keep));
      for (const day of [whole, little]) {
        for (const one of happenings) day.happen(one);
        day.runTo(day.now + tail * MINUTE);
      }
      if (little.desk.needsArchive) archived += 1;
      expectSame(little, whole);
    }),
    { numRuns: 150 },
  );
  // A check in which nothing is archived checks nothing.
  expect(archived).toBeGreaterThan(60);
}, 120_000);

test('a desk from a snapshot goes on as the one that wrote it', () => {
  let cut = 0;
  const drawn = fc.tuple(anyDay(16), anyDayWithoutWhy(16), fc.nat({ max: 20 }), fc.nat({ max: 30 }));
  fc.assert(
    fc.property(drawn, ([before, after, keep, tail]) => {
      const archive = new MemoryArchive();
      const whole = new Day(PLAIN, tightDesk(keep, archive));
      for (const one of before) whole.happen(one);
      const saved = JSON.parse(JSON.stringify(whole.desk.save()));
      const desk = tightDesk(keep, archive.copy());
      expect(desk.restore(saved)).toBe(true);
      if (desk.needsArchive) cut += 1;
      const restored = whole.goingOn(desk);
      expect(restored.desk.turns).toBe(whole.turns.length);
      for (const day of [whole, restored]) {
        for (const one of after) day.happen(one);
        day.runTo(day.now + tail * MINUTE);
      }
      expectSame(restored, whole);
    }),
    { numRuns: 150 },
  );
  // A check that never cuts checks nothing.
  expect(cut).toBeGreaterThan(40);
}, 120_000);

test('a snapshot and the lines after it give what the whole journal gives, to the letter', () => {
  let cut = 0;
  fc.assert(
    fc.property(anyDay(14), anyDay(14), fc.nat({ max: 12 }), (before, after, keep) => {
      const archive = new MemoryArchive();
      const day = new Day(PLAIN, tightDesk(keep, archive));
      for (const one of before) day.happen(one);
      const saved = JSON.parse(JSON.stringify(day.desk.save()));
      const desk = tightDesk(keep, archive.copy());
      expect(desk.restore(saved)).toBe(true);
      const written = day.turns.length;
      for (const one of after) day.happen(one);
      for (const [index, turn] of day.turns.slice(written).entries())
        desk.replay(written + index + 1, JSON.parse(JSON.stringify(turn)));
      const anew = tightDesk(keep);
      for (const [index, turn] of day.turns.entries())
        anew.replay(index + 1, JSON.parse(JSON.stringify(turn)));
      const again = desk.save();
      if (desk.needsArchive) cut += 1;
      const { through } = again?.timeline ?? {};
      expect(JSON.stringify(anew.save(through))).toBe(JSON.stringify(again));
    }),
    { numRuns: 150 },
  );
  expect(cut).toBeGreaterThan(40);
}, 120_000);

test('what another build made is not taken', () => {
  const day = new Day();
  const saved = day.desk.save();
  expect(new Desk(PLAIN.readers).restore({ ...saved, made: 'before' })).toBe(false);
  expect(new Desk(PLAIN.readers).restore(null)).toBe(false);
  expect(new Desk(PLAIN.readers).restore('{}')).toBe(false);
});
