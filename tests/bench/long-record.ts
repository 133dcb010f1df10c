import type { Turn } from '../../core/desk/turn.ts';
import type { Fact } from '../../core/reading/fact.ts';
import { itemsOf } from '../../core/record/items-of.ts';
import { DAY, MINUTE, toIso } from '../../core/time/instant.ts';

const QUAY = '!quay:example.org';
const TOM = '@tom:example.org';
const START = Date.parse('2006-01-02T08:30:00Z');
/** Of each day: ten rounds of a patient, with a load after every second. */
const ROUNDS = 10;

/** What one round notes, a minute or more apart, in the order of a careful surgery. */
function round(day: number, number: number, when: (minute: number) => string): Fact[] {
  const tip = String(1 + ((day * ROUNDS + number) % 8));
  const scanner = number % 2 === 0 ? 'A' : 'B';
  const pass: Fact = { kind: 'calibrated', scanner, outcome: 'passed', when: when(0) };
  const facts: Fact[] = [
    ...(number < 2 ? [pass] : []),
    { kind: 'fitted', tip, scanner, when: when(0) },
    { kind: 'scan-started', scanner, when: when(2) },
    { kind: 'scan-finished', scanner, when: when(15) },
    { kind: 'wiped', scanner, part: 'all', when: when(17) },
    { kind: 'removed', tips: [tip], when: when(18) },
    { kind: 'washed', tips: [tip], when: when(22) },
    { kind: 'bagged', tips: [tip], when: when(25) },
    { kind: 'sent', tips: [tip], when: when(26) },
    { kind: 'load-started', load: String(day * ROUNDS + number), tips: [tip], when: when(30) },
  ];
  const load = String(day * ROUNDS + number);
  facts.push({
    ...{ kind: 'load-finished', load, outcome: 'passed', celsius: 134, minutes: 3.5 },
    when: when(49),
  });
  return facts;
}

/** Everything was counted as sterile before the first patient. */
const counted: Fact = {
  kind: 'sterile',
  tips: ['1', '2', '3', '4', '5', '6', '7', '8'],
  when: toIso(START - MINUTE),
};

/** Turns of a practice that notes a hundred things a day, one a turn, from number `first` on. */
export function* longRecord(first: number, entries: number): Generator<{ at: string; turn: Turn }> {
  yield { at: counted.when, turn: turnOf(counted, first) };
  let number = first + 1;
  for (let day = 0; number < first + entries; day += 1)
    for (let n = 0; n < ROUNDS; n += 1) {
      const start = START + day * DAY + n * 50 * MINUTE;
      for (const fact of round(day, n, (minute) => toIso(start + minute * MINUTE))) {
        if (number >= first + entries) return;
        yield { at: fact.when, turn: turnOf(fact, number) };
        number += 1;
      }
    }
}

function turnOf(fact: Fact, number: number): Turn {
  const { when } = fact;
  const id = `$${number}`;
  return {
    cause: { sort: 'note', id, room: QUAY, from: TOM, noted: when },
    at: when,
    reading: { facts: [fact], asks: [], acts: [], plans: [], unclear: [] },
    entries: [{ what: fact, noted: when, by: TOM, from: TOM, room: QUAY, place: number, index: 0 }],
    effects: [{ does: 'react', key: `${number}/0`, room: QUAY, to: id, emoji: '👍' }],
    items: itemsOf(fact).toSorted(),
    made: { grammar: '1', rules: '1' },
  };
}
