import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Desk } from '../../core/desk/desk.ts';
import { MINUTE } from '../../core/time/instant.ts';
import type { Happening } from '../days/any-day.ts';
import { Day } from '../days/play-day.ts';
import { PLAIN } from '../days/scenes.ts';

const tip = fc.constantFrom('1', '2', '3', '4', '5');
const scanner = fc.constantFrom('blue', 'green');

function say(before: string, name: fc.Arbitrary<string>, behind = ''): fc.Arbitrary<string> {
  return name.map((id) => before + id + behind);
}

/** Notes that tell something, notes that lean on them, and what may stand between. */
const note = fc.oneof(
  say('used tip ', tip),
  say('tip ', tip, ' fell on the floor'),
  say('can’t find tip ', tip),
  say('used and sent tip ', tip),
  say('wiped ', scanner),
  say('calibrated ', scanner, ', all good'),
  say('haven’t done ', scanner, ' yet'),
  say('', tip, ' as well'),
  say('and ', scanner),
  fc.constantFrom('binned it', 'found it', 'both bagged', 'sent it off', 'it’s sterile', 'the other one too'),
  fc.constantFrom('tea anyone', 'yes', 'no', '1', 'undo', 'sorry, tip 5 not 4'),
);

const who = {
  from: fc.constantFrom('@tom:example.org', '@dan:example.org'),
  north: fc.boolean(),
  late: fc.constant(0),
};
const happening: fc.Arbitrary<Happening> = fc.oneof(
  {
    weight: 8,
    arbitrary: fc.record({
      ...who,
      does: fc.constant('note' as const),
      after: fc.nat({ max: 6 }),
      text: note,
    }),
  },
  fc.record({
    ...who,
    does: fc.constant('edit' as const),
    after: fc.nat({ max: 6 }),
    back: fc.nat({ max: 3 }),
    text: note,
  }),
  fc.record({
    ...who,
    does: fc.constant('delete' as const),
    after: fc.nat({ max: 6 }),
    back: fc.nat({ max: 3 }),
  }),
);

test('turns read back give the same desk, and one from a snapshot goes on as the one that wrote it', () => {
  let leaning = 0;
  let passing = 0;
  let asking = 0;
  const drawn = fc.tuple(
    fc.array(happening, { minLength: 4, maxLength: 14 }),
    fc.array(happening, { minLength: 2, maxLength: 8 }),
  );
  fc.assert(
    fc.property(drawn, ([before, after]) => {
      const whole = new Day();
      for (const one of before) whole.happen(one);
      const desk = new Desk(PLAIN.readers);
      for (const [index, turn] of whole.turns.entries())
        desk.replay(index + 1, JSON.parse(JSON.stringify(turn)));
      expect(JSON.stringify(desk.save())).toBe(JSON.stringify(whole.desk.save()));
      const again = whole.goingOn(desk);
      for (const day of [whole, again]) {
        for (const one of after) day.happen(one);
        day.runTo(day.now + 5 * MINUTE);
      }
      expect(again.turns).toEqual(whole.turns);
      expect(again.desk.exported(again.now)).toEqual(whole.desk.exported(whole.now));
      for (const { leans, passed, asked = [] } of whole.turns) {
        if (leans !== undefined) leaning += 1;
        if (passed === true) passing += 1;
        if (asked.some(({ purpose }) => purpose.sort === 'meant')) asking += 1;
      }
    }),
    { numRuns: 120 },
  );
  // Days on which nothing leans on anything would show nothing.
  expect(Math.min(leaning, passing, asking)).toBeGreaterThan(30);
}, 120_000);
