import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import {
  COUNTED,
  day,
  INES,
  LARKMOOR,
  marksOn,
  postsFrom,
  THREE_AUTOCLAVES,
  withRules,
  words,
} from './larkmoor.ts';

describe('tests before the first load of a working day', () => {
  const YESTERDAY = [
    '2026-11-23 08:36 sam: helix passed',
    '2026-11-24 08:31 sam: tips 1 to 9 are sterile and on the shelf',
  ];

  test('none ever noted: nobody is told of any', async () => {
    const did = await day([COUNTED, '09:00 sam: load 1 on with tip 2', '09:01']);
    expect(posts(did, 'caution')).toEqual([]);
  });

  test('once one has been noted, a first load without it: one caution', async () => {
    const did = await day([
      ...YESTERDAY,
      '09:00 sam: load 1 on with tip 2',
      '10:00 sam: load 2 on with tip 3',
      '10:01',
    ]);
    expect(posts(did, 'caution').map(({ at }) => at)).toEqual(['2026-11-24T09:00:00Z']);
    expect(posts(did, 'caution')[0]?.items).toEqual(['load:1', 'autoclave']);
  });

  test('and with it, none', async () => {
    const did = await day([
      ...YESTERDAY,
      '08:50 sam: helix passed',
      '09:00 sam: load 1 on with tip 2',
      '09:01',
    ]);
    expect(posts(did, 'caution')).toEqual([]);
  });

  test('practised is per sort', async () => {
    const did = await day([...YESTERDAY, '09:00 sam: load 1 on with tip 2', '09:01']);
    expect(words(posts(did, 'caution'))).toContain('steam penetration test');
    expect(words(posts(did, 'caution'))).not.toContain('control');
  });

  test('a leak test is asked for a week after the last', async () => {
    const did = await day(['2026-11-23 09:00 sam: leak test passed', '2026-11-30 09:00']);
    expect(words(posts(did, 'load'))).toContain('Leak test due');
  });
});

describe('a failed test', () => {
  const FAILED = [COUNTED, '09:00 sam: leak test failed on the big one'];

  test('holds the autoclave and calls the lead', async () => {
    const did = await day([...FAILED, '09:01'], THREE_AUTOCLAVES);
    expect(posts(did, 'warning')[0]).toMatchObject({ items: ['autoclave:big'] });
    expect(posts(did, 'warning')[0]?.mentions).toContain(INES);
    expect(stateOf(did).autoclaves).toMatchObject({
      big: { held: true, why: 'leak test failed' },
      small: { held: false },
    });
  });

  test('a load started on it: warning', async () => {
    const did = await day(
      [...FAILED, '09:10 joy: load 1 on in the big one with tip 2', '09:11'],
      THREE_AUTOCLAVES,
    );
    expect(posts(did, 'warning').at(-1)).toMatchObject({
      items: ['load:1', 'autoclave:big'],
      mentions: ['@joy:example.org'],
    });
    expect(posts(did, 'warning').at(-1)?.text).toContain('In service here: small autoclave');
  });

  test.each([
    ['sam', true],
    ['ines', false],
    ['greta', false],
  ])('is released by the lead, deputy or manager alone: %s', async (who, held) => {
    const did = await day(
      [...FAILED, `09:10 ${who}: the big one is back in service`, '09:11'],
      THREE_AUTOCLAVES,
    );
    expect(stateOf(did).autoclaves.big.held).toBe(held);
    expect(marksOn(did, '$3').includes('👍')).toBe(!held);
  });

  test('a good repeat by itself releases nothing', async () => {
    const did = await day(
      [...FAILED, '09:10 sam: leak test passed on the big one', '09:11'],
      THREE_AUTOCLAVES,
    );
    expect(stateOf(did).autoclaves.big.held).toBe(true);
  });
});

/** Load 1 with everything noted good, load 2 without its indicator; tip 3 of it met a patient. */
const RAN = [
  '2026-11-23 08:31 sam: tips 1 to 9 are sterile and on the shelf',
  '2026-11-23 08:36 sam: spore test came back clear',
  '2026-11-23 09:10 sam: load 1 on with tips 1 and 2',
  '2026-11-23 09:40 sam: load 1 passed, 134 for 3.5 min, strip fine, dry',
  '2026-11-24 09:00 sam: load 2 on with tips 3 and 4',
  '2026-11-24 09:40 sam: load 2 passed, 134 for 3.5 min',
  '2026-11-24 11:00 joy: starting a scan with lime, tip 3, surgery 2',
  '2026-11-24 11:10 joy: scan done on lime',
];

describe('a positive spore test', () => {
  test('out of service; the loads since the last negative one are listed; its tips stay usable if their own checks were good', async () => {
    const did = await day([...RAN, '2026-11-30 15:00 sam: spore test positive', '15:01']);
    const [post] = posts(did, 'spore-test').filter(({ text }) => text?.includes('positive'));
    expect(post?.mentions).toContain(INES);
    expect(post?.items).toEqual(['autoclave', 'load:1', 'load:2']);
    expect(stateOf(did).tips).toMatchObject({
      1: { state: 'sterile' },
      2: { state: 'sterile' },
      4: { state: 'used' },
    });
    expect(words(posts(did, 'look-back'))).toMatch(/11:00, lime scanner, Surgery 2.*tip 3/);
  });

  test('`first` recalls at the first positive whatever was noted', async () => {
    const did = await day(
      [...RAN, '2026-11-30 15:00 sam: spore test positive', '15:01'],
      withRules('{loadTable: uk, sporeRecall: first}'),
    );
    expect(stateOf(did).tips['1'].state).toBe('used');
  });

  test('a repeat that is positive too recalls every tip since the last negative one', async () => {
    const did = await day([
      ...RAN,
      '2026-11-30 15:00 sam: spore test positive',
      '2026-12-01 09:00 sam: spore test positive',
      '09:01',
    ]);
    expect(stateOf(did).tips).toMatchObject({
      1: { state: 'used' },
      2: { state: 'used' },
      5: { state: 'sterile' },
    });
  });

  test('a load started on it meanwhile: warning; nobody’s word releases it; a clear repeat does', async () => {
    const did = await day([
      ...RAN,
      '2026-11-30 15:00 sam: spore test positive',
      '15:05 joy: load 9 on with tip 7',
      '15:06 ines: the autoclave is back in service',
      '2026-12-01 09:00 sam: spore test came back clear',
      '09:10 joy: load 10 on with tip 8',
      '09:11',
    ]);
    expect(posts(did, 'warning').map(({ items }) => items)).toEqual([['load:9', 'autoclave']]);
    expect(words(postsFrom(did, '15:06', 'load'))).toContain('out of service until a repeat is clear');
  });

  test('after a second: repair, then three clear empty cycles, each counted aloud', async () => {
    const did = await day([
      ...RAN,
      '2026-11-30 15:00 sam: spore test positive',
      '2026-12-01 09:00 sam: spore test positive',
      '09:10 sam: spore test came back clear',
      '09:11 joy: load 20 on with tip 7',
      '09:20 sam: the autoclave has been repaired',
      '10:00 sam: empty cycle 21 passed, 134 for 3.5 min',
      '10:40 sam: empty cycle 22 passed, 134 for 3.5 min',
      '11:00 joy: load 23 on with tip 8',
      '11:20 sam: empty cycle 24 passed, 134 for 3.5 min',
      '11:30 joy: load 25 on with tip 9',
      '11:31',
    ]);
    const stopped = posts(did, 'warning').map(({ items }) => items?.[0]);
    expect(stopped).toEqual(['load:20', 'load:23']);
    expect(words(postsFrom(did, '10:00', 'load'))).toMatch(
      /1 of 3 clear[\s\S]*2 of 3 clear[\s\S]*3 of 3 clear.*back in service/,
    );
  });

  test('due seven days after the last was run, whenever its result came', async () => {
    const did = await day(
      [
        '2026-11-23 09:00 sam: spore test is in, reading tomorrow',
        '2026-11-24 09:00 sam: spore test came back clear',
        '2026-12-01 09:00',
      ],
      LARKMOOR,
    );
    expect(posts(did, 'spore-test').map(({ at }) => at.slice(0, 10))).toEqual(['2026-11-30']);
  });
});
