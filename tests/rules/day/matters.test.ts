import { describe, expect, it } from 'vitest';
import { nextDue, openMatters } from '../../../core/rules/matters.ts';
import { Given } from '../given.ts';
import { play } from '../play.ts';
import { ONE_SITE } from './practices.ts';

describe('given a scanner that was not wiped and a site that is open', () => {
  const given = new Given(ONE_SITE);
  given.note('2026-11-23 08:00', [
    { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] },
    { kind: 'calibrated', scanner: 'A', outcome: 'passed' },
  ]);
  given.told('brief|site:quay|2026-11-23', 'first', '2026-11-23 08:15');
  given.note('2026-11-23 10:00', [
    { kind: 'scan-started', scanner: 'A', tip: '1' },
    { kind: 'scan-finished', scanner: 'A' },
  ]);
  const wipe =
    openMatters(given.view('2026-11-23 10:05')).find(({ about }) => about === 'clean')?.key ?? 'none';

  it('when nothing has fallen due, then the next moment is the ten minutes after the scan', () => {
    expect(nextDue(given.view('2026-11-23 10:05'))).toBe(given.at('2026-11-23 10:10'));
  });

  it('when something is due but unsaid, then the next moment still lies ahead', () => {
    expect(nextDue(given.view('2026-11-23 10:30'))).toBe(given.at('2026-11-23 17:15'));
  });

  it('when someone put it off, then the next moment is when that is over', () => {
    const { said } = given;
    said.putOff(wipe, given.at('2026-11-23 11:00'));
    expect(nextDue(given.view('2026-11-23 10:30'))).toBe(given.at('2026-11-23 11:00'));
  });

  it('when it was said, then it is open still, until it is wiped', () => {
    given.told(wipe, 'first', '2026-11-23 11:00');
    const keys = () => openMatters(given.view('2026-11-23 11:05')).map(({ key }) => key);
    expect(keys()).toContain(wipe);
    given.note('2026-11-23 11:01', { kind: 'wiped', scanner: 'A', part: 'all' });
    expect(keys()).not.toContain(wipe);
  });
});

describe('given a scanner that nobody calibrates on its Monday', () => {
  it.each([
    [1, ['10:30']],
    [2, ['10:30', '11:30']],
    [3, ['10:30', '11:30', '12:30']],
  ])(
    'when the practice wants %i posts for one matter, then it is asked for at %j and no more',
    (most, times) => {
      const given = new Given(
        ONE_SITE.replace('{loadTable: uk}', `{loadTable: uk, postsPerMatter: ${most}}`),
      );
      given.note('2026-11-18 10:30', { kind: 'calibrated', scanner: 'A', outcome: 'passed' });
      given.note('2026-11-18 10:31', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] });
      const posts = play(given, '2026-11-23 09:00', '2026-11-23 16:00');
      const asked = posts.filter(({ about }) => about === 'calibration' || about === 'escalation');
      expect(asked.map(({ at }) => at.slice(11))).toEqual(times);
    },
  );
});
