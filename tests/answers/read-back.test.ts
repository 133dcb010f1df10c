import { describe, expect, it } from 'vitest';
import { toText } from '../../bot/show/text.ts';
import { readBack } from '../../core/answers/read-back.ts';
import { Given, type Told } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { ALL_ROOM, HILL_ROOM } from './three-sites.ts';

const NOW = '2026-11-24 11:00';

/** What is read back of one note typed at 11:00; `null`: a thumb is enough. */
function backOf(
  told: Told | readonly Told[],
  parts: { at?: string; filledIn?: readonly string[]; room?: string; file?: string } = {},
): string | null {
  const given = new Given(parts.file ?? FERNGATE);
  const turn = given.note(parts.at ?? NOW, told, {
    noted: NOW,
    ...(parts.room === undefined ? {} : { room: parts.room }),
  });
  const message = readBack(given.timeline.ofTurn(turn), given.view(NOW), parts.filledIn ?? []);
  return message === null ? null : toText(message);
}

describe('a thumb is enough', () => {
  const quiet: readonly (readonly [string, Told])[] = [
    ['calibrated', { kind: 'calibrated', scanner: 'A', outcome: 'passed' }],
    ['wiped', { kind: 'wiped', scanner: 'A', part: 'all' }],
    ['moved', { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's1' }],
    ['covered', { kind: 'covered', scanner: 'A' }],
    ['used', { kind: 'used', tips: ['4'] }],
    ['sent', { kind: 'sent', tips: ['4'] }],
    ['a load’s result, which has its own reply', { kind: 'load-finished', load: '118', outcome: 'passed' }],
    ['a spore test of today', { kind: 'spore-test', outcome: 'running', ran: '2026-11-24' }],
  ];
  it.each(quiet)('%s, now', (_, told) => {
    expect(backOf(told)).toBeNull();
  });

  it('within the same minute of the clock', () => {
    const given = new Given(FERNGATE);
    const turn = given.note(
      NOW,
      { kind: 'wiped', scanner: 'A', part: 'all', when: '2026-11-24T11:00:00Z' },
      { noted: '2026-11-24T11:00:59Z' },
    );
    const entries = given.timeline.ofTurn(turn);
    expect(entries[0]?.noted).not.toBe(entries[0]?.when);
    expect(readBack(entries, given.view(NOW), [])).toBeNull();
  });
});

describe('read back', () => {
  const loud: readonly (readonly [Told | readonly Told[], string])[] = [
    [{ kind: 'fitted', tip: '4', scanner: 'A' }, 'Tip 4 on blue scanner.'],
    [
      { kind: 'released', items: ['tip:4', 'scanner:A'] },
      'Released: tip 4 (not known, not sterile) and blue scanner.',
    ],
    [{ kind: 'load-released', load: '118', tips: ['1', '2', '3'] }, 'Released: load 118, tips 1–3.'],
    [{ kind: 'retired', tips: ['6'], reason: 'cracked' }, 'Retired: tip 6.'],
    [{ kind: 'added', tips: ['13', '14'] }, 'New: tips 13, 14, not sterile until a load has passed.'],
    [{ kind: 'temperature', celsius: 17.8, site: 'quay', room: 's2' }, '17.8 °C at Surgery 2, Quay Street.'],
    [
      { kind: 'booked', count: 3, day: '2026-11-26', times: ['09:00', '10:30', '14:00'], site: 'quay' },
      'Booked: 3 scans Thu 26 Nov, 09:00, 10:30 and 14:00 at Quay Street.',
    ],
    [
      { kind: 'cancelled', day: '2026-11-24', times: ['10:30'] },
      'Cancelled: 1 scan today, 10:30 at Quay Street.',
    ],
    [{ kind: 'closed', days: ['2026-11-27'], site: 'north' }, 'Closed Fri 27 Nov at North Clinic.'],
    [
      { kind: 'closed', days: ['2026-12-28', '2026-12-29', '2026-12-30', '2026-12-31', '2027-01-01'] },
      'Closed Mon 28 Dec to Fri 1 Jan 2027 at Quay Street.',
    ],
    [{ kind: 'hours', day: '2026-11-24', shut: '15:00' }, 'Today shut at 15:00 at Quay Street.'],
    [{ kind: 'spore-test', outcome: 'failed', ran: '2026-11-23' }, 'Spore test run yesterday.'],
    [
      [
        { kind: 'used', tips: ['4'] },
        { kind: 'fitted', tip: '2', scanner: 'A' },
      ],
      'Tip 2 on blue scanner.',
    ],
  ];
  it.each(loud)('%j', (told, text) => {
    expect(backOf(told)).toBe(text);
  });

  it('a time that is not the note’s own, once for all its facts', () => {
    const told: Told[] = [
      { kind: 'used', tips: ['4'] },
      { kind: 'sent', tips: ['4'] },
    ];
    expect(backOf(told, { at: '2026-11-23 16:40' })).toBe('Time taken: yesterday 16:40.');
  });

  it('a stretch', () => {
    expect(backOf({ kind: 'used', tips: ['4'], earliest: '2026-11-24T08:30:00Z' })).toBe(
      'Time taken: 08:30 to 11:00.',
    );
  });

  it('by the site’s own clock', () => {
    const told: Told = { kind: 'wiped', scanner: 'C', part: 'all' };
    expect(backOf(told, { at: '2026-11-24 10:00', room: HILL_ROOM })).toBe('Time taken: 15:30.');
  });

  it('with no site said, a booking is put at the chat room’s first site, a closing at each: both are told', () => {
    const room = ALL_ROOM;
    expect(backOf({ kind: 'booked', count: 2, day: '2026-11-25' }, { room })).toBe(
      'Booked: 2 scans tomorrow at Quay Street.',
    );
    expect(backOf({ kind: 'closed', days: ['2026-11-27'] }, { room })).toBe(
      'Closed Fri 27 Nov at Quay Street, North Clinic and Hill House.',
    );
  });

  it('what was filled in rather than said', () => {
    expect(backOf({ kind: 'removed', tips: ['4'] }, { filledIn: ['tip 4'] })).toBe('Taken as tip 4.');
  });

  it('a practice of one site is not told its name', () => {
    const one = FERNGATE.replace(/ {2}- id: north[\s\S]*?(?=scanners:)/, '')
      .replace('home: hill', 'home: quay')
      .replace(/ {2}- \{room: "!(?:north|hill|all)[^\n]*\n/g, '');
    expect(backOf({ kind: 'closed', days: ['2026-11-27'] }, { file: one })).toBe('Closed Fri 27 Nov.');
  });
});
