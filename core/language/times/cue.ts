import { type Parsed, type Scan, textAt } from './scan.ts';
import type { Bound } from './time-span.ts';

/**
 * How much a cue vouches for a bare number after it: `strong` ("at 4"), `weak` ("about 5", unless a count follows),
 * `range` ("from 9 to 1"), `list` ("…, 10:30 and 2"), `evident` ("on", "for": only what is a time by itself),
 * `none` (no cue at all).
 */
export type CueStrength = 'strong' | 'weak' | 'range' | 'list' | 'evident' | 'none';

export interface Cue {
  readonly bound: Bound;
  readonly strength: CueStrength;
  readonly about: boolean;
  /** The last cue word. */
  readonly word: string;
}

export const NO_CUE: Cue = { bound: 'at', strength: 'none', about: false, word: '' };

const CUES: ReadonlyMap<string, Omit<Cue, 'word'>> = new Map([
  ...cues('at @', 'at', 'strong'),
  ...cues('since', 'since', 'strong'),
  ...cues('until till til untill', 'until', 'strong'),
  ...cues('by', 'by', 'weak'),
  ...cues('before', 'before', 'weak'),
  ...cues('after', 'after', 'weak'),
  ...cues('from', 'since', 'range'),
  ...cues('between', 'at', 'range'),
  ...cues('about around bout circa approx approximately roughly ~ nearly', 'at', 'weak', true),
  ...cues('on in for over during through of', 'at', 'evident'),
]);

/** "Just after 3", "shortly before 3", "gone 3": near enough to be the time itself. */
const NEAR = new Set(['just', 'shortly', 'straight', 'right', 'soon', 'bit']);

/** The cue words at `i`, up to three of them ("since about", "just after"). */
export function cueAt(scan: Scan, i: number): Parsed<Cue> | null {
  // "Apart from 3" leaves tips out.
  if (textAt(scan, i) === 'from' && /^(apart|aside)$/.test(textAt(scan, i - 1))) return null;
  const near = nearAt(scan, i);
  if (near !== null) return near;
  let cue: Cue | null = null;
  let next = i;
  while (next < i + 3) {
    const word = textAt(scan, next);
    const found = CUES.get(word);
    if (found === undefined || (cue !== null && !follows(cue, found, word))) break;
    cue = joined(cue, found, word);
    next++;
  }
  return cue === null ? null : { value: cue, next };
}

function follows(cue: Cue, found: Omit<Cue, 'word'>, word: string): boolean {
  if (found.about) return cue.strength !== 'range';
  return word === 'at' && (cue.about || cue.word === 'from');
}

function joined(cue: Cue | null, found: Omit<Cue, 'word'>, word: string): Cue {
  if (cue === null) return { ...found, word };
  const strength = cue.strength === 'strong' || found.strength === 'strong' ? 'strong' : found.strength;
  return { bound: cue.bound, strength, about: cue.about || found.about, word };
}

function nearAt(scan: Scan, i: number): Parsed<Cue> | null {
  const first = textAt(scan, i);
  if (first === 'gone') return near(i + 1);
  if ((first === 'bang' || first === 'dead') && textAt(scan, i + 1) === 'on') return exact(i + 2);
  if (first === 'at' && textAt(scan, i + 1) === 'like') return near(i + 2);
  if (!NEAR.has(first)) return null;
  const second = textAt(scan, i + 1);
  if (second === 'after' || second === 'before' || second === 'gone' || second === 'past') return near(i + 2);
  return null;
}

function near(next: number): Parsed<Cue> {
  return { value: { bound: 'at', strength: 'weak', about: true, word: 'near' }, next };
}

/** "Bang on 9". */
function exact(next: number): Parsed<Cue> {
  return { value: { bound: 'at', strength: 'strong', about: false, word: 'at' }, next };
}

function cues(
  words: string,
  bound: Bound,
  strength: CueStrength,
  about = false,
): [string, Omit<Cue, 'word'>][] {
  return words.split(' ').map((word) => [word, { bound, strength, about }]);
}
