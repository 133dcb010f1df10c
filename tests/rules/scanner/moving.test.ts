import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../core/record/entry.ts';
import { arrivalSpeeches, departureSpeeches } from '../../../core/rules/scanner/moving.ts';
import type { Speech } from '../../../core/rules/speech.ts';
import type { Given, Told } from '../given.ts';
import { calibrated, words } from './ferngate.ts';

const WED = '2026-11-25';

/** What is said of the entries of one note, such as "settle scanner:A" with its lines. */
function said(given: Given, at: string, told: Told, parts: Parameters<Given['note']>[2] = {}) {
  const turn = given.note(at, told, parts);
  const view = given.view(parts.noted ?? at);
  const speak = (entry: Entry): readonly Speech[] => [
    ...arrivalSpeeches(entry, view),
    ...departureSpeeches(entry, view),
  ];
  return given.timeline
    .ofTurn(turn)
    .flatMap(speak)
    .map(({ about, items, message }) => [`${about} ${items.join(' ')}`, ...words(message)]);
}

describe('moved to another site', () => {
  it('how to set up, with the scanner’s own notes, then until when it settles', () => {
    expect(
      said(calibrated(), `${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' }),
    ).toEqual([
      [
        'set-up scanner:A',
        'Set up blue scanner at North Clinic:',
        '1. Base steady, so that the scanner goes in safely and lifts out easily.',
        '2. Cable long enough to reach, and off the floor.',
        '3. Each plug only where the maker says, never into a network socket or switch.',
        '4. The base goes on the left of the bracket.',
      ],
      ['settle scanner:A', 'Blue scanner settles until 09:25 (25 min); the request to calibrate comes then.'],
    ]);
  });

  it('the time is the new site’s own, half an hour off', () => {
    const given = calibrated('Asia/Kolkata');
    const [, settle] = said(given, `${WED} 15:30`, { kind: 'moved', items: ['scanner:A'], site: 'hill' });
    expect(settle?.[1]).toBe(
      'Blue scanner settles until 15:55 (25 min); the request to calibrate comes then.',
    );
  });

  it('settled after closing: the request comes at opening', () => {
    const [, settle] = said(calibrated(), `${WED} 17:10`, {
      kind: 'moved',
      items: ['scanner:A'],
      site: 'north',
    });
    expect(settle?.[1]).toBe(
      'Blue scanner settles until 17:35 (25 min); the request to calibrate comes tomorrow 09:00, as North Clinic is shut until then.',
    );
  });

  it('two at once: one post each for both', () => {
    const posts = said(calibrated(), `${WED} 09:00`, {
      kind: 'moved',
      items: ['scanner:A', 'scanner:B'],
      site: 'north',
    });
    expect(posts.map(([head]) => head)).toEqual(['set-up scanner:A scanner:B', 'settle scanner:A scanner:B']);
    expect(posts[0]?.[1]).toBe('Set up blue scanner and red scanner at North Clinic:');
    expect(posts[1]).toHaveLength(3);
  });

  it('told long after: it has had its time', () => {
    const [, settle] = said(
      calibrated(),
      `${WED} 09:00`,
      { kind: 'moved', items: ['scanner:A'], site: 'north' },
      { noted: `${WED} 11:00` },
    );
    expect(settle?.[1]).toBe(
      'Blue scanner has had its time to settle (25 min): calibrate it now, it is due.',
    );
  });

  it('to another room of the same site: nothing is said', () => {
    expect(
      said(calibrated(), `${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'quay', room: 's2' }),
    ).toEqual([]);
  });

  it('only tips were moved: nothing is said', () => {
    expect(said(calibrated(), `${WED} 09:00`, { kind: 'moved', items: ['tip:3'], site: 'north' })).toEqual(
      [],
    );
  });
});

describe('departed', () => {
  it('what to pack, with the scanner’s own notes', () => {
    expect(
      said(calibrated(), `${WED} 08:40`, { kind: 'departed', items: ['scanner:A'], site: 'north' }),
    ).toEqual([
      [
        'set-up scanner:A',
        'Pack blue scanner:',
        '• Cover on.',
        '• Calibration tip along.',
        '• Cable coiled.',
        '• Not left in a hot or cold car.',
        '• Spare lens cap.',
      ],
    ]);
  });

  it('not wiped since its last scan: that first', () => {
    const given = calibrated();
    given.note(`${WED} 08:35`, { kind: 'scan-finished', scanner: 'B' });
    const [post] = said(given, `${WED} 08:40`, { kind: 'departed', items: ['scanner:B'] });
    expect(post?.[2]).toBe('• Wiped down first: red scanner is not, since its last scan.');
  });

  it('told a second time of the same journey: nothing more is said', () => {
    const given = calibrated();
    said(given, `${WED} 08:40`, { kind: 'departed', items: ['scanner:A'] });
    expect(said(given, `${WED} 08:45`, { kind: 'departed', items: ['scanner:A'], site: 'north' })).toEqual(
      [],
    );
  });
});
