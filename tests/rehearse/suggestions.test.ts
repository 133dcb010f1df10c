import { describe, expect, test } from 'vitest';
import { end, play, posts, type Short, script, stateOf } from './play.ts';

const COUNTED: Short = ['08:00', 'rosa', 'tips 1 to 8 are sterile and on the shelf'];

async function heard(...lines: readonly Short[]) {
  return await play([...script([COUNTED, ...lines]), end('12:00')]);
}

/** Words of what was asked back of those notes. */
async function asked(...lines: readonly Short[]): Promise<readonly string[]> {
  const asking = posts(await heard(...lines), 'question').filter(({ replyTo }) => replyTo?.startsWith('$'));
  return asking.map(({ text = '' }) => text);
}

describe('a thing alone that the practice has none of', () => {
  test.each([
    ['tip 44', 'There is no tip 44. Did you mean tip 4? What was done with it?'],
    ['tip44', 'There is no tip 44. Did you mean tip 4? What was done with it?'],
    ['scaner D', 'There is no scanner D. Did you mean blue scanner or green scanner? What was done with it?'],
    ['norht', 'Did you mean North Clinic? Say what was done, such as “moved blue scanner to North Clinic”.'],
  ])('“%s” gets one line', async (note, line) => {
    expect(await asked(['10:00', 'tom', note])).toEqual([line]);
  });

  test.each(['tips', 'tip 4', 'north', 'scanner A', 'morning', 'nort pole', 'green', 'tip top', 'note 44'])(
    '“%s” gets none',
    async (note) => {
      expect(await asked(['10:00', 'tom', note])).toEqual([]);
    },
  );

  test('no second line in ten minutes, and another after them', async () => {
    const lines = await asked(
      ['10:00', 'tom', 'tip 44'],
      ['10:09', 'rosa', 'norht'],
      ['10:10', 'tom', 'tip 55'],
    );
    expect(lines.map((line) => line.slice(0, 22))).toEqual([
      'There is no tip 44. Di',
      'There is no tip 55. Di',
    ]);
  });
});

describe('a note with too many slips to be taken', () => {
  const NOTE: Short = ['10:00', 'tom', 'wipeed dwonn grreeen'];

  test('is asked back as it was probably meant', async () => {
    expect(await asked(NOTE)).toEqual(['Did you mean “wiped down green”? yes or no']);
  });

  test.each(['yes', 'yesss', 'yep', 'of course'])('counts from its own time after “%s”', async (word) => {
    const did = await heard(['09:50', 'tom', 'scan done on green'], NOTE, ['10:05', 'tom', word]);
    expect(stateOf(did).scanners.B.clean).toBe(true);
  });

  test.each(['no', 'nope'])('says nothing after “%s”', async (word) => {
    const did = await heard(['09:50', 'tom', 'scan done on green'], NOTE, ['10:05', 'tom', word]);
    expect(stateOf(did).scanners.B.clean).toBe(false);
  });
});

test('a yes-or-no question offers a tick and a cross, and no numbers that its text does not show', async () => {
  const did = await heard(
    ['10:00', 'tom', 'I think tip 4 went to the autoclave'],
    ['10:01', 'tom', '', { reacts: { last: 'question' }, key: '✅' }],
  );
  expect(stateOf(did).tips['4'].state).toBe('sent');
});
