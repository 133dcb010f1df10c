import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { CALIBRATED, COUNTED, day, marksOn, PREFIXED, postsFrom, SAM, words } from './larkmoor.ts';

const START = [COUNTED, CALIBRATED];

describe('a tip fitted, or a scan started with a tip, that is not to be used: warning at once', () => {
  test.each([
    ['used', ['09:00 sam: used tip 4'], 'used, 09:00 (Sam); no passed load since'],
    [
      'taken off without a scan',
      ['09:00 sam: tip 4 on lime', '09:01 sam: took tip 4 off'],
      'came off a scanner, 09:01 (Sam)',
    ],
    ['washed', ['09:00 sam: tip 4 scrubbed and rinsed'], 'on its way round'],
    ['sent', ['09:00 sam: used tip 4, sent to autoclave'], 'used, 09:00 (Sam)'],
    [
      'in a load with no result',
      ['09:00 sam: load 7 on with tip 4'],
      'load 7 has no result yet, 09:00 (Sam)',
    ],
    [
      'of a failed load',
      ['09:00 sam: load 7 on with tip 4', '09:40 sam: load 7 failed'],
      'load 7 failed, 09:40 (Sam)',
    ],
    ['held', ['09:00 sam: don’t use tip 4'], 'held'],
    ['missing', ['09:00 sam: can’t find tip 4'], 'reported missing'],
    ['retired', ['09:00 sam: binned tip 4, cracked mirror'], 'retired (cracked mirror)'],
    ['dropped', ['09:00 sam: someone dropped tip 4'], 'dropped, 09:00 (Sam)'],
    ['its pack open', ['09:00 sam: 4’s pouch has split'], 'its pack was wet, torn or opened'],
    ['its strip unchanged', ['09:00 sam: strip hadn’t turned on 4'], 'its indicator had not changed'],
    ['not clean', ['09:00 sam: debris on 4, redo'], 'failed inspection'],
    [
      'found again',
      ['09:00 sam: can’t find tip 4', '09:10 sam: found tip 4 in surgery 1'],
      'had been missing',
    ],
  ])('%s', async (_name, before, why) => {
    const did = await day([...START, ...before, '10:00 joy: tip 4 on coral', '10:02']);
    const [warning, ...more] = postsFrom(did, '10:00', 'warning');
    expect(more).toEqual([]);
    expect(warning?.text).toContain(why);
    expect(warning?.text).toMatch(/Sterile at Mill Road, oldest first: tips 1, 2, 3, 5/);
    expect(warning?.items).toEqual(['tip:4', 'scanner:K']);
    expect(warning?.mentions).toEqual(['@joy:example.org']);
    // The fact is recorded as said; nothing looks like leave to go on.
    expect(stateOf(did).scanners.K.tip).toBe('4');
    const note = did.findLast((one) => one.about === 'question')?.replyTo ?? '';
    expect(marksOn(did, note)).toEqual([]);
    expect(postsFrom(did, '10:00', 'record')).toEqual([]);
  });

  test('a scan started with no tip named is with the tip that the record has on that scanner', async () => {
    const did = await day([
      ...START,
      '09:00 sam: tip 4 on coral',
      '09:30 joy: don’t use tip 4',
      '09:31 sam: starting a scan with coral',
      '09:32',
    ]);
    expect(posts(did, 'warning').map(({ items }) => items)).toEqual([['tip:4', 'scanner:K']]);
  });

  test('fitting it and scanning with it are one warning, and the scan gets no thumb either', async () => {
    const did = await day([
      ...START,
      '09:00 sam: used tip 4',
      '09:10 sam: tip 4 on coral',
      '09:12 sam: starting a scan with coral',
      '09:13',
    ]);
    expect(posts(did, 'warning')).toHaveLength(1);
    expect(marksOn(did, '$5')).toEqual([]);
  });

  test('past its day where only bagged tips keep: warned of, and not in the stock, though its state stays sterile', async () => {
    const did = await day(
      [
        '08:31 sam: tips 1 to 6 are sterile and on the shelf',
        CALIBRATED,
        '09:00 sam: used tips 1 and 2',
        '09:10 sam: T1 bagged',
        '09:20 sam: load 7 on with tips 1 and 2',
        '09:50 sam: load 7 passed, 134 for 3.5 min',
        '2026-11-25 08:40 sam: tip 2 on lime',
        '08:45 sam: which tips are sterile?',
        '08:46',
      ],
      PREFIXED,
    );
    expect(words(postsFrom(did, '08:40', 'warning'))).toContain(
      'not noted as bagged, so good for its day only',
    );
    expect(posts(did, 'answer').at(-1)?.text).toContain('T1');
    expect(posts(did, 'answer').at(-1)?.text).not.toContain('T3');
    expect(stateOf(did).tips.T3.state).toBe('sterile');
  });
});

describe('the same patient', () => {
  const SCANNED = [
    ...START,
    '09:00 sam: tip 4 on coral',
    '09:05 sam: starting a scan with coral',
    '09:15 sam: scan done on coral',
  ];

  test('used on an earlier scan: warned of, and so is the scanner not wiped', async () => {
    const did = await day([...SCANNED, '09:20 sam: starting a scan with coral', '09:21']);
    expect(posts(did, 'warning').map(({ items }) => items)).toEqual([['scanner:K'], ['tip:4', 'scanner:K']]);
    expect(posts(did, 'warning')[0]?.mentions).toEqual([SAM]);
  });

  test('“same patient” drops both', async () => {
    const did = await day([...SCANNED, '09:20 sam: starting a scan with coral, same patient', '09:21']);
    expect(posts(did, 'warning')).toEqual([]);
  });

  test('and no other', async () => {
    const did = await day([
      ...SCANNED,
      '09:18 joy: don’t use tip 4',
      '09:20 sam: starting a scan with coral, same patient',
      '09:21',
    ]);
    expect(words(posts(did, 'warning'))).toContain('held');
  });
});

test('`used` is contact with a patient and makes its scanner dirty', async () => {
  const did = await day([...START, '09:00 sam: tip 4 on coral', '09:10 sam: used tip 4', '09:11']);
  expect(stateOf(did).scanners.K.clean).toBe(false);
  expect(stateOf(did).tips['4'].state).toBe('used');
});

test('a tip used on one scanner and then on another, with no load between: warning', async () => {
  const did = await day([
    ...START,
    '09:00 sam: used tip 4 on coral',
    '09:30 joy: used tip 4 on lime',
    '09:31',
  ]);
  expect(posts(did, 'warning').map(({ items }) => items)).toEqual([['tip:4', 'scanner:L']]);
});

describe('a doubt about a tip', () => {
  test('makes it not sterile until somebody answers', async () => {
    const did = await day([
      ...START,
      '09:00 sam: not sure tip 4 is sterile',
      '09:10 joy: tip 4 on coral',
      '09:11',
    ]);
    expect(words(postsFrom(did, '09:10', 'warning'))).toContain('in doubt, 09:00 (Sam)');
  });

  test('of a load that nobody has spoken of: asked, and nothing else is said of it later', async () => {
    const did = await day([
      ...START,
      '09:01 joy: not sure 118 passed',
      '09:05 sam: load 118 on with tip 2',
      '09:06',
    ]);
    expect(words(postsFrom(did, '09:01', 'question'))).toContain('Load 118 passed');
    expect(postsFrom(did, '09:05')).toEqual([]);
  });
});
