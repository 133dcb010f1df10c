import { describe, expect, it } from 'vitest';
import { factWords } from '../../core/answers/fact-words.ts';
import { fact } from '../../core/reading/fact.ts';
import { decision } from '../../core/record/decision.ts';
import type { Said, SaidKind } from '../../core/record/entry.ts';
import { practiceIn } from '../practice/base-file.ts';
import type { Told } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';

const practice = practiceIn(FERNGATE);
const WHEN = '2026-11-24T11:00:00Z';

/** Every kind once or more; the table is checked for completeness below. */
const CASES: readonly (readonly [Told, string])[] = [
  [
    { kind: 'moved', items: ['scanner:A', 'tip:4'], site: 'quay', room: 's1' },
    'blue scanner and tip 4 moved to Surgery 1, Quay Street',
  ],
  [{ kind: 'departed', items: ['scanner:A'] }, 'blue scanner left'],
  [{ kind: 'departed', items: ['scanner:A'], site: 'north' }, 'blue scanner left for North Clinic'],
  [{ kind: 'calibrated', scanner: 'A', outcome: 'passed' }, 'blue scanner calibrated, passed'],
  [{ kind: 'calibrated', scanner: 'A', outcome: 'failed' }, 'blue scanner calibration failed'],
  [{ kind: 'temperature', celsius: 17.5, site: 'quay' }, '17.5 °C at Quay Street'],
  [{ kind: 'scan-started', scanner: 'A', tip: '5' }, 'blue scanner scan started with tip 5'],
  [{ kind: 'scan-finished', scanner: 'A' }, 'blue scanner scan finished'],
  [{ kind: 'used', tips: ['2', '6'], scanner: 'B' }, 'tips 2, 6 used on red scanner'],
  [{ kind: 'inspected', tips: ['4'], outcome: 'failed' }, 'tip 4 inspected: failed'],
  [{ kind: 'wiped', scanner: 'A', part: 'all' }, 'blue scanner wiped down'],
  [{ kind: 'wiped', scanner: 'A', part: 'lens' }, 'blue scanner lens wiped'],
  [{ kind: 'covered', scanner: 'A' }, 'blue scanner cover on'],
  [{ kind: 'fitted', tip: '5', scanner: 'A' }, 'tip 5 fitted to blue scanner'],
  [{ kind: 'removed', tips: ['5'] }, 'tip 5 taken off'],
  [{ kind: 'washed', tips: ['1', '2', '3'] }, 'tips 1–3 washed'],
  [{ kind: 'bagged', tips: ['4'] }, 'tip 4 bagged'],
  [{ kind: 'sent', tips: ['4'] }, 'tip 4 sent to the autoclave'],
  [{ kind: 'load-started', load: '118', tips: ['2', '5'] }, 'load 118 started with tips 2, 5'],
  [{ kind: 'load-started', load: '118' }, 'load 118 started'],
  [
    {
      kind: 'load-finished',
      load: '118',
      outcome: 'passed',
      celsius: 134,
      minutes: 3.5,
      indicator: 'passed',
      dry: true,
    },
    'load 118 passed: 134 °C, 3.5 min, indicator passed, dry',
  ],
  [{ kind: 'load-finished', load: '118', outcome: 'failed' }, 'load 118 failed'],
  [{ kind: 'spore-test', outcome: 'passed', ran: '2026-11-23' }, 'spore test clear, run 2026-11-23'],
  [{ kind: 'spore-test', outcome: 'failed' }, 'spore test positive'],
  [{ kind: 'spore-test', outcome: 'running' }, 'spore test running'],
  [{ kind: 'autoclave-test', sort: 'penetration', outcome: 'passed' }, 'steam penetration test passed'],
  [{ kind: 'sterile', tips: ['4'] }, 'tip 4 said to be sterile'],
  [{ kind: 'held', items: ['tip:4'], reason: 'cracked mirror' }, 'tip 4 held (cracked mirror)'],
  [{ kind: 'released', items: ['scanner:A'] }, 'blue scanner released'],
  [{ kind: 'retired', tips: ['6'], reason: 'cracked' }, 'tip 6 retired (cracked)'],
  [{ kind: 'added', tips: ['13', '14'] }, 'tips 13, 14 new here'],
  [{ kind: 'missing', items: ['tip:9'] }, 'tip 9 missing'],
  [{ kind: 'found', items: ['tip:9'], site: 'quay', room: 's1' }, 'tip 9 found at Surgery 1, Quay Street'],
  [{ kind: 'fault', item: 'tip:4', sort: 'fogging' }, 'tip 4: fogs'],
  [{ kind: 'repaired', items: ['scanner:A'] }, 'blue scanner repaired'],
  [
    { kind: 'booked', count: 1, day: '2026-11-26', times: ['09:00'], site: 'north' },
    '1 scan booked at North Clinic on 2026-11-26 at 09:00',
  ],
  [{ kind: 'cancelled', day: '2026-11-26' }, 'booked scans cancelled on 2026-11-26'],
  [{ kind: 'closed', days: ['2026-11-27', '2026-11-28'] }, 'closed on 2026-11-27 and 2026-11-28'],
  [
    { kind: 'hours', day: '2026-11-24', open: '09:00', shut: '15:00' },
    'open from 09:00, shut at 15:00 on 2026-11-24',
  ],
  [{ kind: 'shown', person: 'Tom', topic: 'calibrate' }, 'Tom shown how to calibrate'],
  [{ kind: 'shown', person: 'Tom', topic: 'the new software' }, 'Tom shown the new software'],
  [{ kind: 'load-released', load: '118', tips: ['1'] }, 'release of load 118: tip 1'],
  [
    { kind: 'load-finished', load: '118', outcome: 'passed', indicator: 'failed' },
    'load 118 passed: indicator failed; counts as failed',
  ],
  [{ kind: 'doubted', item: 'load:118' }, 'load 118 in doubt'],
  [{ kind: 'doubt-settled', item: 'load:118' }, 'load 118: doubt settled'],
  [
    { kind: 'incident-opened', incident: 'x', of: '1.0', items: ['tip:4'], sort: 'unsafe-tip' },
    'incident opened: tip 4',
  ],
  [
    { kind: 'incident-answered', incident: 'x', of: '1.0', tip: '4', reached: true },
    'incident: tip 4 reached a patient',
  ],
  [{ kind: 'incident-closed', incident: 'x', reason: 'reported' }, 'incident closed (reported)'],
  [{ kind: 'pass-confirmed', scanner: 'A', of: '1.0' }, 'blue scanner pass counts: it had settled'],
  [{ kind: 'pass-doubted', scanner: 'A', of: '1.0' }, 'blue scanner pass does not count: it had not settled'],
  [
    { kind: 'setting', name: 'turnaroundMinutes', value: 60, site: 'quay' },
    'setting turnaroundMinutes at Quay Street: 60',
  ],
  [
    { kind: 'setting', name: 'turnaroundMinutes', value: null },
    'setting turnaroundMinutes: as the practice file has it',
  ],
  [
    { kind: 'rule-changed', name: 'wipeAfterMinutes', from: 10, to: 15, scanner: 'A' },
    'rule wipeAfterMinutes for blue scanner changed from 10 minutes to 15 minutes',
  ],
  [
    { kind: 'rule-changed', name: 'loadTable', from: 'none', to: 'uk', site: 'quay' },
    'rule loadTable at Quay Street changed from none to uk',
  ],
  [{ kind: 'word', words: 'the gun', means: 'scanner:A' }, 'word “the gun” kept for scanner:A'],
  [{ kind: 'word', words: 'the gun', means: null }, 'word “the gun” forgotten'],
  [{ kind: 'stocktake-asked', site: 'quay' }, 'count of the tips asked for at Quay Street'],
  [{ kind: 'stocktaken', site: 'quay' }, 'tips counted at Quay Street'],
  [{ kind: 'practice', file: '{}' }, 'practice file changed'],
];

describe('what happened, in a few words', () => {
  it.each(CASES)('%j', (told, words) => {
    expect(factWords(practice, { when: WHEN, ...told } as Said)).toBe(words);
  });

  it('every kind is among these', () => {
    const told = new Set<SaidKind>(CASES.map(([one]) => one.kind));
    const kinds = [...fact.options, ...decision.options].map(({ shape }) => shape.kind.value);
    expect(kinds.filter((kind) => !told.has(kind))).toEqual([]);
  });
});
