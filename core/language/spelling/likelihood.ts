import { commonness } from '../lexicon/commonness.ts';
import type { Standing } from './alternatives.ts';
import type { Spelling } from './spelling.ts';

/** A word tried in the place of what was typed. */
export interface Trial {
  readonly typed: string;
  readonly word: string;
  /** See `closeness`. */
  readonly near: number;
  readonly standing: Standing;
}

/** What a slip costs by its closeness: letters changed about or left out are the commonest, two slips the rarest. */
const COST = [2, 1.6, 1.2, 0.5, 0, -0.3] as const;
/** How much better another word must explain the note, by how sure it is that the one typed is none. */
const NEEDED: Readonly<Record<Standing, number>> = { none: 0.6, word: 1.6, ours: 2 };
/** What each tier of commonness is worth, and what a word costs that says nothing and is seldom typed. */
const COMMON = 0.4;
const SELDOM = -0.4;

/** How likely a word was meant, before what it makes of the note is looked at, less what is needed. */
export function likelihood(
  { word, near, standing }: Omit<Trial, 'typed'>,
  spelling: Pick<Spelling, 'isName' | 'says'>,
): number {
  const common = spelling.isName(word) ? 2 : commonness(word);
  const prior = common > 0 ? COMMON * common : spelling.says(word) ? 0 : SELDOM;
  return prior - (COST[near] ?? 0) - NEEDED[standing];
}

/** A word that may be meant is a slip only of one that says more, and a common one only of one as common. */
export function worthTrying({ typed, word, near, standing }: Trial, spelling: Spelling): boolean {
  if (standing === 'none') return true;
  if (standing === 'ours' && spelling.sameSense(word, typed)) return false;
  const common = commonness(word);
  if (commonness(typed) > 0) return common === 2 && near >= 3;
  return common > 0 || spelling.isName(word) || (spelling.says(word) && !spelling.isOurs(typed));
}
