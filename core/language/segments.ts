import { hasSort, hasTag, type Part } from './part.ts';

/** A stretch between two joints of a sentence. */
export interface Segment {
  readonly parts: readonly Part[];
  /** The word or mark before it: "and", ",", "because"; empty at the start of a sentence. */
  readonly joint: string;
}

export interface Sentence {
  readonly segments: readonly Segment[];
  readonly question: boolean;
  readonly quoted: boolean;
}

const HARD = new Set(['.', '!', '?', ';', '\n', '--']);
const SOFT_MARKS = new Set([',', '(', ')', ':', '/', '&', '+', '-', '[', ']', '|', '•', '*', '>', '=']);
const SOFT_WORDS = new Set([
  'and',
  'then',
  'but',
  'so',
  'also',
  'n',
  'plus',
  'because',
  'cos',
  'coz',
  'cuz',
  'bc',
  'as',
  'since',
  'while',
  'and then',
  'which',
  'after that',
  'afterwards',
  'though',
  'although',
  'an',
  'whereas',
  'tho',
  'therefore',
  'hence',
  'nd',
  'meanwhile',
  'who',
]);
const REASONS = new Set(['because', 'cos', 'coz', 'cuz', 'bc', 'as', 'since']);

export function isReason(joint: string): boolean {
  return REASONS.has(joint);
}

/** The sentences of a note, cut into segments at marks and joining words. */
export function sentencesOf(parts: readonly Part[], spaced: (part: Part) => boolean): Sentence[] {
  const sentences: Sentence[] = [];
  let segments: Segment[] = [];
  let current: Part[] = [];
  let joint = '';
  let quoted = false;
  let hasQuote = false;
  const closeSegment = (next: string) => {
    if (current.length > 0) segments.push({ parts: current, joint });
    current = [];
    joint = next;
  };
  const closeSentence = (question: boolean) => {
    closeSegment('');
    if (segments.length > 0) sentences.push({ segments, question, quoted: hasQuote });
    segments = [];
    joint = '';
    hasQuote = quoted;
  };
  for (const [i, part] of parts.entries()) {
    if (part.mark && part.text === '"') {
      quoted = !quoted;
      if (quoted && parts.slice(i + 1).some((later) => later.mark && later.text === '"')) hasQuote = true;
      continue;
    }
    if (part.mark && HARD.has(part.text)) {
      const question =
        part.text === '?' || parts[i + 1]?.text === '?' || (part.text === '!' && parts[i + 1]?.text === '?');
      if (part.text === '?' && current.length === 0 && segments.length === 0) continue;
      closeSentence(question);
      continue;
    }
    if (part.mark && SOFT_MARKS.has(part.text)) {
      if (part.text === '-' && !spaced(part)) continue;
      if (part.text === '/' && !spaced(part)) continue;
      if (part.text === '>' && current.length === 0 && segments.length === 0) hasQuote = true;
      closeSegment(current.length === 0 && joint !== '' && joint !== ',' ? joint : part.text);
      continue;
    }
    if (part.mark && !hasSort(part, 'verb') && part.text !== '->') continue;
    if (part.entity === undefined && SOFT_WORDS.has(part.text) && joins(parts, i)) {
      closeSegment(part.text);
      if (hasTag(part, 'wh') && part.text === 'which') current.push(part);
      continue;
    }
    current.push(part);
  }
  closeSentence(false);
  return sentences;
}

/** "As" and "so" join only where something stands on both sides; "which" opens a question at the start. */
function joins(parts: readonly Part[], at: number): boolean {
  const text = parts[at]?.text ?? '';
  const next = parts[at + 1];
  if (text === 'as' && /^(well|usual|normal|per|planned|soon)$/.test(next?.text ?? '')) return false;
  if (text === 'which' || text === 'who') return at > 0 && parts[at - 1]?.text === ',';
  if (text === 'an') return next !== undefined && hasSort(next, 'verb');
  if (text === 'since') return next?.entity?.is !== 'time' && at > 0;
  return true;
}
