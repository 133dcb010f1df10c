import { type Ask, ask, oneItem, WH, wordsOf } from './ask.ts';

/** Where something is. */
export const where: Ask = {
  name: 'ask:where',
  read(c, question) {
    const text = wordsOf(c);
    const asks =
      /\bwhere('s|s|abouts)?\b|whereabouts|(anyone|anybody|any1|someone|somebody|who) ?('s|has|have)? ?(see|seen|sean|got|nicked|pinched|taken|borrowed|took|know where|found|spotted|having)|seen (the |my |our )?|who's got|whos got|who has|which (room|site|clinic|surgery|surg|branch|practice|place|op)|any sign of|find me|locate|\bwhr\b|what (room|site|surgery) is|hiding|gone to|where has|(need|trying) to find|looking for|location of|come across/.test(
        text,
      );
    const here =
      question &&
      (c.entities('site').length > 0 || c.entities('room').length > 0) &&
      /^(is|are|has|have|'s|so|did)/.test(text);
    if (!asks && !here) return null;
    if (/\bwhere (can|do|should|to|does|would|shall) (i|we|you)?\b/.test(text) && !/find/.test(text))
      return null;
    if (!question && !OPENS.test(text) && !/where('s| is| are| did| has| have)\b/.test(text)) return null;
    if (
      /looking for|need to find/.test(text) &&
      !question &&
      /^(he|she|they|i was|we were|someone)/.test(text)
    )
      return null;
    if (/seen/.test(text) && !question && !/anyone|anybody|any1|has/.test(text)) return null;
    c.useTags(
      ...WH,
      'lose',
      'find',
      'take',
      'put',
      'go',
      'leave',
      'keep',
      'use',
      'move',
      'clinic',
      'roomword',
      'site',
      'unit',
      'travel',
      'shelf',
      'bring',
      'come',
      'car',
      'need',
      'oblige',
      'look',
      'see',
    );
    const item = oneItem(c, {
      bare: c.parts.length <= 6 && !c.parts.some((p) => p.unknown) && /\bseen\b|^where/.test(text),
      before: false,
    });
    if (item === null) return null;
    for (const one of [
      ...c.entities('site'),
      ...c.entities('room'),
      ...c.entities('time'),
      ...c.entities('person'),
    ])
      c.use(one.at);
    return ask('where', { item: item.item }, 1, { item: item.said }, item.missing);
  },
};

/** How a question of place opens where nothing else says that it is one. */
const OPENS =
  /^(?:(?:hi|hello|hey|so|please|pls|sorry|ok|right|lads|guys|team|and|but|can you|could you|does|do|has|did) )*(?:where|whereabouts|anyone|anybody|any1|who|which|what|need to find|looking for|locate|find|seen|any|know|tell me|you know)\b/;
