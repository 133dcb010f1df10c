import type { Scored } from '../note.ts';
import type { Part } from '../part.ts';
import type { NoteRead } from '../read.ts';
import type { Token } from '../token.ts';
import type { Standing } from './alternatives.ts';
import { Choice } from './choice.ts';
import { likelihood, type Trial, worthTrying } from './likelihood.ts';
import { isEmpty, mayBeMeant, saysLess, slotsIn } from './may-be-meant.ts';
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
const SHORTEST = 12;
/** Words that deny or leave out are what they are, never another's slip: without them a note says the opposite. */
const KEPT: ReadonlySet<string> = new Set(
  'not never no none except excepting bar barring but besides minus apart aside excluding save without other than'.split(
    ' ',
  ),
);
/** A word that may be meant as it stands is doubted only in notes of this length at most, a word of ours only here. */
const SHORT = 8;
const SHORT_OURS = 9;
/** More strange words than this and the note speaks of something else. */
const STRANGEST = 2;
/** Explaining a note better than by this is no further sign that a word was meant. */
const MOST_GAIN = 5;
/** What each slot more than the note gave without it counts for, up to two. */
const SLOT = 0.3;
/** What a denial explains, which says nothing. */
const DENIAL = 2;

/**
 * Where a word is left over, or nothing was understood of a note that names our things or is short, each word that may
 * be a slip is tried as what it may have been. Another reading is taken only where it leaves nothing strange, explains
 * the note clearly better, and no other choice that does as well says anything else.
 */
export function bySlips(
  note: string,
  tokens: readonly Token[],
  first: TokensRead,
  spelling: Spelling,
  read: (tokens: readonly Token[]) => TokensRead,
): NoteRead {
  const own = first.read.read;
  if (tokens.length > LONGEST || tokens.length === 0 || first.strange > STRANGEST) return own;
  if (tokens.some((_, at) => spoilsId(tokens, at))) return own;
  const ours = tokens.length > 1 && namesOurs(first.parts);
  if (!ours && tokens.length > SHORTEST) return own;
  const trial: Trying = {
    first,
    ours,
    long: tokens.length > 3,
    bids: tokens.some(({ text }) => spelling.bids(text)),
    choice: new Choice(),
    spelling,
  };
  for (const [at, token] of tokens.entries()) {
    const typed = typedAs(note, token);
    const standing = spelling.standing(typed);
    if (!mayBeSlip(tokens, at, { typed, standing, ours, silent: isEmpty(own) }, spelling)) continue;
    for (const { word, near } of spelling.alternatives(typed, standing)) {
      const other = { typed, word, near, standing };
      if (word === token.text || !worthTrying(other, spelling)) continue;
      weigh(other, read(tokens.with(at, { ...token, text: word })), typed !== token.text, trial);
    }
  }
  const { taken } = trial.choice;
  return taken === null || isEmpty(taken) ? own : taken;
}

interface Trying {
  readonly first: TokensRead;
  readonly ours: boolean;
  readonly long: boolean;
  /** The note asks for something, means or supposes it. */
  readonly bids: boolean;
  readonly choice: Choice;
  readonly spelling: Spelling;
}

/** Offers what the note says with another word; `again`: what was typed had been put right already. */
function weigh(trial: Trial, other: TokensRead, again: boolean, trying: Trying): void {
  const { first, ours, long, bids, choice, spelling } = trying;
  const own = first.read.read;
  const found = other.read.read;
  const likely = likelihood(trial, spelling);
  const gain = (score: number) => Math.min(MOST_GAIN, score - first.read.score) + likely;
  // What denies or supposes says nothing, and may have been meant as surely.
  if (trial.standing === 'none' && spelling.turns(trial.word) && isEmpty(found))
    choice.offer(found, gain(DENIAL));
  // "Sendx 4 pls" asks for it: it is not "sent".
  if (again && bids && found.reading.facts.some(({ kind }) => kind !== 'held')) return;
  if (saysLess(found, own) || !mayBeMeant(other, { ...trial, ours, long, name: spelling.isName(trial.word) }))
    return;
  choice.offer(found, gain(other.read.score) + moreSlots(found, own));
}

/** What a reading that tells more than the note did without it has for it. */
function moreSlots(found: NoteRead, own: NoteRead): number {
  const before = slotsIn(own);
  return before === 0 ? 0 : SLOT * Math.min(2, Math.max(0, slotsIn(found) - before));
}

interface Suspect {
  readonly typed: string;
  readonly standing: Standing;
  readonly ours: boolean;
  /** Nothing was read of the note as it stands. */
  readonly silent: boolean;
}

/** True where a token may be a slip at all; what was put right already is tried anew only where nothing came of it. */
function mayBeSlip(
  tokens: readonly Token[],
  at: number,
  { typed, standing, ours, silent }: Suspect,
  spelling: Spelling,
): boolean {
  const token = tokens[at];
  if (token?.kind !== 'word' || hangsOnNumber(tokens, at, typed)) return false;
  if (typed !== token.text && (!silent || spelling.turns(token.text) || HELD.test(typed))) return false;
  // "All of them but 4" must not become "all of the" and something told of 4.
  const denies = tokens.some(({ text }) => KEPT.has(text));
  if (KEPT.has(typed) || (denies && (typed.length < 3 || standing !== 'none'))) return false;
  if (standing === 'none') return true;
  if (spelling.turns(typed) || (!ours && tokens.length > SHORT)) return false;
  return standing === 'word' || (silent && tokens.length <= SHORT_OURS);
}

/** Letters held down, as in "sooo": no slip. */
const HELD = /([a-z])\1\1/;

/** The one word that a token was typed as, folded; its text where it stands for several or for a mark. */
function typedAs(note: string, token: Token): string {
  const typed = note.slice(token.start, token.end).toLowerCase().replaceAll('’', "'");
  return /^[a-z']+$/.test(typed) ? typed : token.text;
}

/** "5t", "y4": a letter that hangs on a number spoils an id, and is no word. */
function hangsOnNumber(tokens: readonly Token[], i: number, typed: string): boolean {
  const [before, token, next] = [tokens[i - 1], tokens[i], tokens[i + 1]];
  if (next?.kind === 'number' && !next.spaced && typed.length <= 2) return true;
  return typed.length === 1 && before?.kind === 'number' && token?.spaced === false;
}

/** "KX2q": a letter behind a number that is no unit; the note is left as it stands, so that no id is guessed. */
function spoilsId(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  return (
    token !== undefined &&
    !token.spaced &&
    tokens[at - 1]?.kind === 'number' &&
    /^[bdegijlnoqrtuvwyz]$/.test(token.text)
  );
}

/** True where the note names something of ours by more than a bare number. */
function namesOurs(parts: readonly Part[]): boolean {
  return parts.some(({ entity, senses }) => {
    if (entity !== undefined) return entity.is !== 'time' && entity.is !== 'person' && entity.is !== 'number';
    return senses.some((s) => s.sort === 'noun' && OURS.has(s.tag));
  });
}

const OURS = new Set(['scanner', 'tip', 'spore', 'load', 'autoclave']);
