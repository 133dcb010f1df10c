import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { CALIBRATED, COUNTED, day, LARKMOOR, postsFrom, words } from './larkmoor.ts';

const FEW = LARKMOOR.replace('cycles: 60', 'cycles: 4, cyclesSoFar: 1');
const once = (time: string, number: number, result = 'passed') => [
  `${time}:00 sam: used tip 1`,
  `${time}:05 sam: load ${number} on with tip 1`,
  `${time}:40 sam: load ${number} ${result}`,
];

describe('each finished load, or return from the autoclave, is one cycle', () => {
  test.each([
    ['passed', once('09', 1), 2],
    ['failed', once('09', 1, 'failed'), 2],
    ['a repeated result is none', [...once('09', 1), '09:45 joy: load 1 passed'], 2],
    [
      'sent and come back',
      ['09:00 sam: used tip 1, sent to autoclave', '09:50 sam: tip 1 back from the autoclave'],
      2,
    ],
    [
      'both said of one load',
      [
        '09:00 sam: used tip 1, sent to autoclave',
        '09:05 sam: load 1 on with tip 1',
        '09:40 sam: load 1 passed',
        '09:50 sam: tip 1 back from the autoclave',
      ],
      2,
    ],
    ['a stocktake is none', ['09:00 sam: tips 1 to 9 are sterile and on the shelf'], 1],
    [
      'a corrected result is none',
      [...once('09', 1), '09:42 sam: load 1 failed', '09:44 sam: load 1 passed'],
      2,
    ],
  ])('%s', async (_name, notes, cycles) => {
    const did = await day([COUNTED, ...notes, '09:55'], FEW);
    expect(stateOf(did).tips['1'].cycles).toBe(cycles);
  });

  test('counting starts at 0 where the practice file says nothing', async () => {
    expect(stateOf(await day([COUNTED, ...once('09', 1), '09:55'])).tips['1'].cycles).toBe(1);
  });
});

describe('the maker’s limit', () => {
  test('within 2 of it: order', async () => {
    const did = await day([COUNTED, ...once('09', 1), '09:55'], FEW);
    expect(posts(did, 'order').map(({ items, at }) => [items, at.slice(11, 16)])).toEqual([
      [['tip:1'], '09:40'],
    ]);
  });

  test('at it one last use; sending it again: caution; fitting it past the limit: warning', async () => {
    const did = await day(
      [
        COUNTED,
        CALIBRATED,
        ...once('09', 1),
        ...once('10', 2),
        ...once('11', 3),
        '12:00 sam: tip 1 on coral',
        '12:10 sam: used tip 1',
        '12:11 sam: wiped coral',
        '12:15 sam: tip 1 sent to autoclave',
        '12:16 sam: load 4 on with tip 1',
        '12:50 sam: load 4 passed',
        '13:00 sam: tip 1 on coral',
        '13:01',
      ],
      FEW,
    );
    expect(words(posts(did, 'order'))).toContain('One last use: tip 1');
    expect(
      postsFrom(did, '12:00')
        .filter(({ about }) => about === 'warning' || about === 'caution')
        .map(({ at, about }) => [at.slice(11, 16), about]),
    ).toEqual([
      ['12:15', 'caution'],
      ['13:00', 'warning'],
    ]);
    expect(words(postsFrom(did, '13:00', 'warning'))).toContain('past its maker’s limit of cycles: 5 of 4');
  });

  test('none given: count only, and say once that none is set', async () => {
    const did = await day([
      '08:31 joy@hill: tips 20 to 23 are sterile and on the shelf',
      '09:05 joy@hill: load 1 on with tip 20',
      '09:40 joy@hill: load 1 passed',
      '10:05 joy@hill: load 2 on with tip 21',
      '10:40 joy@hill: load 2 passed',
      '10:41',
    ]);
    expect(words(posts(did, 'load')).match(/No limit of cycles is set/g)).toHaveLength(1);
    expect(stateOf(did).tips['20'].cycles).toBe(1);
  });
});

describe('a tip that is not sterile and not spoken of for 14 days', () => {
  test('is asked about once, in the brief', async () => {
    const did = await day([COUNTED, '09:00 sam: used tip 6', '2026-12-11 09:00']);
    // 14 days of real time from 09:00: the brief of 8 December, at 08:15, is before that.
    const asked = posts(did, 'brief').filter(
      ({ room, text }) =>
        room?.startsWith('!mill') &&
        /tip 6.*14 days|14 days.*tip 6|tip 6[^\n]*(not spoken|heard)/i.test(text ?? ''),
    );
    expect(asked.map(({ at }) => at.slice(0, 10))).toEqual(['2026-12-09']);
  });
});
