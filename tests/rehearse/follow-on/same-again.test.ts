import { describe, expect, test } from 'vitest';
import { PRACTICE, type Short, stateOf } from '../play.ts';
import { answeredAfter, heard, NORTH, under, underLast } from './heard.ts';

describe('a note that names only items says the same of them as the note before', () => {
  test.each([
    ['calibrated green, all good', 'blue too', 'Blue scanner calibrated, passed.'],
    ['calibration failed on green', 'blue too', 'Blue scanner calibration failed.'],
    ['wiped green', 'and blue', 'Blue scanner wiped down.'],
    ['wiped green', 'blue done too', 'Blue scanner wiped down.'],
    ['wiped green', 'and the other one', 'Blue scanner wiped down.'],
    ['cover on green', 'same for blue', 'Blue scanner cover on.'],
    ['moved green to north', 'ditto blue', 'Blue scanner moved to North Clinic.'],
    ['used tip 5 on green', '6 as well', 'Tip 6 used on green scanner.'],
    ['used tip 5', '8 aswell', 'Tip 8 used.'],
    ['used tip 5', '4 aswel', 'Tip 4 used.'],
    ['used tip 5', '& 7', 'Tip 7 used.'],
    ['used tip 5', 'also tip 2', 'Tip 2 used.'],
    ['used tip 5', 'and 2, 3', 'Tips 2, 3 used.'],
    ['used tip 5', 'tips 2 to 4 too', 'Tips 2–4 used.'],
    ['used tip 5', 'six too', 'Tip 6 used.'],
    ['used tips 1 and 2', '5 too', 'Tip 5 used.'],
    ['4 looks fine under the magnifier', '5 too', 'Tip 5 inspected: passed.'],
    ['binned tip 6, cracked mirror', 'same with 7', 'Tip 7 retired (cracked mirror).'],
    ["can't find tip 4", '5 too', 'Tip 5 missing.'],
    ['tip 4 fell on the floor', 'and 5', 'Tip 5: dropped.'],
    ['load 118 on with tips 2 and 5', '7 too', 'Load 118 started with tip 7.'],
    ['calibrated green, all good', 'blue as well, all good', 'Blue scanner calibrated, passed.'],
    ['wiped green', 'so is the blue one', 'Blue scanner wiped down.'],
    ['wiped green', 'and bleu', 'Blue scanner wiped down.'],
    ['don’t use tip 4, it’s scratched', 'nor 5', 'Tip 5 held (it’s scratched).'],
    ['used tip 2', 'and 3. also 4', 'Tips 3, 4 used.'],
    ['used tips 1 to 3', '4 to 6 too', 'Tips 4–6 used.'],
    ['tips 2 and 3 are back from the autoclave', 'and 4', 'Tip 4 said to be sterile.'],
  ])('“%s”, “%s”: %s', async (first, then, line) => {
    const said = await underLast(['09:00', 'tom', first], ['09:04', 'tom', then]);
    expect(said).toContain(line);
    expect(said).toContain('👍');
  });

  test('at this note’s own time, and in the record', async () => {
    const did = await heard([
      ['09:00', 'tom', 'calibrated green, all good'],
      ['09:04', 'tom', 'blue too'],
    ]);
    expect(stateOf(did).scanners.A.calibrated).toBe('2026-11-23T09:04:00Z');
  });

  test('one after the other', async () => {
    const did = await heard([
      ['09:00', 'tom', 'used tip 5'],
      ['09:08', 'tom', '6 as well'],
      ['09:16', 'tom', '7 as well'],
    ]);
    expect(stateOf(did).tips['7'].state).toBe('used');
  });

  test('another load has figures of its own: only its result is the same', async () => {
    const lines: Short[] = [
      ['08:10', 'tom', 'load 118 on with tip 2'],
      ['08:12', 'tom', 'load 119 on with tip 3'],
      ['09:00', 'tom', 'load 118 passed, 134 for 3.5 min, strip turned, dry'],
      ['09:02', 'tom', 'load 119 too'],
    ];
    const [first = ''] = await underLast(...lines);
    expect(first).toContain('Load 119 passed');
    expect(first).toContain('Not said: temperature, minutes, indicator');
  });
});

test('an unsafe tip is warned of as ever, and gets no thumb', async () => {
  const said = await underLast(
    ['08:30', 'tom', 'don’t use tip 6'],
    ['09:00', 'tom', 'used tip 5'],
    ['09:01', 'tom', '6 as well'],
  );
  expect(said.join('\n')).toContain('Stop: tip 6 must not be used.');
  expect(said).not.toContain('👍');
});

describe('where the note before does not settle it, one line asks', () => {
  test.each([
    [
      'used and sent tip 2',
      '6 as well',
      'Tip 6 as well – what of it?\n1. tip 6 used\n2. tip 6 sent to the autoclave\n3. all of that',
    ],
    ['used tip 5 on green', 'blue too', 'Blue scanner as well – what of it? Please type it in full.'],
    ['tip 5 on green', 'and 6', 'Tip 6 as well – what of it? Please type it in full.'],
    ['used tip 5', '44 too', 'There is no tip 44. Please type it in full.'],
    ['used tip 5', '6 as well I think', 'Tip 6 used too? yes or no'],
    ['calibrated blue', 'same for green but it failed', 'Green scanner calibrated, passed too? yes or no'],
    ['calibrated blue', 'green didn’t', 'Green scanner calibration failed? yes or no'],
  ])('“%s”, “%s”', async (first, then, line) => {
    expect(await underLast(['09:00', 'tom', first], ['09:04', 'tom', then])).toEqual([line]);
  });

  test.each([
    ['1', ['used', '']],
    ['3', ['sent', '']],
    ['all of that', ['sent', '']],
  ])('the answer “%s” is taken', async (answer, [state]) => {
    const did = await heard([
      ['09:00', 'tom', 'used and sent tip 2'],
      ['09:04', 'tom', '6 as well'],
      ['09:05', 'tom', answer],
    ]);
    expect(stateOf(did).tips['6']).toMatchObject({ state });
  });

  test('a plan, or a thing not done, stands between: asked, and yes counts from the note’s own time', async () => {
    const lines: Short[] = [
      ['09:00', 'tom', 'calibrated green, all good'],
      ['09:02', 'tom', 'haven’t done tip 4 yet'],
      ['09:04', 'tom', 'blue too'],
    ];
    expect(await underLast(...lines)).toEqual(['Blue scanner calibrated, passed too? yes or no']);
    const did = await heard([...lines, ['09:06', 'tom', 'yes']]);
    expect(stateOf(did).scanners.A.calibrated).toBe('2026-11-23T09:04:00Z');
  });

  test('only once in ten minutes in a chat room', async () => {
    const did = await heard([
      ['09:00', 'tom', 'used and sent tip 2'],
      ['09:01', 'tom', '6 as well'],
      ['09:02', 'tom', '7 as well'],
    ]);
    expect(under(did, '$3')).toHaveLength(1);
    expect(under(did, '$4')).toEqual([]);
  });
});

describe('never a guess across people, chat rooms or the minutes', () => {
  test('somebody else’s note is asked about, and nothing is taken', async () => {
    const lines: Short[] = [
      ['09:00', 'tom', 'used tip 5 on green'],
      ['09:01', 'dan', '6 as well'],
    ];
    expect(await underLast(...lines)).toEqual(['Tip 6 used too? yes or no']);
    expect(stateOf(await heard(lines)).tips['6'].state).toBe('sterile');
    const did = await heard([...lines, ['09:02', 'dan', 'yes']]);
    expect(stateOf(did).tips['6'].state).toBe('used');
    expect(stateOf(did).scanners.A.clean).toBe(true);
  });

  test.each([
    ['after more than ten minutes', '09:11', {}],
    ['in another chat room', '09:01', NORTH],
  ])('%s it is talk', async (_, time, more) => {
    const lines: Short[] = [
      ['09:00', 'tom', 'used tip 5'],
      [time, 'tom', '6 as well', more],
    ];
    expect(await underLast(...lines)).toEqual([]);
    expect(stateOf(await heard(lines)).tips['6'].state).toBe('sterile');
  });

  test('the minutes are the practice’s own', async () => {
    const practice = PRACTICE.replace('loadTable: uk', 'loadTable: uk, followOnMinutes: 2');
    const did = await heard(
      [
        ['09:00', 'tom', 'used tip 5'],
        ['09:03', 'tom', '6 as well'],
      ],
      [],
      practice,
    );
    expect(stateOf(did).tips['6'].state).toBe('sterile');
  });
});

describe('talk', () => {
  const WORDS = [
    'me too',
    'same here',
    'and 2 sugars',
    'you too',
    'same as last week',
    'and me',
    'same for Tuesday',
    'plus VAT',
    'and 3 coffees',
    'also her mum',
    'and the blue chair',
    'same time too',
    'nor me',
    'Dan didn’t',
  ];

  test('a minute after a note draws nothing', async () => {
    expect(await answeredAfter('used tip 5 on green', WORDS)).toEqual([]);
  });

  test('where nothing was told, nothing is said of items either', async () => {
    const items = [
      'blue too',
      '6 as well',
      'and green',
      'same for 5',
      'it’s sterile',
      'binned it',
      'both bagged',
    ];
    expect(await answeredAfter('', [...WORDS, ...items])).toEqual([]);
  });
});
