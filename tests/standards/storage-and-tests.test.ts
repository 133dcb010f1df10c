import { describe, expect, it } from 'vitest';
import { guideFor, WHOSE_WORD } from '../../core/answers/guide.ts';
import { ruleTable } from '../../core/defaults/rule-table.ts';
import { sporeTestsDue } from '../../core/rules/loads/test-due.ts';
import { sterileStock } from '../../core/rules/tips/sterile-stock.ts';
import { Given } from '../rules/given.ts';
import { counted, FERNGATE, heard } from '../rules/loads/heard.ts';

/** Tip 1 became sterile on that date; may it be taken at that local time? */
function isGood(sterile: string, at: string, rules = '{loadTable: uk}'): boolean {
  const given = new Given(FERNGATE.replace('{loadTable: uk}', rules));
  given.note(`${sterile} 09:00`, { kind: 'sterile', tips: ['1'] });
  return sterileStock(given.view(at), 'quay').some(({ id }) => id === '1');
}

describe('wrapped: up to 1 year (HTM 01-05:2013 §2.4k(i), 4.25–4.29; known: quoted)', () => {
  it.each([
    ['2026-03-01', '2027-03-01', '2027-03-02', 'from one first of March to the next'],
    ['2028-02-29', '2029-02-28', '2029-03-01', 'a leap day: ours, 28 February of the year after'],
    ['2027-02-28', '2028-02-28', '2028-02-29', 'into a leap year: not its extra day'],
    ['2026-12-31', '2027-12-31', '2028-01-01', 'a year’s end'],
  ])('sterile on %s: good on %s, not on %s (%s)', (sterile, last, after) => {
    expect(isGood(sterile, `${last} 23:59`)).toBe(true);
    expect(isGood(sterile, `${after} 00:00`)).toBe(false);
  });

  it('the 21 and 60 days of HTM 01-05:2009 are superseded and not used (known: quoted)', () => {
    expect(isGood('2026-03-01', '2026-03-22 09:00')).toBe(true);
    expect(isGood('2026-03-01', '2026-05-01 09:00')).toBe(true);
  });

  it('a month, for a code that says so (Wales, non-vacuum, WHTM 01-05 §2.4k; known: quoted, weak), is a setting', () => {
    expect(ruleTable.wrappedGoodMonths).toMatchObject({ min: 1, max: 12 });
    const month = '{loadTable: uk, wrappedGoodMonths: 1}';
    expect([
      isGood('2026-03-01', '2026-04-01 09:00', month),
      isGood('2026-03-01', '2026-04-02 09:00', month),
    ]).toEqual([true, false]);
  });
});

describe('unwrapped (HTM 01-05:2013 §2.4k(ii) and (iii); known: quoted)', () => {
  const day = '{loadTable: uk, wrapped: noted}';
  const week = '{loadTable: uk, wrapped: noted, unwrappedGoodDays: 7}';

  it('in a clinical area 1 day: sterile on Monday at 09:00, not on Tuesday', () => {
    expect(isGood('2026-03-02', '2026-03-02 17:30', day)).toBe(true);
    expect(isGood('2026-03-02', '2026-03-03 00:00', day)).toBe(false);
  });

  it('outside one at most 1 week, as a setting that goes no further: not on the Monday after', () => {
    expect(ruleTable.unwrappedGoodDays.max).toBe(7);
    expect(isGood('2026-03-02', '2026-03-08 23:59', week)).toBe(true);
    expect(isGood('2026-03-02', '2026-03-09 00:00', week)).toBe(false);
  });
});

describe('event-related: wet, torn or opened is not usable whatever the date (CDC 2003, MMWR 52(RR-17), “Storage”; HTM 01-05:2013, summary; known: quoted)', () => {
  it('a pack that split on the day after its load', () => {
    const given = counted();
    given.note('2026-11-23 09:00', { kind: 'fault', item: 'tip:1', sort: 'pack' });
    expect(sterileStock(given.view('2026-11-23 09:01'), 'quay').map(({ id }) => id)).not.toContain('1');
  });
});

describe('labels and indicators (CDC oral-health FAQ, “Packaging & Storage”; CDC 2003, VI.F; known: seen)', () => {
  const load = guideFor('load', new Given(FERNGATE).view('2026-11-23 09:00'), ['quay']);

  it('our steps of a load name steriliser, cycle or load number and date for each bag, and an indicator in each', () => {
    expect(load.steps).toContain('On each bag: autoclave, load number, date.');
    expect(load.steps.join(' ')).toContain('an indicator in each bag');
  });

  it('packs are not used where the chemical or mechanical check fails', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'big' });
    const [post] = heard(given, '2026-11-23 09:40', {
      kind: 'load-finished',
      load: '118',
      outcome: 'passed',
      celsius: 134,
      minutes: 3.5,
      indicator: 'failed',
    });
    expect(post).toContain('counts as failed');
    expect(sterileStock(given.view('2026-11-23 09:41'), 'quay').map(({ id }) => id)).not.toContain('2');
  });
});

describe('spore tests (CDC 2003, VI.F; known: seen on the CDC page, steps quoted)', () => {
  const negative = { kind: 'spore-test', outcome: 'passed', autoclave: 'big' } as const;
  const positive = { kind: 'spore-test', outcome: 'failed', autoclave: 'big' } as const;

  it('at least weekly: run on 1 March, due by 8 March', () => {
    const given = new Given(FERNGATE.replace('thu: 08:30-17:30,', 'thu: 08:30-17:30, sun: 08:30-17:30,'));
    given.note('2026-03-01 10:00', negative);
    const due = sporeTestsDue(given.view('2026-03-05 10:00')).find(({ items }) =>
      items.includes('autoclave:big'),
    );
    expect(due?.stages).toEqual([{ stage: 'first', at: given.at('2026-03-08 08:30') }]);
  });

  /** Loads before and after the negative test of 1 March, each with good checks or none; positive on 8 March. */
  function marched(rules: string, checks: 'good' | 'none'): Given {
    const given = new Given(FERNGATE.replace('{loadTable: uk}', rules));
    const good = checks === 'good' ? ({ celsius: 134, minutes: 3.5, indicator: 'passed' } as const) : {};
    const run = (date: string, load: string, tip: string) => {
      given.note(`${date} 08:40`, { kind: 'load-started', load, tips: [tip], autoclave: 'big' });
      given.note(`${date} 09:40`, { kind: 'load-finished', load, outcome: 'passed', ...good });
    };
    run('2026-02-27', '1', '1');
    given.note('2026-03-01 10:00', { ...negative, ran: '2026-03-01' });
    run('2026-03-03', '2', '2');
    run('2026-03-05', '3', '3');
    return given;
  }
  const recalledBy = (given: Given) =>
    given.state.history.findings
      .recent()
      .flatMap((each) => (each.kind === 'spore-positive' ? [each.recalledTips] : []));

  it('VI.F.8: out of service at the first positive; where the loads’ own checks are good nothing need be recalled', () => {
    const given = marched('{loadTable: uk}', 'good');
    given.note('2026-03-08 10:00', positive);
    expect(recalledBy(given)).toEqual([[]]);
    expect(given.state.autoclaves.get('big')?.holds).toHaveLength(1);
  });

  it('VI.F.8c: a negative repeat puts it back in service', () => {
    const given = marched('{loadTable: uk}', 'good');
    given.note('2026-03-08 10:00', positive);
    given.note('2026-03-09 10:00', negative);
    expect(given.state.autoclaves.get('big')?.holds).toEqual([]);
  });

  it('VI.F.9: a positive repeat recalls the loads back to the last negative test, and those alone', () => {
    const given = marched('{loadTable: uk}', 'good');
    given.note('2026-03-08 10:00', positive);
    given.note('2026-03-09 10:00', positive);
    expect(recalledBy(given)).toEqual([[], ['2', '3']]);
  });

  it('a stricter view recalls at the first positive: a setting', () => {
    const given = marched('{loadTable: uk, sporeRecall: first}', 'good');
    given.note('2026-03-08 10:00', positive);
    expect(recalledBy(given)).toEqual([['2', '3']]);
  });

  it('where the own checks are not noted good, ours recalls at the first positive', () => {
    const given = marched('{loadTable: uk}', 'none');
    given.note('2026-03-08 10:00', positive);
    expect(recalledBy(given)).toEqual([['2', '3']]);
  });

  it('VI.F.9 and CDC 2008 “Sterilizing Practices”: three consecutive empty-chamber cycles, never fewer', () => {
    expect(ruleTable.sporeClearCycles).toMatchObject({ value: 3, min: 3 });
    const given = marched('{loadTable: uk}', 'good');
    given.note('2026-03-08 10:00', positive);
    given.note('2026-03-09 10:00', positive);
    given.note('2026-03-09 12:00', { kind: 'repaired', items: ['autoclave:big'] });
    const inService = ['13:00', '14:00', '15:00'].map((time, at) => {
      given.note(`2026-03-09 ${time}`, {
        kind: 'load-finished',
        load: `${90 + at}`,
        outcome: 'passed',
        autoclave: 'big',
      });
      return given.state.autoclaves.get('big')?.holds.length === 0;
    });
    expect(inService).toEqual([false, false, true]);
  });
});

describe('surfaces between patients (CDC 2003, environmental infection control; HTM 01-05:2013 §6.57–6.63; known: quoted)', () => {
  const clean = guideFor('clean', new Given(FERNGATE).view('2026-11-23 09:00'), ['quay']);

  it('cleaned between each patient; the label’s contact time overrides, and visible blood is the local code’s (CDC 2008 Table 1; known: seen)', () => {
    expect(clean.when).toBe('After every scan, before the next patient.');
    expect(clean.steps.join(' ')).toContain('Keep it wet for the time on its label.');
    expect(clean.otherwise.join(' ')).toContain(
      'Blood or dirt that you can see? Clean it off first, then disinfect, as your local code says.',
    );
    expect(WHOSE_WORD).toContain('your local rules');
  });

  it('no contact time of ours is in the table of defaults', () => {
    expect(Object.keys(ruleTable).filter((key) => /contact|disinfect|wet/i.test(key))).toEqual([]);
  });
});
