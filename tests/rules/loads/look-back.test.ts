import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lookBack, lookBackTip } from '../../../core/rules/loads/look-back.ts';
import type { Given } from '../given.ts';
import { counted } from './heard.ts';

const keyOf = (given: Given, number: string) => given.state.loadsByNumber.get(number)?.at(-1)?.key ?? '';

function load(
  given: Given,
  number: string,
  tips: string[],
  on: string,
  off: string,
  outcome: 'passed' | 'failed',
): void {
  given.note(on, { kind: 'load-started', load: number, tips, autoclave: 'small' });
  given.note(off, { kind: 'load-finished', load: number, outcome, autoclave: 'small' });
}

/** "scan 10:15 tip 2 under 118", newest first. */
function seen(given: Given, numbers: readonly string[]): readonly string[] {
  return lookBack(
    given.state,
    numbers.map((number) => keyOf(given, number)),
  ).map(({ what, mark, tip, load: key }) => {
    return `${what} ${new Date(mark.at).toISOString().slice(11, 16)} tip ${tip} under ${given.state.loads.get(key ?? '')?.number}`;
  });
}

function used(given: Given, local: string, tip: string, earliest?: string): void {
  given.note(local, {
    kind: 'used',
    tips: [tip],
    scanner: 'A',
    ...(earliest === undefined ? {} : { earliest }),
  });
}

describe('the scans concerned by a bad load', () => {
  it('given scans before it ended, then they stood under an earlier good load', () => {
    const given = counted();
    used(given, '2026-11-23 08:35', '2');
    load(given, '118', ['2'], '2026-11-23 08:40', '2026-11-23 09:40', 'passed');
    used(given, '2026-11-23 10:15', '2');
    expect(seen(given, ['118'])).toEqual(['scan 10:15 tip 2 under 118']);
  });

  it('given the tip’s next load failed too, then the scans after that one are concerned until one passed', () => {
    const given = counted();
    load(given, '118', ['2'], '2026-11-23 08:40', '2026-11-23 09:40', 'passed');
    used(given, '2026-11-23 10:15', '2');
    load(given, '119', ['2'], '2026-11-23 10:30', '2026-11-23 11:00', 'passed');
    used(given, '2026-11-23 11:15', '2');
    load(given, '120', ['2'], '2026-11-23 11:30', '2026-11-23 12:00', 'passed');
    used(given, '2026-11-23 12:15', '2');
    expect(seen(given, ['118'])).toEqual(['scan 10:15 tip 2 under 118']);
    expect(seen(given, ['118', '119'])).toEqual(['scan 11:15 tip 2 under 119', 'scan 10:15 tip 2 under 118']);
    given.note('2026-11-23 12:30', {
      kind: 'load-finished',
      load: '119',
      outcome: 'failed',
      autoclave: 'small',
    });
    expect(seen(given, ['118'])).toEqual(['scan 11:15 tip 2 under 118', 'scan 10:15 tip 2 under 118']);
  });

  it('given a time that is a stretch, then it counts if any of it falls inside', () => {
    const given = counted();
    load(given, '118', ['2'], '2026-11-23 08:40', '2026-11-23 09:40', 'passed');
    used(given, '2026-11-23 09:50', '2', '2026-11-23T08:00:00Z');
    load(given, '119', ['2'], '2026-11-23 10:30', '2026-11-23 11:00', 'passed');
    used(given, '2026-11-23 11:20', '2', '2026-11-23T10:50:00Z');
    expect(seen(given, ['118'])).toEqual(['scan 11:20 tip 2 under 118', 'scan 09:50 tip 2 under 118']);
  });

  it('given the tip’s next load came out wet, then the scans after it are concerned too', () => {
    const given = counted();
    load(given, '118', ['2'], '2026-11-23 08:40', '2026-11-23 09:40', 'passed');
    given.note('2026-11-23 10:30', { kind: 'load-started', load: '119', tips: ['2'], autoclave: 'small' });
    given.note('2026-11-23 11:00', { kind: 'load-finished', load: '119', outcome: 'passed', dry: false });
    used(given, '2026-11-23 11:15', '2');
    expect(seen(given, ['118'])).toEqual(['scan 11:15 tip 2 under 118']);
  });

  it('given it was noted in another load that passed while this one ran, then that one does not end it', () => {
    const given = counted();
    given.note('2026-11-23 08:40', { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
    given.note('2026-11-23 08:50', { kind: 'load-started', load: '7', tips: ['2'], autoclave: 'big' });
    given.note('2026-11-23 09:30', { kind: 'load-finished', load: '7', outcome: 'passed', autoclave: 'big' });
    given.note('2026-11-23 09:40', {
      kind: 'load-finished',
      load: '118',
      outcome: 'failed',
      autoclave: 'small',
    });
    used(given, '2026-11-23 10:15', '2');
    expect(seen(given, ['118'])).toEqual(['scan 10:15 tip 2 under 118']);
  });

  it('given other tips, then only those of the load', () => {
    const given = counted();
    load(given, '118', ['2'], '2026-11-23 08:40', '2026-11-23 09:40', 'passed');
    used(given, '2026-11-23 10:15', '3');
    expect(seen(given, ['118'])).toEqual([]);
  });

  it('given a tip and its last good load, then every scan since', () => {
    const given = counted();
    used(given, '2026-11-23 08:30', '2');
    load(given, '118', ['2'], '2026-11-23 08:40', '2026-11-23 09:40', 'passed');
    used(given, '2026-11-23 10:15', '2');
    given.note('2026-11-23 10:20', { kind: 'fitted', tip: '2', scanner: 'A' });
    expect(lookBackTip(given.state, '2').map(({ what }) => what)).toEqual(['fitting', 'scan']);
    given.note('2026-11-23 11:00', {
      kind: 'load-finished',
      load: '118',
      outcome: 'failed',
      autoclave: 'small',
    });
    expect(lookBackTip(given.state, '2')).toHaveLength(3);
  });

  it('then for any order of scans and loads, exactly those between the end and the next load that passed', () => {
    const step = fc.record({
      minutes: fc.integer({ min: 1, max: 50 }),
      what: fc.constantFrom('use', 'pass', 'fail'),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 14 }), (steps) => {
        const given = counted();
        const start = given.at('2026-11-23 08:00');
        const iso = (minute: number) => new Date(start + minute * 60_000).toISOString();
        const expected: string[] = [];
        let minute = 2;
        given.note(iso(0), { kind: 'load-started', load: '118', tips: ['2'], autoclave: 'small' });
        given.note(iso(1), { kind: 'load-finished', load: '118', outcome: 'failed', autoclave: 'small' });
        let over = false;
        steps.forEach(({ minutes, what }, index) => {
          minute += minutes;
          if (what === 'use') {
            // In another load's way: scanned with on red and blue in turn, so that each is a scan of its own.
            given.note(iso(minute), { kind: 'scan-started', tip: '2', scanner: index % 2 === 0 ? 'A' : 'B' });
            if (!over) expected.unshift(iso(minute));
            return;
          }
          const number = String(200 + index);
          given.note(iso(minute), { kind: 'load-started', load: number, tips: ['2'], autoclave: 'small' });
          minute += 1;
          const outcome = what === 'pass' ? 'passed' : 'failed';
          given.note(iso(minute), { kind: 'load-finished', load: number, outcome, autoclave: 'small' });
          over ||= what === 'pass';
        });
        const scans = lookBack(given.state, [keyOf(given, '118')]);
        expect(scans.map(({ mark }) => new Date(mark.at).toISOString())).toEqual(expected);
      }),
      { numRuns: 60 },
    );
  });
});
