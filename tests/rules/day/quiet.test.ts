import { describe, expect, it } from 'vitest';
import type { Matter } from '../../../core/rules/matter.ts';
import { outOfQuiet } from '../../../core/rules/out-of-quiet.ts';
import { isQuiet, whenOpen } from '../../../core/rules/quiet.ts';
import { chatRoomFor } from '../../../core/rules/room-of.ts';
import { lines } from '../../../core/words/message.ts';
import { Given } from '../given.ts';
import { ONE_SITE, TWO_ZONES } from './practices.ts';

describe('given opening hours', () => {
  const given = new Given(ONE_SITE);
  const open = (local: string) => whenOpen(given.practice, given.state, 'quay', given.at(local));

  it('when something falls due in them, then its time stands, in the closing minute too', () => {
    for (const local of ['2026-11-23 08:30', '2026-11-23 12:00', '2026-11-23 17:30'])
      expect(open(local)).toBe(given.at(local));
  });

  it('when it falls due outside them, then it moves to the next opening, after a break too', () => {
    for (const [local, next] of [
      ['2026-11-23 08:29', '2026-11-23 08:30'],
      ['2026-11-23 17:31', '2026-11-24 08:30'],
      ['2026-11-25 12:31', '2026-11-25 13:30'],
      ['2026-11-27 16:01', '2026-11-30 08:30'],
      ['2026-12-24 17:31', '2027-01-04 08:30'],
    ] as const)
      expect(open(local)).toBe(given.at(next));
  });

  it('when the clocks change over the weekend, then it is the opening by the new time', () => {
    expect(open('2027-03-26 16:01')).toBe(Date.parse('2027-03-29T07:30:00Z'));
    expect(open('2027-10-29 16:01')).toBe(Date.parse('2027-11-01T08:30:00Z'));
  });

  it('when notes close a day or change its hours, then those hold', () => {
    const noted = new Given(ONE_SITE);
    noted.note('2026-11-23 09:00', [
      { kind: 'closed', days: ['2026-11-24'] },
      { kind: 'hours', day: '2026-11-25', open: '10:00' },
    ]);
    expect(isQuiet(noted.practice, noted.state, 'quay', noted.at('2026-11-24 10:00'))).toBe(true);
    expect(whenOpen(noted.practice, noted.state, 'quay', noted.at('2026-11-24 10:00'))).toBe(
      noted.at('2026-11-25 10:00'),
    );
  });

  it('when sites lie in several zones, then each is quiet by its own clock', () => {
    const { practice, state } = new Given(TWO_ZONES);
    const at = Date.parse('2026-11-23T04:00:00Z');
    expect([isQuiet(practice, state, 'quay', at), isQuiet(practice, state, 'hill', at)]).toEqual([
      true,
      false,
    ]);
  });
});

describe('given a reminder that fell due while the program was down', () => {
  const given = new Given(ONE_SITE);
  const matter = (about: Matter['about'] = 'clean'): Matter => ({
    key: 'wipe|scanner:A|1.0',
    rule: 'wipe',
    about,
    site: 'quay',
    room: '!quay:example.org',
    items: ['scanner:A'],
    stages: [{ stage: 'first', at: given.at('2026-11-23 16:00') }],
    since: given.at('2026-11-23 15:50'),
    group: 'clean@quay',
    line: lines('Wipe down blue scanner.'),
    leads: [],
  });
  const at = (local: string, about?: Matter['about']) =>
    outOfQuiet(given.view(local), matter(about)).stages[0]?.at;

  it('when it is back while the site is open, then it is due at once', () => {
    expect(at('2026-11-23 17:00')).toBe(given.at('2026-11-23 16:00'));
  });

  it('when it is back while the site is shut, then it waits for the opening; what may reach a patient does not', () => {
    expect(at('2026-11-23 19:00')).toBe(given.at('2026-11-24 08:30'));
    expect(at('2026-11-23 19:00', 'incident')).toBe(given.at('2026-11-23 16:00'));
  });

  it('when it was said before, then it stays where it was', () => {
    const told = new Given(ONE_SITE).told('wipe|scanner:A|1.0', 'first', '2026-11-23 16:00');
    expect(outOfQuiet(told.view('2026-11-23 19:00'), matter()).stages[0]?.at).toBe(
      given.at('2026-11-23 16:00'),
    );
  });
});

describe('given chat rooms', () => {
  it('when the practice file lists them, then the site has its own, before one for all', () => {
    const { practice, state } = new Given(
      ONE_SITE.replace('chat:\n', 'chat:\n  - {room: "!all:example.org", sites: [quay]}\n'),
    );
    expect(chatRoomFor({ practice, state }, 'quay')).toBe('!all:example.org');
    const two = new Given(
      TWO_ZONES.replace('chat:\n', 'chat:\n  - {room: "!all:example.org", sites: [quay, hill]}\n'),
    );
    expect(chatRoomFor(two, 'hill')).toBe('!hill:example.org');
  });

  it('when it lists none, then it is the room where the site was spoken of last; none before the first note', () => {
    const given = new Given(TWO_ZONES.replace(/chat:\n( {2}.*\n)+/, ''));
    expect(chatRoomFor(given, 'quay')).toBeNull();
    given.note(
      '2026-11-23 09:00',
      { kind: 'wiped', scanner: 'A', part: 'all' },
      { room: '!one:example.org' },
    );
    given.note('2026-11-23 10:00', { kind: 'used', tips: ['H1'] }, { room: '!two:example.org' });
    expect(chatRoomFor(given, 'quay')).toBe('!one:example.org');
    expect(chatRoomFor(given, 'hill')).toBe('!two:example.org');
    expect(chatRoomFor(given, 'quay', () => given.state.tips.get('H1')?.spoken ?? null)).toBe(
      '!two:example.org',
    );
  });
});
