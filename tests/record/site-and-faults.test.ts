import { describe, expect, test } from 'vitest';
import { ruleValue } from '../../core/defaults/rule-value.ts';
import { exportState } from '../../core/record/export-state.ts';
import { findingOf, findingsOfTurns, findingsSince } from '../../core/record/findings.ts';
import { ferngate, NORTH_ROOM, twoAutoclaves } from './ferngate.ts';
import { at, type Given, given, sterile } from './given.ts';

const day = '2026-11-24';

function times(record: Given): (string | null)[] {
  return (record.state.sites.get('quay')?.bookings.get(day) ?? []).map((each) => each.time);
}

describe('bookings', () => {
  test('times said, the rest with none', () => {
    expect(
      times(given().note('09:00', { kind: 'booked', count: 3, day, times: ['14:00', '09:30'] })),
    ).toEqual(['09:30', '14:00', null]);
  });

  test.each([
    [{ times: ['09:30'] }, ['14:00', null]],
    [{ count: 1 }, ['09:30', '14:00']],
    [{ count: 2 }, ['09:30']],
    [{ times: ['11:00'] }, ['09:30', '14:00']],
    [{}, []],
  ])('cancelled %j leaves %j', (said, left) => {
    const record = given().note('09:00', { kind: 'booked', count: 3, day, times: ['09:30', '14:00'] });
    expect(times(record.note('10:00', { kind: 'cancelled', day, ...said }))).toEqual(left);
  });

  test('a slip of the keyboard does not fill the record', () => {
    const record = given().note('09:00', { kind: 'booked', count: 2_000_000_000, day });
    expect(times(record)).toHaveLength(200);
    expect(times(record.note('09:01', { kind: 'cancelled', count: 2_000_000_000, day }))).toEqual([]);
  });

  test('closed and open after all, and other hours', () => {
    const record = given().note('09:00', { kind: 'closed', days: [day] });
    expect(record.state.sites.get('quay')?.closedDates.has(day)).toBe(true);
    expect(record.state.sites.get('north')?.closedDates.has(day)).toBe(false);
    record
      .note('09:10', { kind: 'hours', day, open: '10:00' })
      .note('09:11', { kind: 'hours', day, shut: '15:00' });
    expect(record.state.sites.get('quay')?.closedDates.has(day)).toBe(false);
    expect(record.state.sites.get('quay')?.hours.get(day)).toMatchObject({ open: '10:00', shut: '15:00' });
  });
});

describe('turnaround', () => {
  test('from sent to sterile, the last twenty of a site', () => {
    const practice = ferngate({
      chat: [
        { room: '!quay:example.org', sites: ['quay'] },
        { room: NORTH_ROOM, sites: ['north'] },
      ],
    });
    const record = given(practice).note('07:30', { kind: 'sent', tips: ['4'] });
    sterile(record, ['4'], '1', '08:00', '08:45');
    for (let n = 2; n <= 23; n += 1) sterile(record, ['5'], String(n), `+${n} 08:00`, `+${n} 08:30`);
    const site = record.state.sites.get('quay');
    expect([site?.turnaroundLoads, site?.turnarounds.length, site?.turnarounds[0]]).toEqual([23, 20, 30]);
    expect(
      sterile(given(practice).note('07:30', { kind: 'sent', tips: ['4'] }), ['4']).state.sites.get('quay')
        ?.turnarounds,
    ).toEqual([60]);
  });
});

describe('faults', () => {
  test('counted against the uses at which they came', () => {
    const record = given();
    for (let n = 0; n < 3; n += 1) record.note(`09:${n}0`, { kind: 'scan-started', scanner: 'A' });
    record.note('10:00', { kind: 'fault', item: 'scanner:A', sort: 'fogging' });
    expect(record.scanner('A')).toMatchObject({
      uses: 3,
      faultCount: 1,
      faults: [{ sort: 'fogging', atUse: 3 }],
    });
    expect(record.scanner('A').holds).toEqual([]);
  });
});

describe('settings', () => {
  test('made in chat come before the practice file’s own, and can be put back', () => {
    const record = given().lead('09:00', {
      kind: 'setting',
      name: 'wipeAfterMinutes',
      value: 20,
      scanner: 'A',
    });
    expect(ruleValue(record.state.practice, 'wipeAfterMinutes', { scanner: 'A' })).toBe(20);
    expect(ruleValue(record.state.practice, 'wipeAfterMinutes', { scanner: 'B' })).toBe(10);
    record.lead('09:10', { kind: 'setting', name: 'wipeAfterMinutes', value: null, scanner: 'A' });
    expect(ruleValue(record.state.practice, 'wipeAfterMinutes', { scanner: 'A' })).toBe(10);
  });

  test('another practice file holds from then on and keeps what was noted', () => {
    const more = ferngate({ tips: [{ id: '9', home: 'north', cycles: 50, cyclesSoFar: 3 }] });
    const record = sterile(given(), ['4']).lead('09:00', { kind: 'practice', file: JSON.stringify(more) });
    expect(record.tip('9')).toMatchObject({ site: 'north', cycles: 3, limit: 50 });
    expect(record.tip('4').state).toBe('sterile');
  });
});

describe('the state as it is shown to the outside', () => {
  const ready = () => ({ calibrationDue: null, ready: true, notReadyBecause: [] });

  test('scanners and tips as the contract names them', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    const shown = exportState(record.state, ready);
    expect(shown.scanners.A).toEqual({
      site: 'quay',
      room: null,
      inTransit: false,
      calibrated: null,
      clean: true,
      covered: false,
      tip: '4',
      calibrationDue: null,
      ready: true,
      notReadyBecause: [],
    });
    expect(shown.tips['4']).toEqual({
      state: 'fitted',
      site: 'quay',
      room: null,
      cycles: 1,
      load: '118',
      since: '2026-11-23T09:00:00Z',
    });
    expect(shown.autoclaves).toBeUndefined();
  });

  test('autoclaves where they are listed', () => {
    const record = given(twoAutoclaves()).note('09:00', {
      kind: 'autoclave-test',
      sort: 'leak',
      outcome: 'failed',
      autoclave: 'big',
    });
    expect(exportState(record.state, ready).autoclaves).toEqual({
      big: { held: true, why: 'leak test failed' },
      small: { held: false, why: null },
    });
  });
});

describe('what was noticed', () => {
  test('goes when the note that caused it goes', () => {
    const record = given().note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    const [finding] = findingsOfTurns(record.state, [1]);
    expect(finding?.kind).toBe('unsafe-tip');
    expect(findingsSince(record.state, at('09:00'))).toHaveLength(1);
    expect(findingsSince(record.state, at('09:01'))).toEqual([]);
    record.timeline.setAside(1);
    expect(findingOf(record.state, finding?.key ?? '')).toBeUndefined();
  });

  test('comes when a late note makes it true', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });
    expect(record.found('unsafe-tip')).toEqual([]);
    record.note('08:50', { kind: 'used', tips: ['4'] });
    expect(record.found('unsafe-tip')).toMatchObject([{ mark: { entry: '3.0' } }]);
  });
});
