import { cutAtActs } from './cuts.ts';
import { LIGHT_VERBS } from './lexicon/light.ts';
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

/** The parts of a draft less its marks. */
export function saidIn(draft: Draft | undefined): readonly Part[] {
  return (draft?.parts ?? []).filter((part) => !part.mark);
}

export type SegmentSort = 'act' | 'entities' | 'outcome' | 'time' | 'talk';

/** Verbs that make no act of a segment by themselves: those that weigh little, and what is done to anything. */
const LIGHT = new Set([...LIGHT_VERBS, 'fail', 'put', 'open', 'start', 'show']);

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
  return found.has('time') && parts.every(besideTime) && !isOfElse(parts) ? 'time' : 'talk';
}

/** "Lunch is at 1", "home at 5", "next patient 2pm", "Tom is in at 2": a time of something else, not of what was told before. */
function isOfElse(parts: readonly Part[]): boolean {
  const said = parts.filter((p) => !p.mark && p.entity?.is !== 'time');
  if (said.some((p) => hasTag(p, 'patient'))) return true;
  const someone = said.findIndex((p) => p.entity?.is === 'person');
  if (someone >= 0 && /^(?:is|'s|are|was|back|in|off|out)$/.test(said[someone + 1]?.text ?? '')) return true;
  return said.some((p) => p.entity === undefined && ELSE.test(p.text));
}

const ELSE =
  /^(?:lunch|lunchtime|home|back|next|off|out|gone|here|break|tea|coffee|brunch|dinner|breakfast|see|bye|leaving|finish(?:ed|ing)? work)$/;

function besideTime(part: Part): boolean {
  return part.mark || part.entity?.is === 'time' || part.entity?.is === 'person' || hasSort(part, 'glue');
}

function heavy(part: Part): boolean {
  return part.senses.some(
    (s) => (s.sort === 'verb' && !LIGHT.has(s.tag)) || (s.sort === 'noun' && EVENTS.includes(s.tag)),
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
