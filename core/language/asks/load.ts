import { type Ask, ask, WH, wordsOf } from './ask.ts';

/** What was in a load. */
export const load: Ask = {
  name: 'ask:load',
  read(c, question) {
    const found = c.first('load');
    if (found === null) return null;
    const text = wordsOf(c);
    const asks =
      /(what|which|whats|what's|show|list|tell|contents|how|did|has|was|is|were|when|who|any|status|result|give)/.test(
        text,
      );
    if (
      !asks ||
      (!question && !/(what|which|whats|what's|show me|list|tell me|contents|status|did|how)/.test(text))
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
    return ask('load', { load: found.entity.ids[0] ?? '' }, 0.6, { load: [found.at] });
  },
};
