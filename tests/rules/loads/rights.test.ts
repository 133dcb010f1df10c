import { describe, expect, it } from 'vitest';
import type { Hold, Mark } from '../../../core/record/state.ts';
import {
  isSenior,
  leadIds,
  mayCloseIncident,
  mayLoosen,
  mayRelease,
  mayReleaseLoad,
  seniorsAreNamed,
  seniorsInWords,
} from '../../../core/rules/rights.ts';
import { MINUTE } from '../../../core/time/instant.ts';
import { practiceIn } from '../../practice/base-file.ts';
import { FERNGATE } from './heard.ts';

const practice = practiceIn(FERNGATE);
const nobodyNamed = practiceIn(FERNGATE.replaceAll(/, part: (?:lead|deputy|manager)/g, ''));
const mark: Mark = {
  at: 0,
  earliest: 0,
  noted: 0,
  by: null,
  from: '@tom:example.org',
  room: '!quay:example.org',
  entry: '1.0',
};
const hold = (ends: Hold['ends']): Hold => ({ sort: 'said', reason: null, mark, ends });

describe('who may', () => {
  it.each([
    ['@rosa:example.org', true],
    ['@dan:example.org', true],
    ['@mo:example.org', true],
    ['@tom:example.org', false],
    ['@stranger:example.org', false],
    ['', false],
  ])('%s releases loads and closes incidents: %s', (person, may) => {
    expect([isSenior, mayCloseIncident, mayReleaseLoad].map((each) => each(practice, person))).toEqual([
      may,
      may,
      may,
    ]);
  });

  it('given the practice names no lead, deputy or manager, then anyone may, and that can be said', () => {
    expect(isSenior(nobodyNamed, '@stranger:example.org')).toBe(true);
    expect([seniorsAreNamed(practice), seniorsAreNamed(nobodyNamed)]).toEqual([true, false]);
    expect(seniorsInWords(nobodyNamed)).toBe('anyone');
    expect(seniorsInWords(practice)).toBe('Rosa (lead), Dan (deputy) or Mo (manager)');
  });

  it('given a hold of their own, then staff may release it; of another, an incident, a drop or a test, not', () => {
    expect(mayRelease(practice, '@tom:example.org', hold('placer'))).toBe(true);
    expect(mayRelease(practice, '@una:example.org', hold('placer'))).toBe(false);
    expect(mayRelease(practice, '@tom:example.org', hold('lead'))).toBe(false);
    expect(mayRelease(practice, '@rosa:example.org', hold('lead'))).toBe(true);
    expect(mayRelease(practice, '@rosa:example.org', hold('placer'))).toBe(true);
    expect(mayRelease(practice, '@rosa:example.org', hold('pass'))).toBe(false);
    expect(mayRelease(practice, '@rosa:example.org', hold('clear-test'))).toBe(false);
  });

  it('given the program placed it, then it is nobody’s to release but the seniors’', () => {
    const placed = { ...hold('placer'), mark: { ...mark, from: '' } };
    expect(mayRelease(practice, '', placed)).toBe(false);
  });

  it.each([
    ['its author after 10 minutes', '@tom:example.org', 10 * MINUTE, true],
    ['its author a millisecond later', '@tom:example.org', 10 * MINUTE + 1, false],
    ['a colleague at once', '@una:example.org', 0, false],
    ['the deputy a day later', '@dan:example.org', 1_440 * MINUTE, true],
  ])('a correction that loosens is taken from %s', (_who, asker, now, may) => {
    expect(mayLoosen({ practice, author: '@tom:example.org', asker, noted: 0, now, typed: true })).toBe(may);
  });

  it('then the lead is called; where no lead writes here the deputy, then the manager', () => {
    expect(leadIds(practice)).toEqual(['@rosa:example.org']);
    expect(leadIds(practiceIn(FERNGATE.replace(', part: lead', '')))).toEqual(['@dan:example.org']);
    expect(leadIds(practiceIn(FERNGATE.replace(', part: lead', '').replace(', part: deputy', '')))).toEqual([
      '@mo:example.org',
    ]);
    expect(leadIds(nobodyNamed)).toEqual([]);
  });
});
