import { type Ask, ask, oneItem, WH, wordsOf } from './ask.ts';

/** What has happened with an item. */
export const history: Ask = {
  name: 'ask:history',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /what('s| is| has)? ?(all )?(been |has )?happen(ed|ing) (with|to)|everything that( has|'s)? happened|been through|(wat|what) happend|gone through|history|what's the story|story (with|of|on)|tell me about|what do (we|you) know about|what('s| has) been (done|going on)|what's (up|going on|the deal|wrong) with|whats (up|going on|wrong) with|everything (about|on|for)|life story|log (of|for) tip|timeline|track record|what's happening with|journey|what('s| is) the latest (on|with)|update on|where has .* been|what was done (to|with)|what have we done|how many (times|cycles|uses|goes)|show me|record of|records? for|time ?line|been (happening|up to)|everything (on|about)|run (me|us) through|has been (happening|going on)|lately/.test(
        text,
      );
    if (!asks) return null;
    if (/how many (times|cycles|uses|goes)/.test(text) && c.entities('tips').length === 0) return null;
    if (
      /\bshow me\b/.test(text) &&
      !question &&
      c.entities('tips').length + c.entities('scanner').length === 0
    )
      return null;
    if (/\b(show|list|give)\b/.test(text) && c.at('tip') >= 0 && c.entities('tips').length === 0) return null;
    // no item named: "show me which tips are out" asks for a list
    if (
      c.entities('tips').length + c.entities('scanner').length + c.entities('autoclave').length === 0 &&
      /which|what tips|how many/.test(text)
    )
      return null;
    c.useTags(
      ...WH,
      'record',
      'go',
      'do',
      'move',
      'fail',
      'finish',
      'travel',
      'use',
      'run',
      'load',
      'unit',
      'sick',
      'turn',
      'scan',
      'happen',
      'keep',
    );
    const item = oneItem(c, { before: false });
    if (item === null) return null;
    for (const one of c.entities('time')) c.use(one.at);
    return ask('history', { item: item.item }, 1, { item: item.said }, item.missing);
  },
};
