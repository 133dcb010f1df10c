import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';

const tom = { from: '@tom:example.org' };

/** Monday and Tuesday at Ferngate: a load that proves bad after one of its tips was used, a scanner and a tip that leave. */
export function aDay(): Given {
  const given = new Given(FERNGATE);
  given.note('2026-11-23 08:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6', '7', '8', '9'] });
  given.note('2026-11-23 09:00', { kind: 'temperature', celsius: 21.5, site: 'quay', room: 's1' });
  given.note('2026-11-23 09:10', { kind: 'calibrated', scanner: 'A', outcome: 'passed' }, tom);
  given.note('2026-11-23 09:20', { kind: 'scan-started', scanner: 'A', tip: '4', site: 'quay', room: 's1' });
  given.note('2026-11-23 09:40', { kind: 'scan-finished', scanner: 'A', tip: '4', site: 'quay', room: 's1' });
  given.note(
    '2026-11-23 09:42',
    [
      { kind: 'removed', tips: ['4'] },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ],
    tom,
  );
  given.note('2026-11-23 10:00', { kind: 'load-started', load: '118', tips: ['4', '5'] });
  given.note('2026-11-23 10:40', {
    kind: 'load-finished',
    load: '118',
    outcome: 'passed',
    celsius: 134,
    minutes: 3.5,
  });
  given.note('2026-11-23 11:00', { kind: 'fitted', tip: '4', scanner: 'A' });
  given.note('2026-11-23 11:05', { kind: 'scan-started', scanner: 'A', tip: '4', site: 'quay', room: 's2' });
  given.note('2026-11-23 11:25', { kind: 'scan-finished', scanner: 'A', tip: '4', site: 'quay', room: 's2' });
  given.note('2026-11-23 15:00', {
    kind: 'load-finished',
    load: '118',
    outcome: 'failed',
    indicator: 'failed',
  });
  given.note('2026-11-24 09:00', { kind: 'used', tips: ['2', '6'], scanner: 'B' }, tom);
  given.note('2026-11-24 09:30', { kind: 'load-started', load: '119', tips: ['7', '8', '9'] });
  given.note('2026-11-24 09:31', { kind: 'held', items: ['tip:3'], reason: 'cracked mirror' });
  given.note('2026-11-24 09:35', { kind: 'missing', items: ['tip:1'] });
  given.note('2026-11-24 10:00', { kind: 'departed', items: ['scanner:B', 'tip:5'], site: 'north' });
  given.note('2026-11-24 10:10', {
    kind: 'booked',
    count: 3,
    day: '2026-11-24',
    times: ['14:00', '15:00', '16:00'],
    site: 'quay',
  });
  given.note('2026-11-24 10:12', { kind: 'shown', person: 'Tom', topic: 'calibrate' });
  return given;
}

export const AT = '2026-11-24 11:00';
