import { hasSort, hasTag, type Part } from './part.ts';
import type { Segment, Sentence } from './segments.ts';

/** A clause before it is read: its parts and how it stands in the note. */
export interface Draft {
  readonly parts: readonly Part[];
  readonly joint: string;
  readonly sort: SegmentSort;
  /** Number of its sentence. */
  readonly sentence: number;
  readonly question: boolean;
  readonly quoted: boolean;
}

export type SegmentSort = 'act' | 'entities' | 'outcome' | 'time' | 'talk';

const LIGHT = new Set([
  'be',
  'have',
  'do',
  'say',
  'see',
  'know',
  'keep',
  'need',
  'work',
  'get',
  'go',
  'give',
  'come',
  'finish',
  'pass',
  'fail',
  'turn',
  'check',
  'put',
  'open',
  'start',
  'show',
]);
const OUTCOME = new Set(['pass', 'fail', 'finish', 'be', 'have', 'do', 'come', 'go', 'get']);
const EVENTS = [
  'temp',
  'cover',
  'spore',
  'penetration',
  'control',
  'leak',
  'scan',
  'booking',
  'strip',
  'pouch',
  'debris',
  'magnifier',
  'inspection',
  'seal',
];

/** What one part makes of the segment that it stands in. */
type Bearing = 'act' | 'entity' | 'outcome' | 'time' | 'strange' | 'none';

const THINGS = ['tip', 'scanner', 'autoclave', 'caltip', 'lens', 'base'];

function bearingOf(part: Part): Bearing {
  const is = part.entity?.is;
  if (is === 'time') return 'time';
  if (is === 'celsius' || is === 'cycle') return 'act';
  if (is === 'person' || is === 'number') return 'none';
  if (is !== undefined) return 'entity';
  if (heavy(part)) return 'act';
  if (part.senses.some((s) => s.sort === 'verb' && (s.tag === 'pass' || s.tag === 'fail'))) return 'outcome';
  if (part.senses.some((s) => (s.sort === 'noun' && THINGS.includes(s.tag)) || s.tag === 'steri'))
    return 'entity';
  return part.unknown || hasSort(part, 'other') ? 'strange' : 'none';
}

/** What a segment is by itself: tells an act, only names things, only a result, only a time, or none of these. */
export function sortOf(parts: readonly Part[]): SegmentSort {
  const found = new Set(parts.map(bearingOf));
  if (found.has('act')) return 'act';
  if (found.has('entity')) return 'entities';
  if (found.has('strange')) return 'talk';
  if (found.has('outcome')) return 'outcome';
  return found.has('time') && parts.every(besideTime) ? 'time' : 'talk';
}

function besideTime(part: Part): boolean {
  return part.mark || part.entity?.is === 'time' || part.entity?.is === 'person' || hasSort(part, 'glue');
}

function heavy(part: Part): boolean {
  return part.senses.some(
    (s) => (s.sort === 'verb' && !LIGHT.has(s.tag)) || (s.sort === 'noun' && EVENTS.includes(s.tag)),
  );
}

/** Verbs that open a clause of their own where no joint was written ("used tip four on blue wiped it down"). */
function starter(part: Part): string | null {
  if (part.entity !== undefined) return null;
  for (const sense of part.senses) {
    if (sense.sort === 'verb' && sense.form === 'd' && !SHADES.has(sense.tag)) return sense.tag;
  }
  return null;
}
const SHADES = new Set([
  'be',
  'have',
  'do',
  'pass',
  'fail',
  'finish',
  'get',
  'see',
  'say',
  'know',
  'give',
  'keep',
  'come',
  'go',
  'need',
  'open',
  'turn',
  'tear',
  'crack',
  'start',
  'check',
  'show',
  'release',
  'add',
  'sick',
  'dead',
  'cover-up',
  'work',
  'run',
  'cold',
  'disconnect',
]);

/** "Scan done", "tip 10 off": an act told without a verb of its own. */
function ending(parts: readonly Part[], i: number): string | null {
  const part = parts[i];
  if (part === undefined || part.entity !== undefined) return null;
  if (
    hasTag(part, 'finish') &&
    parts.slice(Math.max(0, i - 3), i).some((p) => hasTag(p, 'scan') || hasTag(p, 'calibrate'))
  )
    return 'finish';
  if (
    part.text === 'off' &&
    parts[i - 1]?.entity?.is === 'tips' &&
    !parts.slice(0, i).some((p) => hasTag(p, 'take') || hasTag(p, 'remove') || hasTag(p, 'put'))
  )
    return 'off';
  return part.text === 'on' &&
    parts[i - 1]?.entity?.is === 'tips' &&
    parts.slice(0, i - 1).some((p) => p.text === 'off')
    ? 'on'
    : null;
}

/** "Sent it to be autoclaved": what it was sent for. */
function isPurpose(parts: readonly Part[], i: number): boolean {
  return /^(to be|be)$/.test(parts[i - 1]?.text ?? '') && parts.slice(0, i).some((p) => hasTag(p, 'send'));
}

const OBJECTS = new Set(['tips', 'scanner', 'load', 'some', 'autoclave']);

function isObject(part: Part | undefined): boolean {
  if (part === undefined) return false;
  if (part.entity !== undefined) return OBJECTS.has(part.entity.is);
  return (
    hasTag(part, 'tip') ||
    hasTag(part, 'scanner') ||
    hasTag(part, 'lens') ||
    hasTag(part, 'base') ||
    hasTag(part, 'cover')
  );
}

/** Nobody writes more than this without a mark; past it a segment is left whole, so that the cost stays linear. */
const LONGEST = 200;

/** Cuts a segment that holds several acts with no joint between them. */
export function cutAtActs(parts: readonly Part[]): (readonly Part[])[] {
  const starts = parts
    .map((part, i) => ({ i, tag: isPurpose(parts, i) ? null : (starter(part) ?? ending(parts, i)) }))
    .filter((s) => s.tag !== null);
  if (starts.length < 2 || parts.length > LONGEST) return [parts];
  const cuts: number[] = [];
  for (let k = 1; k < starts.length; k++) {
    const before = starts[k - 1];
    const here = starts[k];
    if (before === undefined || here === undefined || before.tag === here.tag) continue;
    const cut = cutBetween(parts, cuts.at(-1) ?? 0, before.i, here.i);
    if (cut > (cuts.at(-1) ?? 0)) cuts.push(cut);
  }
  const pieces: (readonly Part[])[] = [];
  let from = 0;
  for (const cut of [...cuts, parts.length]) {
    if (cut > from) pieces.push(parts.slice(from, cut));
    from = cut;
  }
  return pieces;
}

/** Steps that are told one after another with nothing between ("used washed bagged"). */
const ROUND = new Set([
  'use',
  'wash',
  'bag',
  'send',
  'wipe',
  'cover',
  'sterile',
  'check',
  'remove',
  'clean',
  'sterilise',
]);

function tagOf(part: Part | undefined): string {
  return part === undefined ? '' : (starter(part) ?? '');
}

function cutBetween(parts: readonly Part[], from: number, first: number, second: number): number {
  const between = parts.slice(first + 1, second);
  const objects = between.filter(isObject).length;
  const pronoun = between.some((p) => /^(it|them|that|off|down|on)$/.test(p.text) || p.entity !== undefined);
  if (objects === 0 && !pronoun && !(ROUND.has(tagOf(parts[first])) && ROUND.has(tagOf(parts[second]))))
    return -1;
  const subjectFirst = parts.slice(from, first).some(isObject);
  let at = second;
  while (at > first + 1 && glueOnly(parts[at - 1])) at--;
  if (isObject(parts[at - 1]) && (subjectFirst || objects > 1)) {
    at--;
    while (at > first + 1 && /^(the|and|then|our)$/.test(parts[at - 1]?.text ?? '')) at--;
  }
  return at > first ? at : -1;
}

function glueOnly(part: Part | undefined): boolean {
  if (part === undefined || part.entity !== undefined) return false;
  return (
    /^(and|then|i|we|i've|we've|have|has|been|just|also|now|it's|its|it|was|is|are|were|'s|they|they're|ive|weve|all|both|not|never|haven't|hasn't|had|he|she|i then|i have|then i)$/.test(
      part.text,
    ) && !/^(it)$/.test(part.text)
  );
}

/** The drafts of a note's clauses, in order. */
export function draftsOf(sentences: readonly Sentence[]): Draft[] {
  const drafts: Draft[] = [];
  for (const [number, sentence] of sentences.entries()) {
    for (const segment of sentence.segments) addSegment(drafts, segment, sentence, number);
  }
  return drafts;
}

function addSegment(drafts: Draft[], segment: Segment, sentence: Sentence, number: number): void {
  const pieces = cutAtActs(segment.parts);
  for (const [i, parts] of pieces.entries()) {
    drafts.push({
      parts,
      joint: i === 0 ? segment.joint : 'then',
      sort: sortOf(parts),
      sentence: number,
      question: sentence.question,
      quoted: sentence.quoted,
    });
  }
}

/** True where a segment only adds a result to what went before ("all good", "passed", "both fine"). */
export function isOutcomeOnly(parts: readonly Part[]): boolean {
  return parts.every(
    (part) =>
      part.mark ||
      part.text === 'one' ||
      hasSort(part, 'glue') ||
      part.senses.some((s) => OUTCOME.has(s.tag)) ||
      part.entity?.is === 'time' ||
      part.senses.some((s) => s.tag === 'neg'),
  );
}
