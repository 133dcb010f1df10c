import { describe, expect, test } from 'vitest';
import { STAFF } from './ferngate.ts';
import { at, given, sterile, type Told } from './given.ts';

const opened = (sort = 'unsafe-tip'): Told => ({
  kind: 'incident-opened',
  incident: 'i',
  of: '1.0',
  items: ['tip:4', 'scanner:A'],
  sort,
});
const answered = (reached: boolean, more: object = { tip: '4' }): Told => ({
  kind: 'incident-answered',
  incident: 'i',
  of: '1.0',
  reached,
  ...more,
});
const closed = (reason: string): Told => ({ kind: 'incident-closed', incident: 'i', reason });
const begun = () => given().note('09:00', { kind: 'fitted', tip: '4', scanner: 'A' });

describe('an incident', () => {
  test('given it is opened twice, then it began with the first', () => {
    const record = begun()
      .note('09:01', opened())
      .note('09:02', answered(false))
      .note('09:03', opened('other'));
    expect(record.state.incidents.get('i')).toMatchObject({
      id: 'i',
      sort: 'unsafe-tip',
      items: ['tip:4', 'scanner:A'],
      of: '1.0',
      opened: { at: at('09:01') },
      answered: { reached: false },
      closed: null,
    });
  });

  test('given it reached a patient, then so kept, and the tip is held for the lead', () => {
    const record = begun().note('09:01', opened()).note('09:02', answered(true));
    expect(record.state.incidents.get('i')?.answered).toMatchObject({
      reached: true,
      mark: { at: at('09:02') },
    });
    expect(record.tip('4').holds).toMatchObject([
      { sort: 'reached-patient', ends: 'lead', reason: 'reached a patient' },
    ]);
    const tried = record.note('09:10', { kind: 'released', items: ['tip:4'] });
    expect(tried.found('refused')).toMatchObject([{ what: 'release', why: 'not-allowed' }]);
  });

  test('given it did not, then the tip is not held', () => {
    const record = begun().note('09:01', opened()).note('09:02', answered(false));
    expect([record.tip('4').holds, record.tip('4').state]).toEqual([[], 'fitted']);
  });

  test.each([
    ['no tip is named', {}],
    ['the tip is not known', { tip: '99' }],
  ])('given %s, then the answer is kept and nothing is held', (_what, more) => {
    const record = begun().note('09:01', opened()).note('09:02', answered(true, more));
    expect(record.state.incidents.get('i')?.answered).toMatchObject({ reached: true });
    expect(record.tip('4').holds).toEqual([]);
  });

  test('given it is not known, then answering and closing it open none; a tip that reached a patient is held', () => {
    const record = begun().note('09:02', answered(true)).lead('09:03', closed('done'));
    expect(record.state.incidents.all()).toEqual([]);
    expect(record.tip('4').state).toBe('held');
  });

  test('given a colleague closes it, then it stays open, refused with what it is about', () => {
    const record = begun().note('09:01', opened()).by(STAFF, '09:10', closed('done'));
    expect(record.state.incidents.get('i')?.closed).toBeNull();
    expect(record.found('refused')).toMatchObject([
      { items: ['tip:4', 'scanner:A'], what: 'close-incident', item: null, why: 'not-allowed' },
    ]);
  });

  test('given it is closed twice, then the first word stands and nobody is refused afterwards', () => {
    const record = begun()
      .note('09:01', opened())
      .lead('09:10', closed('first'))
      .lead('09:20', closed('second'))
      .note('09:30', closed('third'));
    expect(record.state.incidents.get('i')?.closed).toMatchObject({
      reason: 'first',
      mark: { at: at('09:10') },
    });
    expect(record.found('refused')).toEqual([]);
  });
});

describe('loads and doubts', () => {
  test('given nobody knows that load, then releasing it does nothing', () => {
    expect(given().lead('09:00', { kind: 'load-released', load: '999' }).state.loads.all()).toEqual([]);
  });

  test('given a colleague releases it, then refused with the load’s number', () => {
    const record = given()
      .note('09:00', { kind: 'load-started', load: '118', tips: ['4'] })
      .note('09:40', { kind: 'load-finished', load: '118', outcome: 'passed', celsius: 131, minutes: 9 })
      .note('10:00', { kind: 'load-released', load: '118' });
    expect(record.found('refused')).toMatchObject([
      { items: ['load:118'], what: 'load-release', item: 'load:118', why: 'not-allowed' },
    ]);
  });

  test('given a doubt is answered with nothing new, then what stood before stands again', () => {
    const record = sterile(given(), ['4']).note('09:00', { kind: 'doubted', item: 'load:118' });
    expect(record.tip('4').state).toBe('in-load');
    record.note('09:10', { kind: 'doubt-settled', item: 'load:118' });
    expect([record.load('118').status, record.tip('4').state]).toEqual(['passed', 'sterile']);
  });
});

describe('settings, words and counts', () => {
  test('given one name is set for the practice, a site and a scanner, then each stands beside the others', () => {
    const set = (value: number, more: object = {}): Told => ({
      kind: 'setting',
      name: 'weekdays',
      value,
      ...more,
    });
    const record = given().lead('09:00', set(1), set(2, { site: 'quay' }), set(3, { scanner: 'A' }));
    expect(
      [...record.state.settings].map(([key, { value, site, scanner }]) => [key, value, site, scanner]),
    ).toEqual([
      ['weekdays||', 1, null, null],
      ['weekdays|quay|', 2, 'quay', null],
      ['weekdays||A', 3, null, 'A'],
    ]);
    expect(record.state.practice.rules).toMatchObject({
      practice: { weekdays: 1 },
      bySite: { quay: { weekdays: 2 } },
      byScanner: { A: { weekdays: 3 } },
    });
    expect(record.lead('09:10', set(4)).state.settings.size).toBe(3);
  });

  test('given a word is explained, then it is kept with when, until it is forgotten', () => {
    const record = given().note('09:00', { kind: 'word', words: 'the bubble', means: 'autoclave' });
    expect(record.state.words.get('the bubble')).toMatchObject({
      means: 'autoclave',
      mark: { at: at('09:00') },
    });
    record.note('09:10', { kind: 'word', words: 'the bubble', means: null });
    expect(record.state.words.size).toBe(0);
  });

  test('given a count is asked for and taken as done, then its site says when, and no other', () => {
    const record = given().note('09:00', { kind: 'stocktake-asked', site: 'quay' });
    expect(record.state.sites.get('quay')).toMatchObject({
      stocktakeAsked: { at: at('09:00') },
      stocktake: null,
    });
    record
      .note('09:30', { kind: 'sterile', tips: ['1'] })
      .note('09:40', { kind: 'stocktaken', site: 'quay' });
    expect(record.state.sites.get('quay')).toMatchObject({ stocktake: { at: at('09:40') }, told: new Set() });
    expect(record.state.sites.get('north')).toMatchObject({ stocktakeAsked: null, stocktake: null });
  });

  test('given that site is not known, then nothing is done', () => {
    const record = given().note(
      '09:00',
      { kind: 'stocktake-asked', site: 'nowhere' },
      { kind: 'stocktaken', site: 'nowhere' },
    );
    expect([...record.state.sites.keys()]).toEqual(['quay', 'north']);
  });
});
