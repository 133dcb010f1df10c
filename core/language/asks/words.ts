import { type Ask, ask, wordsOf } from './ask.ts';

/** "Which words have you learned?" */
export const words: Ask = {
  name: 'ask:words',
  read(c) {
    if (!LEARNED.test(wordsOf(c))) return null;
    for (const i of c.parts.keys()) c.use(i);
    return { ...ask('words', {}, 9), whole: true };
  },
};

const LEARNED =
  /^(?:(?:hi|hello|bot|so|please|pls|can you|ok) )*(?:(?:what|which) (?:(?:new|extra|other|special) )?(?:words|names|nicknames) (?:do|have|did) (?:you|u|we) (?:know|learn|learned|learnt|remember|remembered|taught you|picked up|kept)|(?:list|show|show me|tell me) (?:the |your |all the )?(?:learned words|learnt words|words you (?:know|have learned|have learnt|learned|learnt|remember)|nicknames)|what have you (?:learned|learnt)|learned words|learnt words)(?: (?:so far|please|pls|now|already))*$/;
