import { describe, expect, test } from 'vitest';
import { end, play, posts, type Short, script } from './play.ts';

const COUNTED: Short = ['08:00', 'rosa', 'tips 1 to 8 are sterile and on the shelf'];

/** What is read back of a note. */
async function readBack(note: string): Promise<readonly string[]> {
  const did = await play([...script([COUNTED, ['10:00', 'tom', note]]), end('12:00')]);
  return posts(did, 'record').flatMap(({ text = '', at }) => (at.includes('T10:00') ? [text] : []));
}

describe('given a name or a place was read through a slip', () => {
  test.each([
    ['moved blue to norht', 'Taken as North Clinic.'],
    ['moved gren to north', 'Taken as green scanner.'],
    ['moved gren to norht', 'Taken as green scanner; taken as North Clinic.'],
    ['wiped down greeen', 'Taken as green scanner.'],
    ['put gren in surgrey 2', 'Taken as green scanner; taken as Surgery 2, Quay Street.'],
  ])('“%s”, then how it was taken is read back in one line', async (note, line) => {
    expect(await readBack(note)).toEqual([line]);
  });
});

describe('given no name was', () => {
  test.each([
    'moved blue to north',
    "green's wiped",
    'wipd down green',
    'usd tip 4',
    'moved the blue scanner to quay street',
    'blue is in room two',
    'Tom wiped green',
    'Sarah wiped green',
  ])('“%s”, then a thumb is enough', async (note) => {
    expect(await readBack(note)).toEqual([]);
  });
});
