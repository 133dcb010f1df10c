import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { machineFs } from '../../bot/store/fs-port.ts';
import type { History } from '../../bot/store/history/history.ts';
import { openHistory, withScratchHistory } from '../../bot/store/history/history-file.ts';
import type { Entry } from '../../core/record/entry.ts';
import { Timeline } from '../../core/record/timeline.ts';
import { anyEntries } from '../record/any-entry.ts';
import { ferngate } from '../record/ferngate.ts';
import { plainState } from '../record/plain-state.ts';
import { temporaryFolders } from './temp-folder.ts';

const tempFolder = temporaryFolders();

/** Next to nothing stays in memory. */
function tight(archive: History) {
  return { archive, keep: 3, most: 6, days: 0 };
}

const corrections = fc.array(fc.tuple(fc.nat({ max: 50 }), fc.integer({ min: -600, max: 0 })), {
  maxLength: 6,
});

function change(timeline: Timeline, [turn, minutes]: readonly [number, number]): void {
  const gone = timeline.setAside(turn);
  if (minutes > -300) timeline.add(gone.map((entry) => ({ ...entry, when: entry.when + minutes * 60_000 })));
}

/** A few entries about tip 4 and scanner A, a minute apart. */
function entries(from: number, count: number): Entry[] {
  return Array.from({ length: count }, (_, n) => {
    const turn = from + n;
    const when = Date.UTC(2026, 10, 23, 9, turn);
    const fact = { kind: 'used', tips: ['4'], scanner: 'A', when: new Date(when).toISOString() } as const;
    const said = { ...fact, tips: [...fact.tips] };
    const who = { by: 'Tom', from: '@tom:example.org', room: '!quay:example.org' };
    return { id: `${turn}.0`, turn, index: 0, when, noted: when, fact: said, ...who };
  });
}

test('a timeline on history.db gives what one gives that keeps everything in memory', () => {
  let far = 0;
  fc.assert(
    fc.property(anyEntries(50), corrections, (drawn, changes) =>
      withScratchHistory((archive) => {
        const whole = new Timeline(ferngate());
        const little = new Timeline(ferngate(), tight(archive));
        for (const one of [whole, little]) one.add(drawn);
        for (const each of changes) {
          if (little.isFar(each[0])) far += 1;
          for (const one of [whole, little]) change(one, each);
        }
        expect(plainState(little.state)).toEqual(plainState(whole.state));
        expect(little.entries).toEqual(whole.entries);
        expect([...little.newestFirst()]).toEqual([...whole.newestFirst()]);
        for (const { turn, id } of whole.entries) {
          expect(little.ofTurn(turn)).toEqual(whole.ofTurn(turn));
          expect(little.entry(id)).toEqual(whole.entry(id));
        }
        const places = (one: Timeline) => one.placesAbout('tip:2').map(({ turn, index }) => [turn, index]);
        expect(places(little)).toEqual(places(whole));
      }),
    ),
    { numRuns: 60 },
  );
  // A check that never corrects what is on the disk checks nothing.
  expect(far).toBeGreaterThan(20);
});

describe('history.db beside a snapshot', () => {
  function openIn(folder: string): History {
    return openHistory(machineFs, join(folder, 'history.db'));
  }

  test('given a crash after more was written, then it is as it was at the last commit', () => {
    const folder = tempFolder();
    const before = openIn(folder);
    const timeline = new Timeline(ferngate(), tight(before));
    timeline.add(entries(0, 20));
    const saved = JSON.parse(JSON.stringify(timeline.save()));
    before.commit('20 abc');
    const state = structuredClone(plainState(timeline.state));
    timeline.add(entries(20, 20));
    timeline.setAside(2);
    expect(timeline.state).toBeDefined();
    expect(timeline.entries).toHaveLength(39);
    before.close();
    const after = openIn(folder);
    expect(after.stamp).toBe('20 abc');
    const again = Timeline.restore(saved, tight(after));
    expect(plainState(again.state)).toEqual(state);
    expect(again.entries).toHaveLength(20);
    after.close();
  });

  test('given it is rolled back, then what was written since the commit is gone', () => {
    const history = openIn(tempFolder());
    history.putEntry(entries(1, 1)[0] ?? expect.fail());
    history.commit('1 abc');
    for (const entry of entries(2, 3)) history.putEntry(entry);
    history.rollBack();
    expect(history.after(null, 10).map(({ id }) => id)).toEqual(['1.0']);
    expect(history.stamp).toBe('1 abc');
    history.close();
  });

  test('given a rebuild that was cut off, then it fits no snapshot', () => {
    const folder = tempFolder();
    const history = openIn(folder);
    new Timeline(ferngate(), tight(history)).add(entries(0, 20));
    history.close();
    const again = openIn(folder);
    expect(again.stamp).toBeNull();
    again.close();
  });

  test('given it is cleared, then nothing of what was in it is on the disk', () => {
    const folder = tempFolder();
    const history = openIn(folder);
    for (const entry of entries(0, 5)) history.putEntry(entry);
    history.commit('5 abc');
    expect(readFileSync(join(folder, 'history.db-wal')).includes('@tom:example.org')).toBe(true);
    history.clear();
    expect(existsSync(join(folder, 'history.db'))).toBe(false);
    expect(existsSync(join(folder, 'history.db-wal'))).toBe(false);
    expect(history.after(null, 10)).toEqual([]);
    history.close();
  });

  test('given a file that is no database, then it is made anew', () => {
    const folder = tempFolder();
    writeFileSync(join(folder, 'history.db'), 'not a database at all, but long enough to be looked at twice');
    const history = openIn(folder);
    expect(history.stamp).toBeNull();
    expect(history.after(null, 10)).toEqual([]);
    history.close();
  });
});

test('given the disk will not, then that is said in plain words', () => {
  const full = {
    ...machineFs,
    exists: () => false,
    open: () => fail('ENOSPC'),
    remove: () => fail('EACCES'),
  };
  const history = openHistory(full, join(tempFolder(), 'history.db'));
  expect(() => history.after(null, 1)).toThrow('the disk is full');
});

function fail(code: string): never {
  throw Object.assign(new Error(code), { code });
}
