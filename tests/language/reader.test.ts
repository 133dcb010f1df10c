import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { makeReader } from '../../core/language/reader.ts';
import { tokenize } from '../../core/language/tokens.ts';
import { reading } from '../../core/reading/reading.ts';
import { corpusPractice, practiceAt, readerAt } from './practice-at.ts';

const path = corpusPractice('threeways');
const read = readerAt(path);
const at = Date.parse('2026-11-24T12:40:00Z');
const context = { at, room: '!mill:example.org' };
const EMPTY = { facts: [], asks: [], acts: [], plans: [], unclear: [] };

const trade = fc.constantFrom(
  ...'used tip 4 tips 2 and 6 green Robin load 118 passed failed the a not if can someone ? , . on off sent to autoclave north surgery yesterday at 5 134 for 3.5 min cover calibrated is wiped bar except all'.split(
    ' ',
  ),
);

describe('any note', () => {
  it('is read without a throw, by the schema, each unclear with its gap', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 80 }),
          fc.array(trade, { maxLength: 30 }).map((w) => w.join(' ')),
        ),
        (note) => {
          const got = read(note, context);
          expect(reading.safeParse(got.reading).error?.issues ?? []).toEqual([]);
          expect(got.gaps.map((gap) => gap.unclear)).toEqual(got.reading.unclear);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('is cut into tokens whose offsets give its text, in order', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (note) => {
        let last = 0;
        for (const token of tokenize(note)) {
          expect(token.start).toBeGreaterThanOrEqual(last);
          expect(token.end).toBeGreaterThan(token.start);
          last = token.end;
        }
        expect(last).toBeLessThanOrEqual(note.length);
      }),
    );
  });

  it('reads the same twice', () => {
    fc.assert(
      fc.property(fc.array(trade, { maxLength: 20 }), (words) => {
        const note = words.join(' ');
        expect(read(note, context)).toEqual(read(note, context));
      }),
    );
  });
});

describe('odd notes', () => {
  const plain = read('used tip 4', context).reading;

  it.each([
    'used\u200f tip\u200e 4',
    'used\u00a0tip\u20094',
    '\ufeffused tip 4',
    'used tip 4\u0000',
    'USED TIP 4',
    '😀 used tip 4 👍🏽',
  ])('%j is "used tip 4"', (note) => {
    expect(read(note, context).reading).toEqual(plain);
  });

  it.each(['', '   ', '😀🎉', '…', '???', '\u200f\u200e', 'constructor prototype __proto__ toString'])(
    '%j says nothing',
    (note) => {
      expect(read(note, context).reading).toEqual(EMPTY);
    },
  );

  it('a note of 100 kB is read to its end', () => {
    const talk = 'the quick brown fox went on and on about nothing at all. ';
    const note = `${talk.repeat(1800)}\nused tip 4`;
    expect(note.length).toBeGreaterThan(100_000);
    expect(read(note, context).reading.facts).toEqual(plain.facts);
  });
});

describe('learned words', () => {
  it('stand for what they were taught', () => {
    const taught = makeReader(practiceAt(path), [{ words: 'the gun', means: 'scanner:G' }]);
    expect(taught('wiped down the gun', context).reading.facts).toEqual(
      read('wiped down green', context).reading.facts,
    );
    expect(read('wiped down the gun', context).reading.facts).toEqual([]);
  });
});

describe('why', () => {
  it('tells the rule and the words that gave each slot', () => {
    const { why } = read('used tip 4 on Robin', context);
    expect(why).toEqual([
      {
        list: 'facts',
        index: 0,
        rule: 'used',
        slots: {
          tips: { said: 'tip 4' },
          scanner: { said: 'Robin' },
          when: { filledIn: "the note's own time" },
        },
      },
    ]);
  });
});

describe('gaps', () => {
  it('keep what was understood, and which slot an answer fills', () => {
    const { gaps } = read("scanner's wiped down", context);
    expect(gaps).toEqual([
      expect.objectContaining({
        slot: 'scanner',
        form: 'id',
        draft: { list: 'facts', entry: expect.objectContaining({ kind: 'wiped', part: 'all' }) },
      }),
    ]);
  });
});

describe('the host', () => {
  it.each(['UTC', 'America/New_York', 'Australia/Sydney', 'Asia/Kathmandu'])(
    'zone %s changes nothing',
    (zone) => {
      const before = process.env.TZ;
      const notes = [
        'green calibrated yesterday at 5',
        'scans at 9 and 2 tomorrow',
        'used tip 4 this morning',
        'closed on Friday',
      ];
      const here = notes.map((note) => read(note, context));
      process.env.TZ = zone;
      const there = notes.map((note) => read(note, context));
      if (before === undefined) delete process.env.TZ;
      else process.env.TZ = before;
      expect(there).toEqual(here);
    },
  );
});
