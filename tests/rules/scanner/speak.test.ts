import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../core/record/finding.ts';
import { findingsOfTurns } from '../../../core/record/findings.ts';
import type { View } from '../../../core/rules/matter.ts';
import { calibrationReply } from '../../../core/rules/scanner/calibration-reply.ts';
import { scannerSpeak } from '../../../core/rules/scanner/speak.ts';
import { weeklyOverdueSpeeches } from '../../../core/rules/scanner/speak-not-ready.ts';
import type { Speech } from '../../../core/rules/speech.ts';
import type { Given, Told } from '../given.ts';
import { calibrated, passed, words } from './ferngate.ts';

const WED = '2026-11-25';
const NORTH = { room: '!north:example.org' };

function thisWeek(): Given {
  const given = calibrated();
  given.note('2026-11-23 08:45', passed('A', 'B'));
  given.note('2026-11-23 09:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6'] });
  return given;
}

function speeches(finding: Finding, view: View): readonly Speech[] {
  switch (finding.kind) {
    case 'not-wiped':
      return scannerSpeak['not-wiped'](finding, view);
    case 'same-tip-again':
      return scannerSpeak['same-tip-again'](finding, view);
    case 'not-ready-scanner':
      return scannerSpeak['not-ready-scanner'](finding, view);
    case 'pass-before-settling':
      return scannerSpeak['pass-before-settling'](finding, view);
    case 'temperature-due':
      return scannerSpeak['temperature-due']();
    case 'calibration-tip-apart':
      return scannerSpeak['calibration-tip-apart'](finding, view);
    case 'displaced':
      return scannerSpeak.displaced(finding, view);
    case 'unknown-item':
      return scannerSpeak['unknown-item'](finding, view);
    default:
      return [];
  }
}

/** What is said at once of one note about a scanner. */
function heard(given: Given, at: string, told: Told | readonly Told[], parts = {}): readonly Speech[] {
  const turn = given.note(at, told, parts);
  const view = given.view(at);
  const entries = given.timeline.ofTurn(turn);
  return [
    ...findingsOfTurns(view.state, [turn]).flatMap((finding) => speeches(finding, view)),
    ...entries.flatMap((entry) => [...calibrationReply(entry, view), ...weeklyOverdueSpeeches(entry, view)]),
  ];
}

function said(given: Given, at: string, told: Told | readonly Told[], parts = {}) {
  return heard(given, at, told, parts).map(({ about, items, message }) => [
    `${about} ${items.join(' ')}`,
    ...words(message),
  ]);
}

describe('a scan on a scanner not wiped since its last one', () => {
  const dirty = () => {
    const given = thisWeek();
    given.note(
      `${WED} 10:00`,
      { kind: 'scan-finished', scanner: 'A', room: 's2' },
      { from: '@tom:example.org' },
    );
    return given;
  };

  it('a warning at once, with when, where and who noted that scan, and which scanner is ready', () => {
    expect(said(dirty(), `${WED} 10:20`, { kind: 'scan-started', scanner: 'A' })).toEqual([
      [
        'warning scanner:A',
        'Stop: blue scanner has not been wiped since its last scan.',
        'That scan ended 10:00, Surgery 2, Quay Street, noted by Tom.',
        'Wipe scanner and base before it is used; your own product’s contact time comes first. Same patient? Say “same patient”.',
        'Ready here: red scanner.',
      ],
    ]);
  });

  it('the same when a tip is fitted to it, and not again for the scan that follows', () => {
    const given = dirty();
    expect(
      said(given, `${WED} 10:20`, { kind: 'fitted', tip: '1', scanner: 'A' }).map(([head]) => head),
    ).toEqual(['warning scanner:A']);
    expect(said(given, `${WED} 10:22`, { kind: 'scan-started', scanner: 'A' })).toEqual([]);
  });

  it('not once it is wiped, nor for the same patient', () => {
    const wiped = dirty();
    wiped.note(`${WED} 10:05`, { kind: 'wiped', scanner: 'A', part: 'all' });
    expect(said(wiped, `${WED} 10:20`, { kind: 'scan-started', scanner: 'A' })).toEqual([]);
    expect(said(dirty(), `${WED} 10:20`, { kind: 'scan-started', scanner: 'A', samePatient: true })).toEqual(
      [],
    );
  });
});

describe('the tip of an earlier scan scanned with again', () => {
  const scannedOnce = () => {
    const given = thisWeek();
    given.note(`${WED} 09:50`, { kind: 'fitted', tip: '1', scanner: 'A' });
    given.note(`${WED} 10:00`, [
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ]);
    return given;
  };

  it('a warning with the sterile tips here, then whether it reached a patient', () => {
    const [warning, question, ...more] = heard(scannedOnce(), `${WED} 10:20`, {
      kind: 'scan-started',
      scanner: 'A',
    });
    expect(more).toEqual([]);
    expect(words(warning?.message ?? [])).toEqual([
      'Stop: tip 1 was used on an earlier scan and has had no load since.',
      'On blue scanner: that scan ended 10:00, Quay Street, noted by Rosa.',
      'Sterile at Quay Street, oldest first: tips 2, 3, 4, 5 and 6.',
      'Same patient? Edit your note to say “same patient”.',
    ]);
    expect(warning?.about).toBe('warning');
    expect(question?.about).toBe('question');
    expect(question?.asks?.purpose).toMatchObject({ sort: 'reached-patient', tip: '1' });
    expect(question?.decides?.map(({ kind }) => kind)).toEqual(['incident-opened']);
  });

  it('not where the note says it is the same patient', () => {
    expect(
      said(scannedOnce(), `${WED} 10:20`, { kind: 'scan-started', scanner: 'A', samePatient: true }),
    ).toEqual([]);
  });
});

describe('a scan on a scanner that is not ready: a caution', () => {
  const cases: readonly [string, readonly Told[], string][] = [
    [
      'dropped',
      [{ kind: 'fault', item: 'scanner:A', sort: 'dropped' }],
      'held until it passes calibration, since 10:00; dropped 10:00, not calibrated since.',
    ],
    ['failed', [{ kind: 'calibrated', scanner: 'A', outcome: 'failed' }], 'calibration failed 10:00.'],
    ['held', [{ kind: 'held', items: ['scanner:A'], reason: 'cable' }], 'held since 10:00 by Rosa (cable).'],
    [
      'repaired',
      [{ kind: 'repaired', items: ['scanner:A'] }],
      'repaired, lent or updated 10:00, not calibrated since.',
    ],
  ];
  it.each(cases)('%s, with which scanner is ready', (_name, told, why) => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, told);
    expect(said(given, `${WED} 10:20`, { kind: 'scan-started', scanner: 'A' })).toEqual([
      ['caution scanner:A', `Blue scanner is not ready: ${why}`, 'Ready here: red scanner.'],
    ]);
  });

  it('a scanner that is being scanned with is not offered, and what is warned of is not said again', () => {
    const given = thisWeek();
    given.note(`${WED} 09:50`, { kind: 'scan-started', scanner: 'B' });
    given.note(`${WED} 09:55`, { kind: 'scan-finished', scanner: 'A' });
    given.note(`${WED} 10:00`, { kind: 'held', items: ['scanner:A'] });
    const posts = said(given, `${WED} 10:20`, { kind: 'scan-started', scanner: 'A' });
    expect(posts.find(([head]) => head === 'caution scanner:A')).toEqual([
      'caution scanner:A',
      'Blue scanner is not ready: held since 10:00 by Rosa.',
      'No other scanner is ready.',
    ]);
  });

  it('ready elsewhere is said where none is here', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' }, NORTH);
    expect(said(given, `${WED} 10:05`, { kind: 'scan-started', scanner: 'A' }, NORTH)).toEqual([
      [
        'caution scanner:A',
        'Blue scanner is not ready: came from Quay Street 10:00, not calibrated since; settling until 10:25.',
        'No other scanner is ready here; ready elsewhere: red scanner at Quay Street.',
      ],
    ]);
  });

  it('weekly past that day’s closing, and not before it', () => {
    const given = calibrated();
    expect(said(given, '2026-11-23 17:00', { kind: 'scan-started', scanner: 'A' })).toEqual([]);
    given.note('2026-11-23 17:10', [
      { kind: 'scan-finished', scanner: 'A' },
      { kind: 'wiped', scanner: 'A', part: 'all' },
    ]);
    expect(said(given, '2026-11-24 09:00', { kind: 'scan-started', scanner: 'A' })).toEqual([
      [
        'caution scanner:A',
        'Blue scanner is not ready: weekly calibration, due yesterday.',
        'No other scanner is ready here; ready elsewhere: green scanner at Hill House.',
      ],
    ]);
  });
});

describe('a pass before settling is over', () => {
  it('is asked back, yes or no, of anyone, until it is answered', () => {
    const given = thisWeek();
    given.note(`${WED} 09:00`, { kind: 'moved', items: ['scanner:A'], site: 'north' }, NORTH);
    const [post, ...more] = heard(given, `${WED} 09:10`, passed('A'), NORTH);
    expect(more).toEqual([]);
    expect(words(post?.message ?? [])).toEqual([
      'Has blue scanner sat at room temperature long enough? yes or no',
      'By the notes blue scanner was to settle until 09:25. Yes: the pass counts. No: calibration stays due.',
    ]);
    expect(post?.about).toBe('caution');
    expect(post?.asks).toMatchObject({
      person: null,
      lasts: null,
      purpose: { sort: 'settled', scanner: 'A' },
    });
    expect(post?.asks?.choices.map(({ value }) => value)).toEqual(['yes', 'no']);
  });
});

describe('a failed calibration', () => {
  it('the reply says what to try, with the scanner’s own notes', () => {
    expect(said(thisWeek(), `${WED} 10:00`, { kind: 'calibrated', scanner: 'A', outcome: 'failed' })).toEqual(
      [
        [
          'calibration scanner:A',
          'Blue scanner is not ready: calibration failed. Try this:',
          '1. Look into the calibration tip and at the lens for dust or a hair.',
          '2. Clean both.',
          '3. Let scanner and calibration tip settle at room temperature.',
          '4. Try again.',
          '5. Twist until it clicks.',
          'Ready here: red scanner.',
        ],
      ],
    );
  });

  it('twice with no pass between: stop using it and call support', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, { kind: 'calibrated', scanner: 'A', outcome: 'failed' });
    expect(said(given, `${WED} 10:30`, { kind: 'calibrated', scanner: 'A', outcome: 'failed' })).toEqual([
      [
        'calibration scanner:A',
        'Stop using blue scanner and call support: its calibration failed 2 times with no pass between. A later pass makes it ready again.',
        'Ready here: red scanner.',
      ],
    ]);
  });

  it('twice with a pass between: what to try again', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, { kind: 'calibrated', scanner: 'B', outcome: 'failed' });
    given.note(`${WED} 10:10`, passed('B'));
    const [post] = said(given, `${WED} 10:30`, { kind: 'calibrated', scanner: 'B', outcome: 'failed' });
    expect(post?.[1]).toBe('Red scanner is not ready: calibration failed. Try this:');
  });

  it('told late, of a time before a pass: that pass stands', () => {
    const given = thisWeek();
    given.note(`${WED} 10:10`, passed('A'));
    const failed = { kind: 'calibrated', scanner: 'A', outcome: 'failed' } as const;
    const turn = given.note(`${WED} 10:00`, failed, { noted: `${WED} 10:20` });
    const view = given.view(`${WED} 10:20`);
    const posts = given.timeline.ofTurn(turn).flatMap((entry) => calibrationReply(entry, view));
    expect(posts.map(({ message }) => words(message))).toEqual([
      ['Blue scanner passed again 10:10: it is not due for that failure.'],
    ]);
  });

  it('a pass gets no reply', () => {
    expect(said(thisWeek(), `${WED} 10:00`, passed('A'))).toEqual([]);
  });
});

describe('the rest', () => {
  it('a calibration tip at another site than its scanner: both sites are named', () => {
    expect(
      said(thisWeek(), `${WED} 10:00`, { kind: 'moved', items: ['calibration-tip:A'], site: 'north' }),
    ).toEqual([
      [
        'calibration scanner:A calibration-tip:A',
        'Blue scanner and its calibration tip are apart: scanner at Quay Street, calibration tip at North Clinic.',
        'It can be calibrated when they are at one site. Here after all? Note that its calibration tip is.',
      ],
    ]);
  });

  it('a new tip on: the old one is taken as off, and that is shown', () => {
    const given = thisWeek();
    given.note(`${WED} 10:00`, { kind: 'fitted', tip: '1', scanner: 'A' });
    expect(said(given, `${WED} 10:05`, { kind: 'fitted', tip: '2', scanner: 'A' })).toEqual([
      ['answer tip:1 scanner:A', 'Taken from your note: tip 1 is off blue scanner, to be reprocessed.'],
    ]);
  });

  it('a tip that the practice does not have: nothing is recorded of it', () => {
    expect(said(thisWeek(), `${WED} 10:00`, { kind: 'washed', tips: ['44'] })).toEqual([
      [
        'question tip:44',
        'I do not know tip 44; nothing is recorded of it.',
        'The practice file has 12 tips. Edit your note to say which it was.',
      ],
    ]);
  });
});
