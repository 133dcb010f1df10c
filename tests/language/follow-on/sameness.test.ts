import { expect, test } from 'vitest';
import { samenessIn } from '../../../core/language/follow-on/sameness.ts';

/** What is left of a note that says "the same" when those words are off. */
test.each([
  ['blue too', 'blue'],
  ['and blue', 'blue'],
  ['And blue!', 'blue'],
  ['6 as well', '6'],
  ['8 aswell', '8'],
  ['4 aswel', '4'],
  ['6 as wel', '6'],
  ['6 tooo', '6'],
  ['6 aslo', '6'],
  ['also tip 2', 'tip 2'],
  ['tip 6 also', 'tip 6'],
  ['& 7', '7'],
  ['&7', '7'],
  ['+ 7', '7'],
  ['plus 3 and 4', '3 and 4'],
  ['same for white', 'white'],
  ['same with the white one pls', 'the white one'],
  ['Same for T4, thanks', 'T4'],
  ['same goes for blue', 'blue'],
  ['ditto blue', 'blue'],
  ['dito blue', 'blue'],
  ['blue likewise', 'blue'],
  ['likwise blue', 'blue'],
  ['blue done too', 'blue'],
  ['blue is too', 'blue'],
  ['oh and 6', '6'],
  ['6, 7 too', '6, 7'],
  ['and the other one', 'the other one'],
  ['so is the green one', 'the green one'],
  ['n green', 'green'],
  ['and 3. also 4', '3 also 4'],
])('“%s” says it of “%s”', (note, items) => {
  expect(samenessIn(note)).toEqual({ items, doubted: false });
});

test.each(['6 as well I think', 'blue too, maybe', '6 as well probably'])('“%s” doubts it', (note) => {
  expect(samenessIn(note)?.doubted).toBe(true);
});

test.each([
  ['green as well, all good', 'green', 'good'],
  ['green too passed', 'green', 'good'],
  ['6 too - fine', '6', 'good'],
  ['green didn’t', 'green', 'bad'],
  ['nor 5', '5', 'bad'],
  ['neither is 5', '5', 'bad'],
])('“%s” says of “%s” that it came out %s', (note, items, came) => {
  expect(samenessIn(note)).toEqual({ items, doubted: false, came });
});

test.each([
  'green all good',
  'blue too?',
  'blue',
  '6',
  'some for white',
  'came for blue',
  'too',
  'and',
  'also',
  'to 6 the',
  'and then we went over to the other place with all of the blue things we had left',
])('“%s” says nothing of the kind', (note) => {
  expect(samenessIn(note)).toBeNull();
});
