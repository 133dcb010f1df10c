import { describe, expect, it } from 'vitest';
import { isQuiet, whenOpen } from '../../core/rules/quiet.ts';
import { chatRoomFor } from '../../core/rules/room-of.ts';
import { toIso } from '../../core/time/instant.ts';
import { Given } from './given.ts';
import { FERNGATE } from './scanner/ferngate.ts';

function opens(given: Given, site: string, at: string): string {
  const { practice, state } = given;
  return toIso(whenOpen(practice, state, site, given.at(at)));
}

describe('quiet hours', () => {
  it.each([
    ['quay', '2026-11-25 08:30', '2026-11-25T08:30:00Z'],
    ['quay', '2026-11-25 08:29', '2026-11-25T08:30:00Z'],
    // The closing minute is still open.
    ['quay', '2026-11-24 17:30', '2026-11-24T17:30:00Z'],
    ['quay', '2026-11-24 17:31', '2026-11-25T08:30:00Z'],
    // The break of a Wednesday.
    ['quay', '2026-11-25 13:00', '2026-11-25T13:30:00Z'],
    // Friday's closing to Monday's opening.
    ['quay', '2026-11-27 16:01', '2026-11-30T08:30:00Z'],
    // Christmas, the weekend and a closed Monday behind it.
    ['quay', '2026-12-24 18:00', '2026-12-29T08:30:00Z'],
    // Summer time began at 01:00 on Sunday 29 March 2026: Monday's opening is an hour earlier in UTC.
    ['quay', '2026-03-28 12:00', '2026-03-30T07:30:00Z'],
    // 09:00 in Kolkata, half an hour off.
    ['hill', '2026-11-23 12:00', '2026-11-24T03:30:00Z'],
  ])('%s %s', (site, at, expected) => {
    expect(opens(new Given(FERNGATE), site, at)).toBe(expected);
  });

  it('go by what notes changed of the hours', () => {
    const given = new Given(FERNGATE);
    given.note('2026-11-24 09:00', [
      { kind: 'hours', site: 'quay', day: '2026-11-24', shut: '15:00' },
      { kind: 'closed', site: 'quay', days: ['2026-11-25'] },
    ]);
    expect(opens(given, 'quay', '2026-11-24 15:01')).toBe('2026-11-26T08:30:00Z');
    expect(isQuiet(given.practice, given.state, 'quay', given.at('2026-11-24 15:00'))).toBe(false);
    expect(isQuiet(given.practice, given.state, 'quay', given.at('2026-11-25 10:00'))).toBe(true);
  });

  it('a site that is not listed is never quiet', () => {
    const given = new Given(FERNGATE);
    expect(isQuiet(given.practice, given.state, 'nowhere', given.at('2026-11-25 03:00'))).toBe(false);
    expect(opens(given, 'nowhere', '2026-11-25 03:00')).toBe('2026-11-25T03:00:00Z');
  });
});

describe('chat room of a site', () => {
  const without = FERNGATE.replace(/chat:[\s\S]*$/, '');

  it('the one that serves the fewest sites', () => {
    expect(chatRoomFor(new Given(FERNGATE), 'north')).toBe('!north:example.org');
  });

  it('where none is listed, the one in which it was spoken of last; none before anything was', () => {
    const given = new Given(without);
    expect(chatRoomFor(given, 'quay', () => given.state.scanners.get('A')?.lastNoted ?? null)).toBeNull();
    given.note(
      '2026-11-25 09:00',
      { kind: 'wiped', scanner: 'A', part: 'all' },
      { room: '!one:example.org' },
    );
    given.note(
      '2026-11-25 09:05',
      { kind: 'wiped', scanner: 'B', part: 'all' },
      { room: '!two:example.org' },
    );
    expect(chatRoomFor(given, 'quay', () => given.state.scanners.get('A')?.lastNoted ?? null)).toBe(
      '!one:example.org',
    );
  });
});
