import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextDue, openMatters } from '../../../core/rules/matters.ts';
import { isQuiet } from '../../../core/rules/quiet.ts';
import { HOUR, toIso } from '../../../core/time/instant.ts';
import { Given, type Told } from '../given.ts';
import { type Played, play } from '../play.ts';
import { TWO_ZONES } from './practices.ts';

const scanner = fc.constantFrom('A', 'B');
const tip = fc.constantFrom('1', '2', '3', 'H1', 'H2');
const tips = fc.uniqueArray(tip, { minLength: 1, maxLength: 3 });
const site = fc.constantFrom('quay', 'hill');
const day = fc.constantFrom('2026-12-22', '2026-12-23', '2026-12-24', '2026-12-28', '2027-01-04');

const told: fc.Arbitrary<Told> = fc.oneof(
  fc.record({ kind: fc.constant('used' as const), tips }),
  fc.record({ kind: fc.constant('sterile' as const), tips }),
  fc.record({ kind: fc.constant('sent' as const), tips }),
  fc.record({ kind: fc.constant('scan-started' as const), scanner, tip }),
  fc.record({ kind: fc.constant('scan-finished' as const), scanner }),
  fc.record({ kind: fc.constant('wiped' as const), scanner, part: fc.constant('all' as const) }),
  fc.record({ kind: fc.constant('covered' as const), scanner }),
  fc.record({
    kind: fc.constant('calibrated' as const),
    scanner,
    outcome: fc.constantFrom('passed' as const, 'failed' as const),
  }),
  fc.record({ kind: fc.constant('moved' as const), items: scanner.map((id) => [`scanner:${id}`]), site }),
  fc.record({ kind: fc.constant('temperature' as const), celsius: fc.integer({ min: 15, max: 30 }), site }),
  fc.record({ kind: fc.constant('booked' as const), count: fc.integer({ min: 1, max: 4 }), day, site }),
  fc.record({ kind: fc.constant('closed' as const), days: day.map((date) => [date]), site }),
);
const notes = fc.array(fc.tuple(fc.integer({ min: 1, max: 30 }), told), { maxLength: 25 });

interface Week {
  readonly given: Given;
  /** Each with whether its site was shut when it was said. */
  readonly posts: readonly (Played & { readonly quiet: boolean })[];
}

/** From a Tuesday into the closed weeks of one site and out of them again. */
function playNotes(each: readonly (readonly [number, Told])[]): Week {
  const given = new Given(TWO_ZONES);
  const posts: Week['posts'][number][] = [];
  let now = Date.parse('2026-12-22T00:00:00Z');
  const run = (until: number) => {
    for (const post of play(given, toIso(now), toIso(until))) {
      const where = post.room.includes('hill') ? 'hill' : 'quay';
      posts.push({ ...post, quiet: isQuiet(given.practice, given.state, where, given.at(post.at)) });
    }
    now = until;
  };
  for (const [hours, one] of each) {
    run(now + hours * HOUR);
    given.note(toIso(now), one);
  }
  run(now + 30 * HOUR);
  return { given, posts };
}

describe('given any notes over the end of a year', () => {
  it('then what is said is said once, in opening hours but for the brief, and what comes next lies ahead', () => {
    fc.assert(
      fc.property(notes, (each) => {
        const { given, posts } = playNotes(each);
        const loud = posts.filter(({ quiet, about }) => quiet && about !== 'brief' && about !== 'incident');
        expect(loud).toEqual([]);
        const briefs = posts
          .filter(({ about }) => about === 'brief')
          .map(({ at, room }) => `${at.slice(0, 10)} ${room}`);
        expect(new Set(briefs).size).toBe(briefs.length);
        expect(briefs.filter((brief) => /^(2026-12-(2[5-9]|3.)|2027-01-0[1-3]) !quay/.test(brief))).toEqual(
          [],
        );
        const view = given.view('2027-02-01T00:00:00Z');
        const keys = openMatters(view).map(({ key }) => key);
        expect(new Set(keys).size).toBe(keys.length);
        expect(nextDue(view) ?? view.now + 1).toBeGreaterThan(view.now);
      }),
      { numRuns: 25 },
    );
  });
});
