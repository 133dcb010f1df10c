import { describe, expect, it } from 'vitest';
import { Given } from '../given.ts';
import { counted, FERNGATE, heard, speechesOf, TOM } from '../loads/heard.ts';

const fit4 = { kind: 'fitted', tip: '4', scanner: 'A' } as const;

describe('a tip that must not be used', () => {
  it('given a tip used this morning, when it is fitted, then what happened to it and what is sterile here', () => {
    const given = counted();
    given.note('2026-11-23 09:10', fit4, TOM);
    given.note('2026-11-23 09:15', { kind: 'scan-finished', scanner: 'A', tip: '4' }, TOM);
    given.note('2026-11-23 09:20', { kind: 'wiped', scanner: 'A', part: 'all' });
    given.note('2026-11-23 09:21', { kind: 'removed', tips: ['4'] });
    expect(heard(given, '2026-11-23 10:40', fit4)).toEqual([
      [
        'warning',
        'Stop: tip 4 must not be used. Fitted on blue scanner, 10:40.',
        'Why: used on blue scanner, 09:15 (Tom); no passed load since.',
        'Sterile at Quay Street, oldest first: tips 1, 2, 3, 5, 6, 7 and 8.',
      ].join('\n'),
      ['question', 'Did tip 4 reach a patient? Answer yes or no. No patient names here, please.'].join('\n'),
    ]);
  });

  it('given it was warned of, when it is scanned with, then nothing more', () => {
    const given = counted();
    given.note('2026-11-23 09:15', { kind: 'used', tips: ['4'] }, TOM);
    expect(heard(given, '2026-11-23 10:40', fit4)).toHaveLength(2);
    expect(heard(given, '2026-11-23 10:42', { kind: 'scan-started', scanner: 'A', tip: '4' })).toEqual([]);
  });

  it('then the question is anybody’s in the room, stays, and opens an incident', () => {
    const given = counted();
    given.note('2026-11-23 09:15', { kind: 'used', tips: ['4'] }, TOM);
    const [, question] = speechesOf(given, '2026-11-23 10:40', fit4);
    expect(question?.asks).toEqual({
      choices: [
        { label: 'yes', value: 'yes' },
        { label: 'no', value: 'no' },
      ],
      person: null,
      lasts: null,
      purpose: { sort: 'reached-patient', tip: '4', entry: '4.0', incident: '4.0:unsafe-tip:tip:4' },
    });
    expect(question?.decides).toEqual([
      {
        kind: 'incident-opened',
        when: '2026-11-23T10:40:00Z',
        incident: '4.0:unsafe-tip:tip:4',
        of: '4.0',
        items: ['tip:4', 'scanner:A'],
        sort: 'unsafe-tip',
      },
    ]);
  });

  it('given none is sterile here, then which site has some', () => {
    const given = counted();
    given.note('2026-11-20 10:00', { kind: 'used', tips: ['1', '2', '3', '4', '5', '6', '7', '8'] });
    expect(heard(given, '2026-11-23 10:40', fit4)[0]?.split('\n').at(-1)).toBe(
      'No sterile tip is on record at Quay Street. North Clinic has tips 9 and 10.',
    );
  });

  it('given it is sterile, then nothing', () => {
    expect(heard(counted(), '2026-11-23 10:40', fit4)).toEqual([]);
  });

  it.each<[string, (given: Given) => unknown, string]>([
    [
      'held with a reason',
      (given) => given.note('2026-11-23 08:40', { kind: 'held', items: ['tip:4'], reason: 'scratched' }, TOM),
      'held (scratched), 08:40 (Tom).',
    ],
    [
      'missing',
      (given) => given.note('2026-11-23 08:40', { kind: 'missing', items: ['tip:4'] }, TOM),
      'reported missing, 08:40 (Tom).',
    ],
    [
      'retired',
      (given) => given.note('2026-11-20 10:00', { kind: 'retired', tips: ['4'], reason: 'cracked' }, TOM),
      'retired (cracked), Fri 10:00 (Tom).',
    ],
    [
      'dropped',
      (given) => given.note('2026-11-23 08:40', { kind: 'fault', item: 'tip:4', sort: 'dropped' }, TOM),
      'dropped, 08:40 (Tom); no passed load since.',
    ],
    [
      'in a load with no result',
      (given) => {
        given.note('2026-11-23 08:00', { kind: 'used', tips: ['4'] });
        given.note(
          '2026-11-23 08:40',
          { kind: 'load-started', load: '118', tips: ['4'], autoclave: 'big' },
          TOM,
        );
      },
      'load 118 (the big autoclave) has no result yet, 08:40 (Tom)',
    ],
    [
      'stored for a year and a day',
      (given) => given.note('2025-11-20 09:00', { kind: 'sterile', tips: ['4'] }),
      'stored for longer than the limit, sterile since 20 Nov 2025.',
    ],
  ])('given it is %s, then the warning says so', (_what, before, why) => {
    // Counted the year before, so that nothing said later makes it young again.
    const given = new Given(FERNGATE);
    given.note('2025-11-20 08:00', { kind: 'sterile', tips: ['1', '2', '3', '5', '6', '7', '8'] });
    if (!why.startsWith('stored')) given.note('2026-11-20 09:00', { kind: 'sterile', tips: ['4'] });
    before(given);
    const said = heard(given, '2026-11-23 10:40', fit4)[0] ?? '';
    expect(said).toContain(why);
  });

  it('given day one, then the warning comes once, with how to count', () => {
    const given = new Given(FERNGATE);
    expect(heard(given, '2026-11-23 10:40', fit4)[0]).toBe(
      [
        'warning',
        'Stop: tip 4 must not be used. Fitted on blue scanner, 10:40.',
        'Why: nothing on record says that it is sterile.',
        'The tips here have not been counted yet. Say which are sterile, such as “tips 1 to 8 are sterile and on the shelf”.',
        'No sterile tip is on record at Quay Street.',
      ].join('\n'),
    );
    expect(heard(given, '2026-11-23 10:45', { kind: 'scan-started', scanner: 'A', tip: '4' })).toEqual([]);
  });
});
