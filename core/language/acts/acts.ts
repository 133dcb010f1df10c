import type { Clause } from '../clause.ts';
import { made } from '../frames/frame.ts';
import type { Made } from '../result.ts';
import { ActText, isAsked } from './act-text.ts';
import { amend } from './amend.ts';
import { bareAnswer, mayAnswer } from './answers.ts';
import { close } from './close.ts';
import { namesItem } from './item-id.ts';
import { later } from './later.ts';
import { pick } from './pick.ts';
import { TAKING_BACK, takesBack } from './undo.ts';

/**
 * The whole note, or a sentence of it, as something to do with what was said; `null` where it is none. What is put as a
 * question ("correct?") answers nothing.
 */
export function readAct(c: Clause, asked = isAsked(c)): Made | null {
  const text = new ActText(c);
  const answer = asked || !mayAnswer(c) ? null : (bareAnswer(text.typed) ?? bareAnswer(text.words));
  if (answer !== null) return made(answer, {});
  if (text.mayMatch(TAKING_BACK) && !namesItem(c) && (takesBack(text.words) || takesBack(text.typed)))
    return made('undo', {});
  return later(c, text) ?? close(c) ?? amend(c, text) ?? pick(c, text);
}
