import { expect, test } from 'vitest';
import { whyWords } from '../../core/words/why-words.ts';
import { readerAt } from './practice-at.ts';

const AT = { at: Date.parse('2026-11-24T12:40:00Z'), room: '!capel:example.org' };
const PRACTICE = new URL('../corpus/practices/w4-liffeyside.yaml', import.meta.url).pathname;

/** The reasons of a note, a line for each entry, without "when" where the note says none. */
function why(note: string): readonly string[] {
  return readerAt(PRACTICE)(note, AT).why.map((one) =>
    whyWords(one).replace("; when: the note's own time", ''),
  );
}

/** Looked at one by one: each says the words that gave the slot, or how it was filled in. */
const TOLD: readonly (readonly [note: string, reasons: readonly string[]])[] = [
  ['moved pearl to dock', ['moved: what “pearl”; site “dock”']],
  ['tip 4 on ruby', ['tip put on: tip “tip 4”; scanner “ruby”']],
  ['used tip 4, sent to autoclave', ['used: tips “tip 4”', 'sent: tips: the tips spoken of just before']],
  ['load 118 on with tips 2, 5, 7', ['load put on: load “load 118”; tips “tips 2, 5, 7”']],
  [
    'load 118 passed on bertha, 134 for 3.5 min',
    [
      'load’s result: load “load 118”; outcome “passed”; degrees and minutes “134 for 3.5 min”; autoclave “bertha”',
    ],
  ],
  [
    'Tom wiped ruby at 9 and put the cover on',
    [
      'wiped: scanner “ruby”; part: all of it, where the note names no part; who “Tom”; when “at 9”',
      'covered: scanner: the scanner spoken of just before; who: who was spoken of just before',
    ],
  ],
  [
    'calibrated opal yesterday at 5',
    ['calibrated: scanner “opal”; outcome: passed unless the note says otherwise; when “yesterday at 5”'],
  ],
  ['all the used tips bar 3 sent', ['sent: which tips and left out “all the used tips bar 3”']],
  ['which tips are out?', ['question: tips: which tips: the words as a whole']],
  ["where's ruby?", ['question: where: what “ruby”']],
  ['sorry, tip 5 not 4', ['a correction: from “sorry, tip 5 not 4”']],
  ['remind me in 20 minutes', ['put off: from “remind me in 20 minutes”']],
  [
    "mirror on 12 is cracked, don't use it",
    [
      'fault: what “12”; sort “cracked”',
      'held: what: what was spoken of just before; reason “mirror on 12 is cracked”',
    ],
  ],
  ['22 degrees in surgery 2', ['temperature: degrees “22 degrees”; site and room “surgery 2”']],
  ['6 scans tomorrow at dock', ['scans booked: count “6”; day “tomorrow”; site “dock”']],
  ['I think tip 4 went to the autoclave', ['in doubt: sent: from “I think tip 4 went to the autoclave”']],
  ['tip 44 sent', ['asked back: sent: from “tip 44 sent”']],
  ['calibrated the scanner', ['asked back: calibrated: from “calibrated the scanner”']],
  [
    'will calibrate ruby after lunch',
    [
      'meant, not done: calibrated: scanner “ruby”; outcome: passed unless the note says otherwise; when “after lunch”',
    ],
  ],
  ['spore test came back clear on bertha', ['spore test: outcome “clear”; autoclave “bertha”']],
  ["October's record please", ["question: record: from and to “October's”"]],
];

test.each(TOLD)('“%s”', (note, reasons) => {
  expect(why(note)).toEqual(reasons);
});

test('every slot of every entry is accounted for', () => {
  for (const [note] of TOLD) {
    const { reading, why: whys } = readerAt(PRACTICE)(note, AT);
    for (const { list, index, slots } of whys.filter((one) => one.list === 'facts')) {
      const { kind: _kind, earliest: _earliest, ...told } = reading.facts[index] ?? { kind: '' };
      expect([note, list, Object.keys(slots).sort()]).toEqual([note, 'facts', Object.keys(told).sort()]);
    }
  }
});
