import type { Clause } from '../clause.ts';
import { type Ask, ask, WH, wordsOf } from './ask.ts';

/** What was in a load. */
export const load: Ask = {
  name: 'ask:load',
  read(c, question) {
    const text = wordsOf(c);
    const found = loadOf(c, text);
    if (found === null) return null;
    const asks =
      /(what|which|whats|what's|show|list|tell|contents|how|did|has|was|is|were|when|who|any|status|result|give|details|contents)/.test(
        text,
      );
    if (
      !asks ||
      (!question &&
        !/(what|which|whats|what's|show me|list|tell me|contents|details|status|did|how)/.test(text))
    )
      return null;
    c.use(found.at);
    c.useTags(
      ...WH,
      'tip',
      'put',
      'run',
      'go',
      'pass',
      'fail',
      'finish',
      'autoclave',
      'load',
      'come',
      'start',
      'unit',
    );
    if (
      c.entities('tips').length > 0 &&
      !c.entities('tips').every(({ entity }) => entity.which !== undefined || !entity.named)
    )
      return null;
    for (const one of c.entities('autoclave')) c.use(one.at);
    return ask('load', { load: found.id }, found.named ? 0.6 : 2, { load: [found.at] });
  },
};

/** The load that a question names, or a number that is no tip of this practice: "what's in 118", "tips from 118". */
export function loadOf(c: Clause, text: string): { id: string; at: number; named: boolean } | null {
  const load = c.first('load');
  if (load !== null) return { id: load.entity.ids[0] ?? '', at: load.at, named: true };
  const before = c.scope.memory.load;
  if (before !== null && IN_IT.test(text) && c.entities('tips').length === 0)
    return { id: before.ids[0] ?? '', at: -1, named: true };
  if (!OF_LOAD.test(text)) return null;
  const tips = c.first('tips');
  if (tips === null || tips.entity.named || tips.entity.ids.length > 0) return null;
  const [id, more] = tips.entity.unknown;
  return id === undefined || more !== undefined ? null : { id, at: tips.at, named: false };
}

const IN_IT = /\b(?:what|which|tips)\b.* (?:in|inside) (?:it|that|that one|that load|there)$/;
const OF_LOAD =
  /\b(?:what(?:'s| is| was| went)|which tips|which tips (?:went|were|are)|tips|contents) (?:in|from|of)\b|\bdid \w+ pass/;
