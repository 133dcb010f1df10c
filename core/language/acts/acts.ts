import type { Clause } from '../clause.ts';
import { made } from '../frames/frame.ts';
import type { Made } from '../result.ts';
import { isAsked, typedOf, wordsOf } from './act-text.ts';
import { amend } from './amend.ts';
import { bareAnswer } from './answers.ts';
import { close } from './close.ts';
import { namesItem } from './item-id.ts';
import { later } from './later.ts';
import { pick } from './pick.ts';
import { takesBack } from './undo.ts';

/**
 * The whole note, or a sentence of it, as something to do with what was said; `null` where it is none. What is put as a
 * question ("correct?") answers nothing.
 */
export function readAct(c: Clause, asked = isAsked(c)): Made | null {
  const words = wordsOf(c);
  const typed = typedOf(c);
  const answer = asked ? null : (bareAnswer(typed) ?? bareAnswer(words));
  if (answer !== null) return made(answer, {});
  if (!namesItem(c) && (takesBack(words) || takesBack(typed))) return made('undo', {});
  return later(c, words, typed) ?? close(c) ?? amend(c, words, typed) ?? pick(c, typed);
}
