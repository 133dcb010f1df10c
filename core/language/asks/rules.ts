import { type Ask, ask, wordsOf } from './ask.ts';

/** "Which rules do you follow?", "show me the rules": of this program, so the note says nothing else. */
export const rules: Ask = {
  name: 'ask:rules',
  read(c) {
    if (!RULES.test(wordsOf(c))) return null;
    for (const i of c.parts.keys()) c.use(i);
    return { ...ask('rules', {}, 9), whole: true };
  },
};

const OPENING = '(?:hi|hello|hey|bot|so|ok|please|pls|can (?:you|u)|could you)';
const WHICH =
  '(?:what|which) (?:are )?(?:(?:the |your |our )?rules|your settings)(?: (?:are|do|have|did) (?:you|u|we|they|these|in force|set|there)(?: (?:go by|work to|follow|use|using|apply|got|set|have|running|on|following))?)?';
const SHOW =
  '(?:list|show|show me|tell me|give me|send|send me) (?:all )?(?:(?:the |your |our )?rules|your settings)(?: (?:in force|you (?:follow|use|have|go by)))?';
const RULES = new RegExp(
  `^(?:${OPENING} )*(?:${WHICH}|${SHOW}|how are you set up|what are you set to|what thresholds (?:do you use|are set))(?: (?:please|pls|now|here))*$`,
);
