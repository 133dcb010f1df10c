import { expect, test } from 'vitest';
import { pronounIn } from '../../../core/language/follow-on/pronoun.ts';

/** How a note reads with a name in the place of what stands for it. */
test.each([
  ['binned it', 'one', 'binned X'],
  ['found it', 'one', 'found X'],
  ['wiped it down', 'one', 'wiped X down'],
  ['took it off', 'one', 'took X off'],
  ['put it on blue', 'one', 'put X on blue'],
  ['it’s gone to steri', 'one', 'X has gone to steri'],
  ['its been binned', 'one', 'X has been binned'],
  ['its mirror is cracked', 'one', "X's mirror is cracked"],
  ["it's fogging", 'one', 'X is fogging'],
  ["that one's fogging", 'one', 'X is fogging'],
  ['washed it and bagged it', 'one', 'washed X and bagged X'],
  ["they're both in the ultrasonic", 'two', 'X are in the ultrasonic'],
  ['both bagged', 'two', 'X bagged'],
  ['bagged them both', 'two', 'bagged X'],
  ['sent both of them', 'two', 'sent X'],
  ["They're bagged", 'several', 'X are bagged'],
  ["found 'em", 'several', 'found X'],
  ['sent them off', 'several', 'sent X off'],
  ['wiped the other one', 'other', 'wiped X'],
  ['wiped down', 'left-out', 'X wiped down'],
  ['and covered', 'left-out', 'X covered'],
  ['washed, bagged now', 'left-out', 'X washed, bagged'],
])('“%s”: %s, “%s”', (note, standing, said) => {
  const pronoun = pronounIn(note);
  expect([pronoun?.standing, pronoun?.saying('X')]).toEqual([standing, said]);
});

test.each([
  'binned it?',
  'sorry about it',
  'both scanners wiped',
  'both of the tips are bagged',
  'bit late today',
  'wiped blue',
  'it came and they went',
  'I told her that we would have it back by the end of the week',
])('“%s” stands for nothing told of before', (note) => {
  expect(pronounIn(note)).toBeNull();
});
