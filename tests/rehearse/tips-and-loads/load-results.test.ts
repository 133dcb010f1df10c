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

const ON = [COUNTED, '09:00 sam: used tips 2 and 5', '09:10 sam: load 118 on with tips 2, 5, 7'];

describe('figures are judged by the table that the practice names', () => {
  test.each([
    ['uk', '134 for 3 min', 'sterile'],
    ['uk', '137 for 3.5 min', 'sterile'],
    ['uk', '126 for 10 min', 'sterile'],
    ['uk', '121 for 15 min', 'sterile'],
    ['uk', '134 for 2 min', 'used'],
    ['uk', '121 for 14 min', 'used'],
    ['uk', '130 for 30 min', 'in-load'],
    ['uk', '138 for 5 min', 'in-load'],
    ['us-gravity', '121 for 30 min', 'sterile'],
    ['us-gravity', '132 for 15 min', 'sterile'],
    ['us-gravity', '135 for 15 min', 'sterile'],
    ['us-gravity', '132 for 10 min', 'used'],
    ['us-gravity', '127 for 40 min', 'in-load'],
    ['us-prevacuum', '132 for 4 min', 'sterile'],
    ['us-prevacuum', '132 for 3 min', 'used'],
    ['us-prevacuum', '121 for 60 min', 'in-load'],
  ])('%s: a load said to have passed at %s leaves its tips %s', async (table, figures, state) => {
    const did = await day(
      [...ON, `09:50 sam: load 118 passed, ${figures}`, '09:51'],
      withRules(`{loadTable: ${table}}`),
    );
    expect(stateOf(did).tips['5']).toMatchObject({ state, load: '118', cycles: 1 });
    expect(posts(did, 'warning')).toHaveLength(state === 'sterile' ? 0 : 1);
    expect(marksOn(did, '$4').includes('👍')).toBe(state === 'sterile');
  });

  test('none named: recorded, not judged, and that is said once', async () => {
    const did = await day(
      [
        ...ON,
        '09:50 sam: load 118 passed, 130 for 2 min',
        '10:00 sam: load 119 on with tip 1',
        '10:40 sam: load 119 passed, 134 for 4 min',
        '10:41',
      ],
      LARKMOOR.replace('rules: {loadTable: uk}', ''),
    );
    expect(stateOf(did).tips['5'].state).toBe('sterile');
    expect(words(posts(did, 'load')).match(/No load table is named/g)).toHaveLength(1);
  });

  test.each([
    ['134 for 3.5 min', 'sterile'],
    ['137 for 3.5 min', 'sterile'],
    // Long enough for the UK table, and short of its own validated cycle.
    ['134 for 3 min', 'used'],
    // In the UK table, and not one of its own.
    ['121 for 15 min', 'in-load'],
  ])('an autoclave that lists its own cycles is judged by those alone: %s', async (figures, state) => {
    const did = await day(
      [
        COUNTED,
        '09:00 sam: load 118 on in the big autoclave with tip 2',
        `09:50 sam: load 118 passed, ${figures}`,
        '09:51',
      ],
      THREE_AUTOCLAVES,
    );
    expect(stateOf(did).tips['2'].state).toBe(state);
  });
});

describe('a load said to have passed', () => {
  test('with no figures is passed; what was not said is shown as not said', async () => {
    const did = await day([...ON, '09:50 sam: load 118 passed', '09:51']);
    const [reply] = postsFrom(did, '09:50', 'load');
    expect(reply?.text).toContain('tips 2, 5 and 7 are sterile');
    expect(reply?.text).toMatch(/Not said:.*temperature.*indicator.*dry.*who released/);
    expect(reply?.items).toEqual(['load:118', 'tip:2', 'tip:5', 'tip:7']);
  });

  test('with a failed indicator: warning, counts as failed, nobody may release it', async () => {
    const did = await day([
      ...ON,
      '09:50 sam: load 118 passed, 134 for 4 min, strip hadn’t turned',
      '10:10 ines: load 118 is fine to use',
      '10:11',
    ]);
    expect(posts(did, 'warning')[0]?.text).toContain('counts as failed');
    expect(words(postsFrom(did, '10:10'))).toContain('nobody may release it');
    expect(marksOn(did, '$5')).toEqual([]);
    expect(stateOf(did).tips['2'].state).toBe('used');
  });

  test('with a tip of it fitted while it ran: not part of its pass', async () => {
    const did = await day([
      ...ON,
      '09:30 joy: tip 5 on coral',
      '09:50 sam: load 118 passed, 134 for 4 min',
      '09:51',
    ]);
    expect(stateOf(did).tips).toMatchObject({
      2: { state: 'sterile' },
      5: { state: 'fitted' },
      7: { state: 'sterile' },
    });
    expect(words(postsFrom(did, '09:50', 'load'))).toContain('Not tip 5');
  });

  test('with a held tip in it: the reply does not call that one fit to use', async () => {
    const did = await day([
      ...ON,
      '09:30 joy: don’t use tip 5',
      '09:50 sam: load 118 passed, 134 for 4 min',
      '09:51',
    ]);
    expect(stateOf(did).tips['5'].state).toBe('held');
    expect(words(postsFrom(did, '09:50', 'load'))).toContain('Tip 5 stays held');
  });
});

describe('on a temperature with no published value: until the lead, deputy or manager releases it', () => {
  const WAITS = [...ON, '09:50 sam: load 118 passed, 130 for 4 min'];

  test('the warning goes to the lead too', async () => {
    const did = await day([...WAITS, '09:51']);
    expect(posts(did, 'warning')[0]?.mentions).toContain(INES);
    expect(posts(did, 'warning')[0]?.text).toContain('130 °C');
  });

  test.each([
    ['load 118 is fine to use', ['2', '5', '7']],
    ['tips 2 and 5 of load 118 are fine to use', ['2', '5']],
    ['tip 2 is fine to use again', ['2']],
  ])('“%s” by the deputy makes those sterile', async (text, ids) => {
    const did = await day([...WAITS, `10:00 paul: ${text}`, '10:01']);
    const { tips } = stateOf(did);
    expect(['2', '5', '7'].filter((id) => tips[id].state === 'sterile')).toEqual(ids);
    expect(marksOn(did, '$5')).toEqual(['👍']);
  });

  test.each([
    'load 118 is fine to use',
    'tips 2 and 5 of load 118 are fine to use',
    'tip 2 is fine to use again',
  ])('“%s” by anybody else changes nothing, once and without a thumb', async (text) => {
    const did = await day([...WAITS, `10:00 sam: ${text}`, '10:01']);
    expect(stateOf(did).tips['2'].state).toBe('in-load');
    const said = postsFrom(did, '10:00');
    expect(said).toHaveLength(1);
    expect(said[0]?.text).toMatch(
      /not released. Ines \(lead\), Paul \(deputy\) or Greta \(manager\) may release it/,
    );
    expect(marksOn(did, '$5')).toEqual([]);
  });

  test.each([
    ['yes', 'sterile'],
    ['no', 'in-load'],
  ])('a lead who says that it passed is asked whether that is its release: %s', async (text, state) => {
    const did = await day([...WAITS, '10:00 ines: load 118 passed', `10:01 ines: ${text}`, '10:02']);
    expect(postsFrom(did, '10:00', 'question')[0]?.text).toContain('Do you release load 118');
    expect(stateOf(did).tips['5'].state).toBe(state);
  });

  test('the result told again after its release takes nothing back', async () => {
    const did = await day([
      ...WAITS,
      '10:00 ines: load 118 is fine to use',
      '10:10 joy: load 118 passed, 130 for 4 min',
      '10:11',
    ]);
    expect(stateOf(did).tips['5'].state).toBe('sterile');
  });
});

describe('a doubt about a load', () => {
  const PASSED = [...ON, '09:50 sam: load 118 passed, 134 for 4 min', '10:00 joy: not sure 118 passed'];

  test('makes its tips not sterile until it is answered', async () => {
    const did = await day([...PASSED, '10:05 sam: tip 2 on coral', '10:06']);
    expect(stateOf(did).tips['5'].state).toBe('in-load');
    expect(posts(did, 'warning').at(-1)?.text).toContain('load 118 is in doubt');
  });

  test.each([
    ['load 118 passed', 'sterile'],
    ['load 118 failed', 'used'],
  ])('is settled by anyone’s typed result: “%s”', async (text, state) => {
    const did = await day([...PASSED, `10:30 sam: ${text}`, '10:31']);
    expect(stateOf(did).tips['5'].state).toBe(state);
  });

  test('nobody is left asking: it is asked once more when the question lapses', async () => {
    const did = await day([...PASSED, '11:30']);
    expect(words(postsFrom(did, '10:20'))).toContain('In doubt: load 118');
  });
});
