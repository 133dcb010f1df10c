import { describe, expect, it } from 'vitest';
import { coverRule } from '../../../core/rules/scanner/cover.ts';
import { wipeRule } from '../../../core/rules/scanner/wipe.ts';
import type { Given, Told } from '../given.ts';
import { calibrated, passed, words } from './ferngate.ts';
import { play } from './play.ts';

const WED = '2026-11-25';
const wiped = { kind: 'wiped', scanner: 'A', part: 'all' } as const;
const finished = { kind: 'scan-finished', scanner: 'A' } as const;

function thisWeek(): Given {
  const given = calibrated();
  given.note('2026-11-23 08:45', passed('A', 'B'));
  return given;
}

const wipes = (given: Given, from: string, to: string) =>
  play(given, `${WED} ${from}`, `${WED} ${to}`, [wipeRule]);
const covers = (given: Given, from: string, to: string) =>
  play(given, `${WED} ${from}`, `${WED} ${to}`, [coverRule]);

describe('not wiped', () => {
  it('10 min after a finished scan: one reminder', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, finished);
    expect(wipes(given, '10:00', '17:00')).toEqual(['wed 10:10 !quay clean first scanner:A']);
  });

  it('none once it is wiped; wiping the lens or the base alone is not a wipe-down', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, finished);
    given.note(`${WED} 10:05`, { ...wiped, part: 'lens' });
    given.note(`${WED} 10:06`, { ...wiped, part: 'base' });
    expect(wipes(given, '10:06', '10:15')).toEqual(['wed 10:10 !quay clean first scanner:A']);
    given.note(`${WED} 11:00`, finished);
    given.note(`${WED} 11:09`, wiped);
    expect(wipes(given, '11:09', '17:00')).toEqual([]);
  });

  it('more scans on the same dirt: one more reminder, and only a wipe-down settles them', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, finished);
    wipes(given, '10:00', '10:30');
    given.note(`${WED} 11:00`, { kind: 'scan-started', scanner: 'A' });
    given.note(`${WED} 11:20`, finished);
    const keys = wipeRule(given.view(`${WED} 11:20`)).map(({ key }) => key);
    expect(keys.map((key) => given.said.saidAt(key, 'first'))).toEqual([given.at(`${WED} 10:10`)]);
    expect(wipes(given, '11:20', '12:00')).toEqual(['wed 11:30 !quay clean again scanner:A']);
    given.note(`${WED} 12:00`, finished);
    expect(wipes(given, '12:00', '17:00')).toEqual([]);
    given.note(`${WED} 17:00`, wiped);
    expect(wipeRule(given.view(`${WED} 17:00`))).toEqual([]);
  });

  it('a note typed more than an hour after its time starts no reminder; one an hour after does', () => {
    const late = thisWeek();
    late.note(`${WED} 10:00`, finished, { noted: `${WED} 11:01` });
    expect(wipes(late, '11:01', '17:00')).toEqual([]);
    const intime = thisWeek();
    intime.note(`${WED} 10:00`, finished, { noted: `${WED} 11:00` });
    expect(wipes(intime, '11:00', '17:00')).toEqual(['wed 11:00 !quay clean first scanner:A']);
  });

  it('none while the next scan is under way: that had its warning', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, finished);
    given.note(`${WED} 10:08`, { kind: 'scan-started', scanner: 'A' });
    expect(wipes(given, '10:08', '17:00')).toEqual([]);
  });

  it('finished just before the lunch break: asked when the site is open again', () => {
    const given = thisWeek();
    given.note(`${WED} 12:25`, finished);
    expect(wipes(given, '12:25', '17:00')).toEqual(['wed 13:30 !quay clean first scanner:A']);
  });

  it('says when, where and by whom, and a tick records a whole wipe-down', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, { ...finished, room: 's2' }, { from: '@tom:example.org' });
    const [matter] = wipeRule(given.view(`${WED} 10:10`));
    expect(words(matter?.line ?? [])).toEqual([
      'Wipe down blue scanner: scan ended 10:00, Surgery 2, Quay Street, noted by Tom.',
      '• Scanner and base; lens looked at for smears, hairs and dust.',
    ]);
    expect(matter?.tick?.(given.at(`${WED} 10:12`), '@tom:example.org')).toEqual([
      { kind: 'wiped', when: '2026-11-25T10:12:00Z', by: '@tom:example.org', scanner: 'A', part: 'all' },
    ]);
  });
});

describe('not covered', () => {
  const tipOff: Told = { kind: 'removed', tips: ['1'] };
  const scanned = (given: Given) => {
    given.note(`${WED} 09:50`, { kind: 'fitted', tip: '1', scanner: 'A' });
    given.note(`${WED} 10:00`, [finished, wiped]);
  };

  it('no tip on, used today, 15 min since the last thing noted of it: one reminder', () => {
    const given = thisWeek();
    scanned(given);
    given.note(`${WED} 10:05`, [tipOff, wiped]);
    expect(covers(given, '10:05', '17:00')).toEqual(['wed 10:20 !quay cover first scanner:A']);
  });

  it('each thing noted of it starts the quarter of an hour anew', () => {
    const given = thisWeek();
    scanned(given);
    given.note(`${WED} 10:05`, [tipOff, wiped]);
    given.note(`${WED} 10:15`, { kind: 'wiped', scanner: 'A', part: 'lens' });
    expect(covers(given, '10:15', '17:00')).toEqual(['wed 10:30 !quay cover first scanner:A']);
  });

  it('not while a tip is on, and not once it is covered', () => {
    const given = thisWeek();
    scanned(given);
    expect(covers(given, '10:00', '10:40')).toEqual([]);
    given.note(`${WED} 10:41`, tipOff);
    given.note(`${WED} 10:42`, { kind: 'covered', scanner: 'A' });
    expect(covers(given, '10:42', '17:00')).toEqual([]);
  });

  it('not on the day after, and not once it has left', () => {
    const stood = thisWeek();
    scanned(stood);
    stood.note(`${WED} 17:25`, tipOff);
    expect(covers(stood, '17:25', '23:59')).toEqual([]);
    expect(play(stood, '2026-11-26 00:00', '2026-11-26 17:00', [coverRule])).toEqual([]);
    const gone = thisWeek();
    scanned(gone);
    gone.note(`${WED} 10:05`, [tipOff, { kind: 'departed', items: ['scanner:A'] }]);
    expect(covers(gone, '10:05', '17:00')).toEqual([]);
  });

  it('not of a scanner that was not used that day', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's2' });
    expect(covers(given, '10:00', '17:00')).toEqual([]);
  });

  it('one reminder after each scan', () => {
    const given = thisWeek();
    scanned(given);
    given.note(`${WED} 10:05`, [tipOff, wiped]);
    covers(given, '10:05', '11:00');
    given.note(`${WED} 11:00`, [{ kind: 'fitted', tip: '2', scanner: 'A' }, finished, wiped]);
    given.note(`${WED} 11:10`, { kind: 'removed', tips: ['2'] });
    expect(covers(given, '11:10', '17:00')).toEqual(['wed 11:25 !quay cover first scanner:A']);
  });

  it('a tick records the cover', () => {
    const given = thisWeek();
    scanned(given);
    given.note(`${WED} 10:05`, tipOff);
    const [matter] = coverRule(given.view(`${WED} 10:30`));
    expect(words(matter?.line ?? [])).toEqual([
      'Cover blue scanner: no tip on and no cover noted since 09:50. The cover protects the lens.',
    ]);
    expect(matter?.tick?.(given.at(`${WED} 10:31`), '@tom:example.org')).toEqual([
      { kind: 'covered', when: '2026-11-25T10:31:00Z', by: '@tom:example.org', scanner: 'A' },
    ]);
  });
});
