import type { Clause } from '../clause.ts';
import { made } from '../frames/frame.ts';
import { needing } from '../needs/needs.ts';
import type { Made } from '../result.ts';
import { type ActText, textOf, wordsOf } from './act-text.ts';
import { plainId, spokenId } from './item-id.ts';

const SORRY =
  /^(sory|um|uh|er|erm|said|is|och|gosh|my|fat|fingers|thumbs|confusion|correct|right|for the|for|everyone|thank you|oopsie|whoops|whoopsy|dear|wrote|it's|i|make|srry|sry|sorry|excuse me|lads|guys|everyone|pardon|oops|correction|whoops|i meant|meant|i mean|actually|no|make that|should be|should have been|should've been|that should be|that should have been|it was|was|that's|wrong|typo|apologies|soz|my bad|mistake|it should be|wait|edit|correct that to|change that to|change it to|scrap that|scratch|scratch that|beg|your|i beg your pardon|beg your pardon|rather|not|that was|it's|its|it is|\*|corr|amend|amend that to|amendment|ah|oh|sry|my mistake|whoopsie|hang on|i should have said|i should've said|should say|should read|that should say|read|meant to say|meant to put|meant to type|supposed to be|change to|swap|to|and|instead|for|instead of|with|,|autocorrect|fat fingers|wrong tip|wrong number|wrong one|make it|i ment|ment|wasn't|wasnt|isn't|isnt|the|replace|mean|meaning|that one|instead|it wasn't|that wasn't|was actually|it was actually|please|pls|change|thats|tip|tips|scanner|load|number|in fact|to be|of|rather than|ah sorry|oh sorry|so sorry|bad|say|said|read|typed|put|wrote|i said|i put|i typed|i wrote|meant|all|just|one|that|it|this|is|be|have|been|should|would|'s)$/;

interface Id {
  readonly at: number;
  id: string;
}

/** The ids of a note that is nothing but a correction; `null` where it says anything more. */
function idsIn(c: Clause): Id[] | null {
  const ids: Id[] = [];
  for (const [at, part] of c.parts.entries()) {
    const id = plainId(part.entity) ?? spokenId(part, c);
    if (id === 'many' || (id === null && part.entity !== undefined)) return null;
    if (id !== null) ids.push({ id, at });
    else if (!part.mark && !SORRY.test(part.text) && !/^(x|xx|ta|thanks|team)$/.test(part.text)) return null;
  }
  alike(c, ids);
  return ids;
}

const NOT = /^(not|instead of|rather than|wasn't|wasnt|isn't|isnt|it wasn't|that wasn't)$/;
const CORRECTS =
  /sorry|pardon|scratch|oops|correct|meant|i mean|make (that|it)|should|typo|actually|wrong|edit|mistake|whoops|ment|soz|amend|\*|that to|rather|it was|instead/;

/** "Not 4, 5", "change 4 to 5", "4 should be 5": two ids that would otherwise be read as a list. */
const TWO =
  /^(?:(?:sorry|no|oops|ok|please) )*(?:(?:not|wasn't|wasnt|change|swap|replace) (?:tip |tips |number )?)([a-z]{0,3}-?\d{1,4})(?: (?:it was|but|to|for|with|it's|is))? (?:tip |tips |number )?([a-z]{0,3}-?\d{1,4})(?: (?:please|pls|sorry|instead|ta|thanks))*$/;

/** What telling two ids apart needs to stand in the text. */
const TELLING_TWO = needing(TWO);

/** "Sorry, tip 5 not 4", "I meant 5", "not 4, 5", "make that blue". */
export function amend(c: Clause, text: ActText): Made | null {
  const [, from, to] = (text.mayMatch(TELLING_TWO) ? TWO.exec(text.typed) : null) ?? [];
  if (from !== undefined && to !== undefined)
    return made('amend', { from: tipOf(c, from), to: tipOf(c, to) });
  const [first, second, third] = idsIn(c) ?? [];
  if (first === undefined || third !== undefined) return null;
  return second === undefined ? toOne(c, first, text.words) : betweenTwo(c, first, second);
}

/** "Sorry, tip 5", "*tip 5": the one that is right. */
function toOne(c: Clause, { id }: Id, words: string): Made | null {
  const corrects = CORRECTS.test(words) || c.parts[0]?.text === '*';
  return corrects && notAt(c) < 0 ? made('amend', { to: id }) : null;
}

function betweenTwo(c: Clause, first: Id, second: Id): Made | null {
  const no = c.parts.findIndex((p, i) => p.text === 'no' && i > first.at && i < second.at);
  const not = notAt(c) >= 0 ? notAt(c) : no;
  if (not >= 0) {
    const wrong = second.at > not && first.at < not ? second : first.at > not ? first : second;
    return made('amend', { from: wrong.id, to: wrong === first ? second.id : first.id });
  }
  const text = wordsOf(c);
  const exchanged =
    (/change|swap|replace/.test(text) && /\bto\b|with|for/.test(text)) ||
    /\b(said|put|typed|wrote) .*\b(correct|should|meant|actually|right)\b/.test(text);
  return exchanged ? made('amend', { from: first.id, to: second.id }) : null;
}

function notAt(c: Clause): number {
  return c.parts.findIndex((p) => NOT.test(textOf(p)));
}

function tipOf(c: Clause, typed: string): string {
  const [, letters = '', digits = ''] = /^([a-z]*)-?(\d+)$/.exec(typed) ?? [];
  return c.names.tips.find(letters, digits)[0] ?? typed;
}

/** "Load 44 not 43", "scanner 1 not 2": a bare number is of the same sort as what it stands beside. */
function alike(c: Clause, ids: readonly Id[]): void {
  const sorts = ids.map(({ at }) => c.parts[at]?.entity);
  const load = sorts.some((entity) => entity?.is === 'load');
  const scanner = sorts.some((entity) => entity?.is === 'scanner');
  for (const one of ids) {
    const entity = c.parts[one.at]?.entity;
    if (entity?.is !== 'tips' || entity.named) continue;
    const digits = one.id.replace(/\D/g, '').replace(/^0+(?=\d)/, '');
    if (load) one.id = digits;
    if (scanner) one.id = c.names.scannerIds.find((id) => id.replace(/\D/g, '') === digits) ?? one.id;
  }
}
