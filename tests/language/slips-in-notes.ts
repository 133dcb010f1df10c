import type { Reading } from '../../core/reading/reading.ts';
import type { CorpusCase } from '../corpus/format.ts';
import { type Verdict, verdictOf } from '../corpus/report.ts';
import { matches } from '../corpus/same-reading.ts';
import { practiceAt, readerAt } from './practice-at.ts';
import { OPERATIONS, type Operation, seeded, slip } from './slips.ts';

/** A note that is read exactly, with one slip in it. */
export interface Slipped {
  readonly one: CorpusCase;
  readonly text: string;
  readonly from: string;
  readonly to: string;
  readonly operation: Operation;
  readonly got: Reading;
  readonly verdict: Verdict;
}

/** Numbers in words are numbers: a slip may turn one into another, which nobody can see. */
const NUMBER_WORD =
  /^(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|(twen|thir|for|fif|six|seven|eigh|nine)ty|hundred|half|quarter)$/i;
/** Shorter words are as often another word as a slip. */
const SHORTEST = 3;

/** Where a slip may fall: words of letters alone, or else what is a number or an id. */
export type Where = 'word' | 'number';

/** Every note of the cases that is read exactly, each with one slip of a kind and place that its own text and the seed decide. */
export function slippedNotes(cases: readonly CorpusCase[], where: Where, seed: number): readonly Slipped[] {
  return cases.flatMap((one) => {
    if (!matches(one.expected, readNote(one, one.note))) return [];
    const chance = seeded(hash(one.note) ^ Math.imul(seed, 0x9e3779b1));
    const made = withSlip(one, where, chance);
    if (made === null) return [];
    const got = readNote(one, made.text);
    return [{ one, ...made, got, verdict: bestVerdict(one.expected, made, got) }];
  });
}

/** A reason is kept in the note's own words, so it may hold the slip; put right there is as good. */
function bestVerdict(expected: Reading, { from, to }: { from: string; to: string }, got: Reading): Verdict {
  const slipped = new RegExp(`(?<!\\p{L})${to}(?!\\p{L})`, 'iu');
  const mended = <T extends object>(entry: T): T =>
    'reason' in entry && typeof entry.reason === 'string'
      ? { ...entry, reason: entry.reason.replace(slipped, from) }
      : entry;
  return verdictOf(expected, { ...got, facts: got.facts.map(mended), acts: got.acts.map(mended) });
}

function withSlip(one: CorpusCase, where: Where, chance: () => number) {
  const places = placesIn(one, where);
  for (let tries = 0; tries < 8 && places.length > 0; tries++) {
    const place = places[Math.floor(chance() * places.length)];
    const operation = OPERATIONS[Math.floor(chance() * OPERATIONS.length)];
    if (place === undefined || operation === undefined) return null;
    const to = slip(place[0], operation, chance);
    if (to === null) continue;
    const text = one.note.slice(0, place.index) + to + one.note.slice(place.index + place[0].length);
    return { text, from: place[0], to, operation };
  }
  return null;
}

function placesIn(one: CorpusCase, where: Where): readonly RegExpExecArray[] {
  const ids = idsOf(one);
  return [...one.note.matchAll(/[\p{L}\p{N}]+/gu)].filter(([run]) => {
    if (where === 'number') return /\d/.test(run) && ids.has(run.toLowerCase());
    const word = run.length >= SHORTEST && /^[a-z]+$/i.test(run);
    return word && !NUMBER_WORD.test(run) && !ids.has(run.toLowerCase());
  });
}

const idsOfPractice = new Map<string, ReadonlySet<string>>();

/** Ids of tips, scanners, autoclaves and rooms, in small letters: not their names, which are words. */
function idsOf({ practicePath }: CorpusCase): ReadonlySet<string> {
  const known = idsOfPractice.get(practicePath);
  if (known !== undefined) return known;
  const { tips, scanners, autoclaves } = practiceAt(practicePath);
  const ids = new Set([...tips, ...scanners, ...autoclaves].map(({ id }) => id.toLowerCase()));
  idsOfPractice.set(practicePath, ids);
  return ids;
}

function readNote({ practicePath, context: { at, from, room } }: CorpusCase, text: string): Reading {
  return readerAt(practicePath)(text, {
    at: Date.parse(at),
    ...(from === undefined ? {} : { from }),
    ...(room === undefined ? {} : { room }),
  }).reading;
}

/**
 * The id that the slip spoilt, in a fact all the same though nobody typed it.
 * What lies within a range is not typed either and is not counted; nor is the number without its letters ("7" for T7), which is
 * how people name a tip.
 */
export function guessedId({ one, from, text, got }: Slipped): boolean {
  const typed = new Set((text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []).map(plain));
  if ([from.toLowerCase(), from.replace(/\D/g, '')].some((id) => typed.has(plain(id)))) return false;
  if (/\d\s*(-|–|to|thru|through)\s*\w*\d/i.test(one.note)) return false;
  return got.facts.some((fact) => tipsIn(fact).includes(from.toLowerCase()));
}

function tipsIn(fact: Reading['facts'][number]): readonly string[] {
  const items = 'items' in fact ? fact.items.map((item) => item.split(':')[1] ?? '') : [];
  const one = 'tip' in fact && typeof fact.tip === 'string' ? [fact.tip] : [];
  const many = 'tips' in fact ? (fact.tips ?? []) : [];
  return [...items, ...one, ...many].map((id) => id.toLowerCase());
}

/** "04" and "4" are one number. */
function plain(run: string): string {
  return run.replace(/^0+(?=\d)/, '');
}

function hash(text: string): number {
  let h = 0x811c9dc5; // FNV-1a, 32 bits
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h >>> 0;
}
