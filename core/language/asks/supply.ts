import { type Ask, ask, dayOf, siteOf, WH, wordsOf } from './ask.ts';

/** Whether there are tips enough. */
export const supply: Ask = {
  name: 'ask:supply',
  read(c) {
    const text = wordsOf(c);
    const asks =
      /\benough\b|run out|running out|running short|run short|going to be short|be short|short of|how many (more )?(tips )?(do|will|would) (we|i) need|(are|r) we (short|ok|okay|good|alright|right|all right|fine|covered) for|last us|sufficient|will we (make|manage|have)|cover(ed)? (for )?(tomorrow|today)|do we need (more|any more|to bring)|are we ok on|get us through|see us through|going to make it|tips stretch|how (are|is|'re|'s) (\w+ ){1,3}(doing |looking |fixed |off )?for tips|how's (\w+ ){1,3}(doing |looking |fixed |off )?for tips|tips (to )?last|^(are |r )?we (ok|okay|alright|grand|good|fine|short) (for|of) tips|have we (got )?the tips for|^tips (ok|okay|alright|enough) for|how (are|r|'re) we for|are there (any )?tips for/.test(
        text,
      );
    if (!asks) return null;
    if (
      c.at('tip') < 0 &&
      !c.entities('tips').some(({ entity }) => entity.named || entity.which !== undefined)
    )
      return null;
    c.useTags(
      ...WH,
      'tip',
      'sterile',
      'clean',
      'book',
      'scan',
      'booking',
      'finish',
      'run',
      'add',
      'use',
      'patient',
      'bring',
      'autoclave',
      'pass',
      'go',
      'cover',
      'heat',
    );
    for (const one of c.entities('tips')) c.use(one.at);
    const site = siteOf(c);
    return ask('supply', { ...site, ...dayOf(c, site.site) }, 1.6);
  },
};
