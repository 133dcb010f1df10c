import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { expandTips } from '../../core/practice/expand-tips.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import { addDays } from '../../core/time/local-date.ts';
import { timeOfMinutes } from '../../core/time/local-time.ts';
import { BASE, practiceIn } from './base-file.ts';

const lineCount = (text: string) => text.split('\n').length;

function expectSound(text: string) {
  const parsed = parsePractice(text);
  if ('practice' in parsed) return;
  expect(parsed.mistakes.length).toBeGreaterThan(0);
  let last = 0;
  for (const { line, column, wrong, right } of parsed.mistakes) {
    expect(line).toBeGreaterThanOrEqual(last);
    expect(line).toBeLessThanOrEqual(lineCount(text));
    expect(column).toBeGreaterThan(0);
    expect(wrong).not.toBe('');
    expect(right).not.toBe('');
    last = Math.max(line, 1);
  }
}

describe('whatever stands in the file, it is a practice or mistakes with lines of the file', () => {
  test('any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), expectSound));
  });

  test('the base file with a stretch of it cut out', () => {
    const offset = fc.integer({ min: 0, max: BASE.length });
    fc.assert(
      fc.property(offset, fc.integer({ min: 1, max: 40 }), (from, length) => {
        expectSound(BASE.slice(0, from) + BASE.slice(from + length));
      }),
      { numRuns: 400 },
    );
  });

  test('the base file with something put in', () => {
    const piece = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      '"',
      "'",
      ': ',
      '- ',
      '\n',
      '\t',
      '*',
      '&a ',
      '!',
      '#',
      '~',
      '0',
      ',',
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: BASE.length }), piece, (at, put) => {
        expectSound(BASE.slice(0, at) + put + BASE.slice(at));
      }),
      { numRuns: 400 },
    );
  });

  test('any value in the place of any other', () => {
    const places = [
      'practice',
      'timezone',
      'sites',
      'scanners',
      'autoclaves',
      'tips',
      'people',
      'chat',
      'dates',
      'rules',
    ];
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.jsonValue({ maxDepth: 3 }), (place, value) => {
        expectSound(stringify({ practice: 'X', timezone: 'Europe/London', [place]: value }));
      }),
      { numRuns: 300 },
    );
  });
});

/** Practices as a file may describe them; names are made apart by their numbers. */
const anyPractice = fc
  .record({
    zones: fc.array(fc.constantFrom('Europe/London', 'Asia/Kolkata', 'Australia/Adelaide'), {
      minLength: 1,
      maxLength: 4,
    }),
    scanners: fc.integer({ min: 1, max: 5 }),
    tips: fc.integer({ min: 0, max: 40 }),
    opens: fc.integer({ min: 0, max: 700 }),
    lasts: fc.integer({ min: 1, max: 700 }),
    closed: fc.uniqueArray(fc.integer({ min: 0, max: 800 }), { maxLength: 6 }),
  })
  .map(({ zones, scanners, tips, opens, lasts, closed }) => {
    const siteIds = zones.map((_, index) => `site${index}`);
    const homeOf = (index: number) => siteIds[index % siteIds.length] ?? 'site0';
    return {
      practice: 'Made Up',
      timezone: 'UTC',
      sites: zones.map((timezone, index) => ({
        id: siteIds[index],
        name: `Street ${index}`,
        timezone,
        hours: { mon: `${timeOfMinutes(opens)}-${timeOfMinutes(opens + lasts)}` },
        closed: closed.map((day) => addDays('2026-01-01', day)),
      })),
      scanners: Array.from({ length: scanners }, (_, index) => ({ id: `S${index}`, home: homeOf(index) })),
      tips: Array.from({ length: tips }, (_, index) => ({ ids: index + 1, home: homeOf(index) })),
    };
  });

test('a file written from a practice reads as that practice', () => {
  fc.assert(
    fc.property(anyPractice, fc.boolean(), (file, flow) => {
      const practice = practiceIn(stringify(file, { collectionStyle: flow ? 'flow' : 'block' }));
      expect(practice.sites.map(({ id, name, timezone }) => ({ id, name, timezone }))).toEqual(
        file.sites.map(({ id, name, timezone }) => ({ id, name, timezone })),
      );
      for (const [index, site] of practice.sites.entries()) {
        expect(site.hours.mon.map(({ open, shut }) => `${open}-${shut}`)).toEqual([
          file.sites[index]?.hours.mon,
        ]);
        expect(site.closed).toEqual(file.sites[index]?.closed.toSorted());
      }
      expect(practice.scanners.map(({ id, home }) => ({ id, home }))).toEqual(file.scanners);
      expect(practice.tips.map(({ id, home }) => ({ ids: Number(id), home }))).toEqual(file.tips);
    }),
  );
});

test('a stretch of tips has every id once, in order', () => {
  const prefix = fc.constantFrom('', 'T', 'N', 'T-', 'Tip_');
  fc.assert(
    fc.property(
      prefix,
      fc.integer({ min: 1, max: 500 }),
      fc.integer({ min: 0, max: 400 }),
      (letters, from, more) => {
        const expanded = expandTips(`${letters}${from}-${letters}${from + more}`);
        const ids = Array.from({ length: more + 1 }, (_, step) => `${letters}${from + step}`);
        expect(expanded).toEqual({ ids });
      },
    ),
  );
});
