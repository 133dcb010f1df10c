import type { Scored } from '../note.ts';
import type { Part } from '../part.ts';
import type { NoteRead } from '../read.ts';
import type { Token } from '../token.ts';
import { Choice } from './choice.ts';
import type { Spelling } from './spelling.ts';

/** A note as read from one choice of words. */
export interface TokensRead {
  readonly read: Scored;
  /** How many words nobody knows. */
  readonly strange: number;
  readonly parts: readonly Part[];
  /** The question about words that stand where a name would; `null` where there are none. */
  readonly asked: () => NoteRead | null;
}

/** Longer notes than this are left as they are: a slip is put right where little else is said. */
const LONGEST = 26;
/** What names nothing of ours ("undo lsat", "wiped obin", "hlp") is looked at only where it is this short. */
const SHORTEST = 8;
/** More strange words than this and the note speaks of something else. */
const STRANGEST = 2;
/** Words that deny or leave out are what they are, never another's slip: without them a note says the opposite. */
const KEPT: ReadonlySet<string> = new Set(
  'not never no none except excepting bar barring but besides minus apart aside excluding save without other than'.split(
    ' ',
  ),
);
/** By how much another choice must explain the note better. */
const BETTER = 1.4;

/**
 * Where a word is left over, or nothing was understood of a note that names our things or is short, each word that may
 * be a slip is tried as what it may have been. Another reading is taken only where it leaves nothing strange, explains
 * the note clearly better, and no other choice that does as well says anything else.
 */
export function bySlips(
  tokens: readonly Token[],
  first: TokensRead,
  spelling: Spelling,
  read: (tokens: readonly Token[]) => TokensRead,
): NoteRead {
  const own = first.read.read;
  if (tokens.length > LONGEST || tokens.length === 0 || first.strange > STRANGEST) return own;
  const ours = tokens.length > 1 && namesOurs(first.parts);
  if (!ours && tokens.length > SHORTEST) return own;
  const choice = new Choice(first.read.score + BETTER);
  const denies = tokens.some(({ text }) => KEPT.has(text));
  for (const [i, token] of tokens.entries()) {
    if (!mayBeSlip(tokens, i, spelling, denies)) continue;
    if (!ours && (token.text.length < 3 || spelling.isWord(token.text))) continue;
    for (const { word, near } of spelling.alternatives(token)) {
      const other = read(tokens.with(i, { ...token, text: word }));
      if (mayBeMeant(other, ours || word.length > 3))
        choice.offer(other.read.read, other.read.score + 0.5 * near - 2);
    }
  }
  return choice.taken ?? own;
}

/**
 * No word that denies or leaves out, and beside such a word no known one: "all of them but 4" must not become "all of the"
 * and something told of 4.
 */
function mayBeSlip(tokens: readonly Token[], i: number, spelling: Spelling, denies: boolean): boolean {
  const text = tokens[i]?.text ?? '';
  if (hangsOnNumber(tokens, i) || KEPT.has(text)) return false;
  return !denies || (text.length >= 3 && !spelling.isWord(text));
}

/** Something is said by it and nothing strange is left; a fact only where a note of ours, or a longer word, gives it. */
function mayBeMeant({ read, strange }: TokensRead, sure: boolean): boolean {
  const { reading } = read.read;
  if (isEmpty(read.read) || (strange >= 1 && reading.acts.length === 0)) return false;
  return sure || reading.facts.length === 0;
}

/** "5t", "y4": a letter that hangs on a number spoils an id, and is no word. */
function hangsOnNumber(tokens: readonly Token[], i: number): boolean {
  const [before, token, next] = [tokens[i - 1], tokens[i], tokens[i + 1]];
  if (token?.text.length !== 1) return false;
  return (before?.kind === 'number' && !token.spaced) || (next?.kind === 'number' && !next.spaced);
}

function isEmpty(read: NoteRead): boolean {
  const { facts, asks, acts, plans, unclear } = read.reading;
  return facts.length + asks.length + acts.length + plans.length + unclear.length === 0;
}

/** True where the note names something of ours by more than a bare number. */
function namesOurs(parts: readonly Part[]): boolean {
  return parts.some(({ entity, senses }) => {
    if (entity !== undefined) return entity.is !== 'time' && entity.is !== 'person' && entity.is !== 'number';
    return senses.some(
      (s) =>
        s.sort === 'noun' &&
        (s.tag === 'scanner' ||
          s.tag === 'tip' ||
          s.tag === 'spore' ||
          s.tag === 'load' ||
          s.tag === 'autoclave'),
    );
  });
}
