import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { fact } from '../../core/reading/fact.ts';
import { decision } from '../../core/record/decision.ts';
import type { Entry } from '../../core/record/entry.ts';
import { foldEntry } from '../../core/record/fold/fold.ts';
import { MemoryArchive } from '../../core/record/memory-archive.ts';
import { inOrder } from '../../core/record/order.ts';
import { startState } from '../../core/record/start-state.ts';
import type { State } from '../../core/record/state.ts';
import { packState, unpackState } from '../../core/record/state-json.ts';
import { Timeline } from '../../core/record/timeline.ts';
import { anyEntries } from './any-entry.ts';
import { ferngate } from './ferngate.ts';
import { given } from './given.ts';
import { plainState } from './plain-state.ts';
import { mayBeCalibrated } from './slow-scanner.ts';
import { mayBeSterile } from './slow-tip.ts';

/** The whole fold, from nothing. */
function whole(entries: readonly Entry[]): State {
  const state = startState(ferngate());
  for (const entry of [...entries].sort(inOrder)) foldEntry(state, entry);
  return state;
}

function timelineOf(entries: readonly Entry[]): Timeline {
  const timeline = new Timeline(ferngate());
  timeline.add(entries);
  return timeline;
}

describe('the record in order', () => {
  test('any order of arrival gives the same state', () => {
    const shuffled = anyEntries(40).chain((entries) =>
      fc.tuple(fc.constant(entries), fc.shuffledSubarray(entries, { minLength: entries.length })),
    );
    fc.assert(
      fc.property(shuffled, ([entries, arrived]) => {
        const timeline = new Timeline(ferngate());
        for (const entry of arrived) {
          timeline.add([entry]);
          expect(timeline.state).toBeDefined();
        }
        expect(plainState(timeline.state)).toEqual(plainState(whole(entries)));
      }),
      { numRuns: 100 },
    );
  });

  test('corrections refold to what the whole fold gives, past many checkpoints', () => {
    const long = fc.tuple(
      anyEntries(10),
      fc.integer({ min: 300, max: 900 }),
      fc.array(fc.tuple(fc.nat(), fc.boolean()), { minLength: 1, maxLength: 8 }),
    );
    fc.assert(
      fc.property(long, ([pattern, length, corrections]) => {
        const entries = repeat(pattern, length);
        const timeline = timelineOf(entries);
        let kept = entries;
        for (const [which, keep] of corrections) {
          expect(timeline.state).toBeDefined();
          const turn = entries[which % entries.length]?.turn ?? 0;
          const gone = timeline.setAside(turn);
          kept = kept.filter((each) => each.turn !== turn);
          if (!keep) continue;
          const again = gone.slice(0, 1).map((each) => ({ ...each, when: each.when - 60_000 }));
          timeline.replace(turn, again);
          kept = [...kept, ...again];
        }
        expect(plainState(timeline.state)).toEqual(plainState(whole(kept)));
      }),
      { numRuns: 30 },
    );
  });

  test('undoing everything leaves nothing', () => {
    fc.assert(
      fc.property(anyEntries(30), (entries) => {
        const timeline = timelineOf(entries);
        expect(timeline.state.practice).toBeDefined();
        for (const turn of new Set(entries.map((each) => each.turn))) timeline.setAside(turn);
        expect(timeline.entries).toEqual([]);
        expect(plainState(timeline.state)).toEqual(plainState(startState(ferngate())));
      }),
      { numRuns: 100 },
    );
  });

  test('the same entry twice changes nothing', () => {
    fc.assert(
      fc.property(anyEntries(15), (entries) => {
        const timeline = timelineOf(entries);
        timeline.add(entries);
        expect(plainState(timeline.state)).toEqual(plainState(whole(entries)));
      }),
      { numRuns: 50 },
    );
  });

  test('a snapshot reads back as it was', () => {
    fc.assert(
      fc.property(anyEntries(30), (entries) => {
        const { state } = timelineOf(entries);
        expect(plainState(throughJson(state))).toEqual(plainState(state));
      }),
      { numRuns: 50 },
    );
  });

  test('a decision goes with the entry that it is about, and comes back with it', () => {
    const record = given().note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    const [about] = record.timeline.ofTurn(1);
    record.note('09:01', { kind: 'incident-answered', incident: 'i', of: '1.0', tip: '4', reached: true });
    expect(record.tip('4').state).toBe('held');
    record.timeline.setAside(1);
    expect(record.tip('4').state).toBe('unknown');
    if (about !== undefined) record.timeline.add([about]);
    expect(record.tip('4').state).toBe('held');
  });

  test('a time from the future is taken as the note’s own', () => {
    const record = given().note('09:00', { kind: 'wiped', scanner: 'A', part: 'all' });
    const [entry] = record.timeline.entries;
    if (entry === undefined) throw new Error('no entry');
    const timeline = timelineOf([{ ...entry, when: entry.noted + 86_400_000 }]);
    expect(timeline.entries[0]?.when).toBe(entry.noted);
  });
});

test('what these tests draw is what the schemas allow', () => {
  const said = z.union([fact, decision]);
  fc.assert(
    fc.property(anyEntries(10), (entries) => {
      for (const entry of entries) expect(said.safeParse(entry.fact).error).toBeUndefined();
    }),
    { numRuns: 30 },
  );
});

describe('a second, slow opinion', () => {
  test('no sequence of notes makes a tip sterile that the record, read again, says is not', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyEntries(60), (entries) => {
        const timeline = timelineOf(entries);
        for (const tip of timeline.state.tips.values()) {
          if (tip.state !== 'sterile') continue;
          seen += 1;
          expect([tip.id, mayBeSterile(timeline.entries, tip.id)]).toEqual([tip.id, true]);
        }
      }),
      { numRuns: 400 },
    );
    // A check that never meets a sterile tip checks nothing.
    expect(seen).toBeGreaterThan(30);
  });

  test('nor a scanner free of every cause', () => {
    let seen = 0;
    fc.assert(
      fc.property(anyEntries(40), (entries) => {
        const timeline = timelineOf(entries);
        for (const scanner of timeline.state.scanners.values()) {
          if (scanner.lastPass === null || scanner.causes.length > 0) continue;
          seen += 1;
          expect([scanner.id, mayBeCalibrated(timeline.entries, scanner.id, 'quay')]).toEqual([
            scanner.id,
            true,
          ]);
          expect(scanner.holds.filter((each) => each.ends === 'pass')).toEqual([]);
        }
      }),
      { numRuns: 400 },
    );
    expect(seen).toBeGreaterThan(50);
  });
});

function throughJson(state: State): State {
  return unpackState(JSON.parse(JSON.stringify(packState(state))), new MemoryArchive());
}

/** The pattern again and again, an hour on each time, as turns of their own. */
function repeat(pattern: readonly Entry[], length: number): Entry[] {
  const entries: Entry[] = [];
  for (let round = 0; entries.length < length; round += 1)
    for (const each of pattern) {
      const turn = each.turn + round * 100;
      const when = each.when + round * 3_600_000;
      entries.push({ ...each, turn, when, noted: when, id: `${turn}.${each.index}` });
    }
  return entries;
}
