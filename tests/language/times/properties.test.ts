import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveBack } from '../../../core/language/times/back.ts';
import { combineTimes } from '../../../core/language/times/combine.ts';
import { findTimes } from '../../../core/language/times/find.ts';
import { resolveForward } from '../../../core/language/times/forward.ts';
import { readBack } from '../../../core/language/times/read-back.ts';
import { resolveDays } from '../../../core/language/times/resolve-days.ts';
import { TIME_STARTS } from '../../../core/language/times/starts.ts';
import type { TimeContext, TimeSpan } from '../../../core/language/times/time-span.ts';
import { tokenize } from '../../../core/language/tokens.ts';
import { isLocalTime, localDateOf, startOfDay } from '../../../core/time/zone.ts';
import { BACK_CASES } from './back.cases.ts';
import { BACK_DAYS } from './days.cases.ts';
import { FORWARD_CASES } from './forward.cases.ts';
import { HOURS } from './told.ts';

const ZONES = [
  'Europe/London',
  'America/New_York',
  'Australia/Lord_Howe',
  'America/St_Johns',
  'Asia/Kolkata',
  'Asia/Kathmandu',
  'Pacific/Auckland',
];

const context: fc.Arbitrary<TimeContext> = fc.record({
  // Two leap days and both sorts of clock change lie between.
  at: fc.integer({ min: Date.parse('2023-12-30T00:00:00Z'), max: Date.parse('2028-03-02T00:00:00Z') }),
  zone: fc.constantFrom(...ZONES),
  dates: fc.constantFrom('day-first' as const, 'month-first' as const),
  hours: fc.constantFrom(HOURS, null),
});

const bit = fc.oneof(
  fc.constantFrom(...TIME_STARTS),
  fc.integer({ min: 0, max: 60 }).map(String),
  fc.constantFrom(
    '10:30',
    '2pm',
    '3/11',
    '31/11',
    '29 Feb',
    '14th',
    '1030',
    '00:30',
    '2026',
    '9999',
    '24:00',
    'ish',
    'past',
    'to',
  ),
  fc.constantFrom(
    'ago',
    'back',
    'min',
    'hours',
    'days',
    ',',
    '-',
    '.',
    ':',
    '/',
    'and',
    'tip',
    'sent',
    'week',
    'month',
    '\n',
    "'s",
  ),
);
const salad = fc.array(bit, { maxLength: 14 }).map((bits) => bits.join(' '));
const known = fc.constantFrom(...[...BACK_CASES, ...FORWARD_CASES, ...BACK_DAYS].map(([note]) => note));
const note = fc.oneof(
  salad,
  salad,
  known,
  fc.tuple(known, known).map(([a, b]) => `${a} ${b}`),
  fc.string({ unit: 'grapheme' }),
);

function spansOf(text: string, given: TimeContext): readonly TimeSpan[] {
  return findTimes(tokenize(text), given);
}

// Hundreds of runs each on a busy machine: the limit only catches one that hangs.
describe('whatever is typed', { timeout: 60_000 }, () => {
  it('spans are in order, apart, and inside the note', () => {
    fc.assert(
      fc.property(note, context, (text, given) => {
        let end = 0;
        for (const { from, to } of spansOf(text, given)) {
          expect(from).toBeGreaterThanOrEqual(end);
          expect(to).toBeGreaterThan(from);
          end = to;
        }
        expect(end).toBeLessThanOrEqual(tokenize(text).length);
      }),
      { numRuns: 1500 },
    );
  });

  it('a fact is never in the future, and its stretch is in order', () => {
    fc.assert(
      fc.property(note, context, (text, given) => {
        for (const span of spansOf(text, given)) {
          const { when, earliest, latest } = resolveBack(span, given);
          expect(when).toBeLessThanOrEqual(given.at);
          expect(earliest ?? when).toBeLessThanOrEqual(when);
          expect(latest ?? given.at).toBeLessThanOrEqual(given.at);
          expect(earliest ?? 0).toBeLessThanOrEqual(latest ?? given.at);
          expect(readBack(when, given.at, given.zone)).toMatch(/^([A-Z]|yesterday )?.*\d\d:\d\d$/);
        }
      }),
      { numRuns: 1500 },
    );
  });

  it('what is planned is never before today', () => {
    fc.assert(
      fc.property(note, context, fc.constantFrom('time', 'open', 'shut'), (text, given, role) => {
        const today = localDateOf(given.at, given.zone);
        for (const span of spansOf(text, given)) {
          const { days, times, open, shut, start } = resolveForward(span, given, role);
          expect(days.length).toBeGreaterThan(0);
          expect(days[0] ?? '').toSatisfy((day: string) => day >= today);
          expect([...days].sort()).toEqual(days);
          expect([...times].sort()).toEqual(times);
          for (const time of [...times, open ?? '00:00', shut ?? '00:00'])
            expect(isLocalTime(time)).toBe(true);
          expect(start).toBeGreaterThanOrEqual(startOfDay(today, given.zone));
        }
      }),
      { numRuns: 1500 },
    );
  });

  it('stretches of dates are in order', () => {
    fc.assert(
      fc.property(note, context, fc.constantFrom('back', 'forward'), (text, given, direction) => {
        for (const span of spansOf(text, given)) {
          const found = resolveDays(span, given, direction);
          if (found !== null) expect(found.to >= found.from).toBe(true);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('combining keeps both, or says no', () => {
    fc.assert(
      fc.property(note, note, context, (one, two, given) => {
        const [a] = spansOf(one, given);
        const [b] = spansOf(two, given);
        if (a === undefined || b === undefined) return;
        const both = combineTimes(a, b);
        if (both === null) return;
        expect(both.days.length + both.clocks.length).toBe(
          a.days.length + b.days.length + a.clocks.length + b.clocks.length,
        );
      }),
      { numRuns: 500 },
    );
  });

  it('what was said does not depend on capitals or on the moment', () => {
    fc.assert(
      fc.property(salad, context, context, (text, a, b) => {
        const other = { ...b, dates: a.dates };
        expect(spansOf(text.toUpperCase(), other)).toEqual(spansOf(text, a));
      }),
      { numRuns: 500 },
    );
  });
});

describe('cost', () => {
  /** Reads of tokens, counted: what a longer note costs without a clock in the test. */
  function reads(text: string): number {
    let count = 0;
    const tokens = new Proxy(tokenize(text), {
      get(target, key, receiver) {
        count++;
        return Reflect.get(target, key, receiver);
      },
    });
    findTimes(tokens, { at: 0, zone: 'Europe/London', dates: 'day-first', hours: null });
    return count;
  }

  it.each([
    '1 and ',
    'at 9, ',
    '9, ',
    'tips 1 and 2 and 3 and ',
    'monday and ',
    '3/11 to ',
    'on 3 dec, ',
    'half ',
    'the last ',
    'a quarter of an ',
    'ten to ',
    'from between about at ',
    '- ',
    '1 - ',
    'a ',
  ])('is linear in the length: %j over and over', (piece) => {
    const short = reads(piece.repeat(400));
    const long = reads(piece.repeat(1600));
    expect(long).toBeLessThan(short * 4.4);
  });
});
