import { describe, expect, expectTypeOf, test } from 'vitest';
import { accepts } from '../../core/defaults/override.ts';
import type { RuleDefault } from '../../core/defaults/rule-default.ts';
import { isRuleKey, type RuleKey, ruleSections, ruleTable } from '../../core/defaults/rule-table.ts';
import { ruleInForce, ruleValue } from '../../core/defaults/rule-value.ts';
import { BASE, baseWith, practiceIn } from './base-file.ts';

const keys = Object.keys(ruleTable).filter(isRuleKey);
const plain = practiceIn(baseWith(['\nrules: {loadTable: uk}', '']));

describe.each(keys)('%s', (key) => {
  const rule: RuleDefault = ruleTable[key];
  test('its default fits its own bounds, and it says what it is for', () => {
    expect(accepts(key, rule.value)).toBe(true);
    expect(ruleValue(plain, key)).toBe(rule.value);
    expect(rule.why.length).toBeGreaterThan(10);
    if (typeof rule.origin === 'object') expect(rule.origin.source.length).toBeGreaterThan(10);
  });

  test('what lies outside its bounds is refused', () => {
    const outside: Readonly<Record<RuleDefault['type'], readonly unknown[]>> = {
      number: rule.type === 'number' ? [rule.min - 0.001, rule.max + 0.001, Number.NaN, '5', true] : [],
      time: ['00:00', '23:59', '9:30', 5],
      choice: ['', 'constructor', 1],
      switch: ['true', 0, null],
    };
    for (const value of outside[rule.type]) expect(accepts(key, value), String(value)).toBe(false);
  });
});

// The figures of the trade's rules, written out a second time: a slip in the table shows here.
test('the defaults are the figures that were agreed', () => {
  const figures = Object.fromEntries(keys.map((key) => [key, ruleTable[key].value]));
  expect(figures).toEqual({
    calibrationWeekday: 'mon',
    calibrationAskAt: '10:30',
    calibrationLatestAskAt: '11:00',
    calibrationRepeatMinutes: 60,
    calibrationLeadMinutes: 120,
    calibrationTakesFromMinutes: 2,
    calibrationTakesToMinutes: 3,
    calibrationFailuresToSupport: 2,
    temperatureChangeCelsius: 5,
    settleTauMinutes: 20,
    settleWithinCelsius: 3,
    settleAssumedCelsius: 10,
    settleCarCelsius: 10,
    settleReadingFreshHours: 24,
    settleUnsteadyCelsiusPerHour: 1.5,
    settleUnsteadyUntil: '12:00',
    breathCelsius: 34,
    warmUpTowardCelsius: 40,
    warmUpTauSeconds: 41,
    warmUpLeastSeconds: 30,
    warmUpUnknownSeconds: 60,
    warmUpReadingFreshHours: 12,
    wipeAfterMinutes: 10,
    coverAfterMinutes: 15,
    lateNoteMinutes: 60,
    wrapped: 'always',
    wrappedGoodMonths: 12,
    unwrappedGoodDays: 1,
    cyclesOrderWithin: 2,
    tipQuietDays: 14,
    incidentLeadMinutes: 5,
    incidentBareAnswerMinutes: 60,
    stocktakeShare: 0.5,
    stocktakeEveryMonths: 3,
    loadTable: 'none',
    loadRowAboveCelsius: 3,
    validatedAboveCelsius: 3,
    sporeTestEveryDays: 7,
    sporeRecall: 'second',
    sporeClearCycles: 3,
    leakTestEveryDays: 7,
    tipsPerScan: 1,
    reorderUseDays: 56,
    reorderCoverDays: 60,
    stocktakeRestMinutes: 10,
    scanBegunEarlyMinutes: 15,
    tipsPerLoad: 0,
    turnaroundMinutes: 90,
    turnaroundLoadsNeeded: 5,
    turnaroundLoadsKept: 20,
    reorderServicePercent: 95,
    reorderLeadDays: 7,
    faultTail: 0.01,
    faultUses: 30,
    faultLeast: 3,
    briefBeforeMinutes: 15,
    closeOutBeforeMinutes: 15,
    postsPerMatter: 3,
    laterMinutes: 20,
    followOnMinutes: 10,
    toldTwiceMinutes: 10,
    sameOpenLoadHours: 24,
    loadNumberAgainDays: 30,
    openLoadDays: 60,
    leastLoadMinutes: 10,
    sporeToldTwiceMinutes: 60,
    scanTakesMinutes: 30,
    shortageEarlierMinutes: 60,
    reorderLeastDays: 5,
    laterMostHours: 12,
    incidentTooLateHours: 12,
    questionMinutes: 30,
    correctOwnMinutes: 10,
    signedDevices: 'encrypted',
    privateNotes: false,
    nightlyHash: false,
  });
});

test('no rule stands in two sections', () => {
  const counted = Object.values(ruleSections).flatMap((section) => Object.keys(section));
  expect(counted.toSorted()).toEqual(keys.toSorted());
});

describe('given a practice with settings of its own', () => {
  const own = practiceIn(
    baseWith([
      'loadTable: uk',
      'settleTauMinutes: 30, loadTable: uk, sites: {north: {settleTauMinutes: 40}}, scanners: {A: {settleTauMinutes: 50}}',
    ]),
  );
  test.each([
    [{}, 30, 'practice'],
    [{ site: 'quay' }, 30, 'practice'],
    [{ site: 'north' }, 40, 'site'],
    [{ scanner: 'B', site: 'north' }, 40, 'site'],
    [{ scanner: 'A', site: 'north' }, 50, 'scanner'],
    [{ scanner: 'A' }, 50, 'scanner'],
    [{ scanner: undefined, site: 'constructor' }, 30, 'practice'],
  ])('at %j it is %d, set by the %s', (at, value, setBy) => {
    expect(ruleInForce(own, 'settleTauMinutes', at)).toEqual({ value, setBy });
  });

  test('what it does not set is the default', () => {
    expect(ruleInForce(own, 'wipeAfterMinutes', { scanner: 'A' })).toEqual({ value: 10, setBy: 'default' });
  });

  test('a kept setting that no longer fits is passed over', () => {
    const old = { ...own, rules: { practice: { settleTauMinutes: 1000 }, bySite: {}, byScanner: {} } };
    expect(ruleValue(old, 'settleTauMinutes')).toBe(20);
  });

  test('a rule of the whole practice is not read from a site', () => {
    const odd = {
      ...own,
      rules: { practice: {}, bySite: { north: { sporeRecall: 'first' } }, byScanner: {} },
    };
    expect(ruleValue(odd, 'sporeRecall', { site: 'north' })).toBe('second');
  });

  test("nor a site's rule from a scanner", () => {
    const odd = { ...own, rules: { practice: {}, bySite: {}, byScanner: { A: { briefBeforeMinutes: 5 } } } };
    expect(ruleValue(odd, 'briefBeforeMinutes', { scanner: 'A' })).toBe(15);
  });
});

test('values keep their types', () => {
  const practice = practiceIn(BASE);
  expectTypeOf(ruleValue(practice, 'settleTauMinutes')).toEqualTypeOf<number>();
  expectTypeOf(ruleValue(practice, 'privateNotes')).toEqualTypeOf<boolean>();
  expectTypeOf(ruleValue(practice, 'calibrationAskAt')).toEqualTypeOf<string>();
  expectTypeOf(ruleValue(practice, 'sporeRecall')).toEqualTypeOf<'first' | 'second'>();
  expectTypeOf<'loadTable'>().toExtend<RuleKey>();
});
