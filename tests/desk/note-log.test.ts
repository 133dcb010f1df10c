import fc from 'fast-check';
import { expect, test } from 'vitest';
import { NoteLog } from '../../core/desk/note-log.ts';
import type { Fact } from '../../core/reading/fact.ts';
import { MemoryArchive } from '../../core/record/memory-archive.ts';

function wiped(scanner: string): Fact {
  return { kind: 'wiped', scanner, part: 'all', when: '2026-11-23T09:00:00Z' };
}

/** What happens to a log: a note, an edit of an earlier one, an edit deleted, a correction, a question of an edit. */
const happening = fc.record({
  does: fc.constantFrom('note', 'note', 'note', 'edit', 'edit', 'drop', 'correct', 'ask', 'hear'),
  of: fc.nat({ max: 40 }),
});

function happen(log: NoteLog, { does, of }: { does: string; of: number }, turn: number): void {
  const id = `$${turn}`;
  const note = `$${of}`;
  if (does === 'note') {
    log.put({ id, turn, room: '!r', from: '@t', noted: turn, asked: '[]', gone: false });
    log.reads(id, id, [wiped('A')]);
  } else if (does === 'edit' && log.get(note) !== null) log.reads(note, id, [wiped(String(turn))]);
  else if (does === 'drop') log.dropEdit(note);
  else if (does === 'correct') log.corrected(note, turn % 2 === 0);
  else if (does === 'ask') log.asksNow(note, String(turn));
  else if (does === 'hear') log.heard(id);
}

function told(log: NoteLog, turns: number): unknown {
  return Array.from({ length: turns }, (_, turn) => {
    const id = `$${turn}`;
    return [log.get(id), log.noteOf(id), log.without(id), log.noteOfTurn(turn), log.knows(id)];
  });
}

test('given old notes are in the archive, then all that is asked of them is as if they were in memory', () => {
  let archived = 0;
  fc.assert(
    fc.property(
      fc.array(happening, { minLength: 10, maxLength: 60 }),
      fc.nat({ max: 5 }),
      (happenings, inMemory) => {
        const archive = new MemoryArchive();
        const whole = new NoteLog(new MemoryArchive(), 100);
        const little = new NoteLog(archive, inMemory);
        for (const [turn, each] of happenings.entries()) {
          happen(whole, each, turn);
          happen(little, each, turn);
        }
        expect(told(little, happenings.length)).toEqual(told(whole, happenings.length));
        if (little.needsArchive) archived += 1;
        const restored = new NoteLog(archive, inMemory);
        restored.restore(JSON.parse(JSON.stringify(little.save())));
        expect(told(restored, happenings.length)).toEqual(told(whole, happenings.length));
        expect(restored.save()).toEqual(little.save());
      },
    ),
    { numRuns: 300 },
  );
  // A check in which nothing is archived checks nothing.
  expect(archived).toBeGreaterThan(100);
});
