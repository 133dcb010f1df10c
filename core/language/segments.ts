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

/** Builds sentences as marks and joining words are met. */
class Builder {
  readonly sentences: Sentence[] = [];
  #segments: Segment[] = [];
  #current: Part[] = [];
  #joint = '';
  #quoting = false;
  #quoted = false;

  get opens(): boolean {
    return this.#current.length === 0 && this.#segments.length === 0;
  }

  add(part: Part): void {
    this.#current.push(part);
  }

  /** A quotation mark; `closed` says that another follows. */
  quote(closed: boolean): void {
    this.#quoting = !this.#quoting;
    if (this.#quoting && closed) this.#quoted = true;
  }

  /** A line that begins with ">" repeats another's words. */
  cite(): void {
    this.#quoted = true;
  }

  mark(text: string): void {
    const kept = this.#current.length === 0 && this.#joint !== '' && this.#joint !== ',';
    this.join(kept ? this.#joint : text);
  }

  join(joint: string): void {
    if (this.#current.length > 0) this.#segments.push({ parts: this.#current, joint: this.#joint });
    this.#current = [];
    this.#joint = joint;
  }

  /** "I think 41 went in??" tells what is doubted; it asks nobody. */
  #doubts(): boolean {
    const [first, second] = this.#segments[0]?.parts ?? [];
    const opener = /^(so|and|but|well|ok|okay|hmm|oh)$/.test(first?.text ?? '') ? second : first;
    return (
      opener?.entity === undefined && /^(i think|i reckon|i thought|i believe)$/.test(opener?.text ?? '')
    );
  }

  end(question: boolean): void {
    const tagged = isTagged([...this.#segments.flatMap((s) => s.parts), ...this.#current]);
    this.join('');
    if (this.#segments.length > 0)
      this.sentences.push({
        segments: this.#segments,
        question: (question || tagged) && !this.#doubts(),
        quoted: this.#quoted,
      });
    this.#segments = [];
    this.#quoted = this.#quoting && this.#quoted;
  }
}

/** "5 is sterile isn't it", "blue's been done, hasn't it": told to be told again. */
function isTagged(parts: readonly Part[]): boolean {
  const words = parts.filter((p) => !p.mark).slice(-2);
  const text = words.map((p) => (p.entity === undefined ? p.text : '')).join(' ');
  return parts.length > 3 && TAG.test(text);
}

const TAG =
  /(?:^| )(?:(?:isn't|isnt|wasn't|wasnt|aren't|arent|weren't|hasn't|hasnt|haven't|havent|didn't|didnt|doesn't|won't|ain't) ?(?:it|they|he|she|we|that|you)|innit)$/;

/** The sentences of a note, cut into segments at marks and joining words. */
export function sentencesOf(parts: readonly Part[], spaced: (part: Part) => boolean): Sentence[] {
  const built = new Builder();
  const lastQuote = parts.findLastIndex((part) => part.mark && part.text === '"');
  for (const [i, part] of parts.entries()) {
    if (part.mark && part.text === '"') built.quote(lastQuote > i);
    else if (part.mark && HARD.has(part.text)) endAt(parts, i, built);
    else if (part.mark && SOFT_MARKS.has(part.text)) softMark(part, spaced, built);
    else if (part.mark && !hasSort(part, 'verb') && part.text !== '->') continue;
    else softWord(parts, i, part, built);
  }
  built.end(false);
  return built.sentences;
}

/** A word that joins two clauses; it stays with the second where that could not be read without it. */
function softWord(parts: readonly Part[], i: number, part: Part, built: Builder): void {
  const joint = part.entity === undefined && SOFT_WORDS.has(part.text) && joins(parts, i);
  const after = part.entity === undefined && part.text === 'after' && tellsDone(parts, i);
  if (joint || after) built.join(part.text);
  if (!joint || after || asksOf(parts, i)) built.add(part);
}

/** "Put M4 on after taking M3 off": what was done before. */
function tellsDone(parts: readonly Part[], at: number): boolean {
  const next = parts[at + 1];
  return (
    at > 1 &&
    next?.entity === undefined &&
    ['take', 'remove', 'wash', 'bag', 'wipe', 'clean'].some(
      (tag) => next?.senses.some((s) => s.tag === tag && s.form === 'g') === true,
    )
  );
}

function asksOf(parts: readonly Part[], at: number): boolean {
  const text = parts[at]?.text;
  return text === 'which' || (text === 'who' && asksWho(parts, at));
}

/** "Load 43 failed, who got those tips?" asks; "Rosa, who wiped blue" tells. */
function asksWho(parts: readonly Part[], at: number): boolean {
  const verb = /^(got|had|used|has|took)$/.test(parts[at + 1]?.text ?? '');
  const those = /^(those|these|them|the|that|which)$/.test(parts[at + 2]?.text ?? '');
  return verb && those && parts.slice(0, at).some((p) => p.entity?.is === 'load' || hasTag(p, 'fail'));
}

function endAt(parts: readonly Part[], i: number, built: Builder): void {
  const text = parts[i]?.text;
  if (text === '?' && built.opens) return;
  built.end(text === '?' || parts[i + 1]?.text === '?');
}

/** Hyphens and strokes inside words and between numbers join nothing. */
function softMark(part: Part, spaced: (part: Part) => boolean, built: Builder): void {
  if ((part.text === '-' || part.text === '/') && !spaced(part)) return;
  if (part.text === '>' && built.opens) built.cite();
  built.mark(part.text);
}

/** "As" and "so" join only where something stands on both sides; "which" opens a question at the start. */
function joins(parts: readonly Part[], at: number): boolean {
  const text = parts[at]?.text ?? '';
  const next = parts[at + 1];
  if (text === 'as' && /^(well|usual|normal|per|planned|soon)$/.test(next?.text ?? '')) return false;
  if (text === 'which' || text === 'who') return at > 0 && parts[at - 1]?.text === ',';
  if (text === 'also' && parts[at - 1]?.entity?.is === 'person') return false;
  if (text === 'an') return next !== undefined && hasSort(next, 'verb');
  if (text === 'since') return next?.entity?.is !== 'time' && at > 0;
  return true;
}
