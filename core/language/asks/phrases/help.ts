import { ask } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';

/** Who it is that writes here. */
export const help: Phrases = {
  name: 'ask:help',
  phrases: [
    {
      form: form(
        'whos you',
        'whos this bot',
        'whats you(?: for)?',
        'are you (?:there|awake|alive|working|on|listening) (?:bot|scanward)',
        'are you a',
        'are you (?:a )?(?:bot|robot|machine|computer|real|human|real person|ai)',
        '(?:what|whats) (?:does )?(?:this|that) bot(?: for| do)?',
        'how (?:do|should|can) (?:i|we) (?:tell|let) you (?:i|ive|i have|that|we|know|when|what|about)(?: .{1,60})?',
        'whats scanward',
        'what does scanward do',
        '(?:how|what) (?:can|do) (?:i|we) (?:use|ask|do with) (?:you|bot|scanward)(?: for)?',
        '(?:show |show me |give me |list |list all |whats |what )(?:all )?(?:commands|options|questions)(?: (?:are there|do you know|can i use|do you have|can i ask|you know))?',
        'what (?:sort of |kind of )?(?:things|questions|stuff) (?:can|could|do) (?:i|we|you) (?:ask|answer|tell|know)(?: you)?',
        'help (?:me )?(?:out )?with (?:bot|you|this bot)',
      ),
      make: () => ask('help', {}, SURE),
    },
  ],
};
