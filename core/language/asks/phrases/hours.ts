import { asksOn, form, type Phrases } from './phrase.ts';
import { SHOW } from './words.ts';

const OPEN =
  '(?:open|close|shut|finish|start|open up|close up|shut up|closing|opening|shutting|finishing|starting|open and close|lock up|close at|open at|closed|opened|done|open till|open until|open from|finished|knock off)';
const US = '(?:we|practice|clinic|surgery|site|place)';

/** Opening hours. Of whom is said by "we", the practice, or a site's name. */
export const hours: Phrases = {
  name: 'ask:hours',
  phrases: [
    {
      form: form(
        `(?:what time|when|whens|what hour|how early|how late|at what time|wat time|until what time|till what time|til when|till when|until when|from when) (?:do|does|did|are|is|will|can|should|s|be)? ?${US} ?(?:be|are|is|all)? ?(?:have to |need to |get to )?${OPEN}(?: (?:up|till|until|from|at))?`,
        `(?:what time|when) ${US} ${OPEN}`,
        `(?:are|is|were|was|will|do|does|r) ${US} (?:be )?(?:open|closed|shut|close|opening|closing|in|working)(?: (?:as normal|as usual|late|early|all day|at all|till late))?`,
        `${SHOW}(?:our )?(?:opening|open|working|business|practice|clinic|surgery) (?:hours|times|time)`,
        `(?:whats|what are|what time is|when is|whens) (?:our |usual |normal )?(?:opening|closing|close|open|shutting|finishing|finish)(?: time| hours| times)?`,
        `(?:what|which) (?:hours|days|times) (?:are|do|is|does|will|r|were) ${US} (?:be )?(?:open|doing|working|work|do|on|in|here|close|closed|shut)?`,
        `(?:opening|closing|open|working) (?:hours|times|time)`,
        'whats (?:opening )?hours',
        `when (?:are|is|do|will) ${US} (?:next )?(?:be )?(?:open|closed|shut)(?: next| again)?`,
        `(?:do|does|are|is) ${US} (?:close|closed|shut|open) (?:for|at|over|during) (?:lunch|lunchtime|dinner|lunch break)`,
        `how long (?:are|is|will) ${US} (?:be )?(?:open|closed|shut)(?: for)?`,
        `how long (?:till|til|until|before|to|have we got till|is it till) ${US} (?:close|shut|open|finish|lock up)`,
        `how long (?:till|til|until|before|to) (?:closing|opening|home time|close)(?: time)?`,
        `when(?:s|s we| are we| is) ?(?:we |practice |clinic )?next open(?: day)?`,
        `whens next (?:open day|working day|day open|closed day)`,
        `what time (?:is|do) (?:we|i) (?:finish|close|open|start)(?: up)?`,
      ),
      make: asksOn('hours'),
    },
    {
      form: form(
        '(?:what time|when|what hour|till what time|until what time) (?:do|does|is|are|will|did|s) <site> (?:be )?(?:open|close|shut|opening|closing|closed|finish|start|shutting|finishing)(?: (?:up|till|until|from|<time>|up <time>))*',
        '(?:what time|when) (?:do|are|will|is) (?:we|they|you) (?:be )?(?:open|close|shut|opening|closing|finish|start|finishing|starting)(?: up)? (?:at|in|over at) <site>(?: <time>)?',
        '(?:is|are|will|was|does|s) <site> (?:be |clinic )?(?:open|closed|shut|close|opening)(?: (?:<time>|as normal|as usual|late|early|now))*',
        `(?:${SHOW})?<site>(?:'s)? (?:opening |open |closing )?(?:hours|times|opening times)(?: <time>)?`,
        `(?:${SHOW})?(?:opening |open )?(?:hours|times) (?:at|for|of|in) <site>(?: <time>)?`,
        'whens <site> (?:open|closed|shut|next open|closing|opening)(?: <time>)?',
      ),
      placed: true,
      make: asksOn('hours'),
    },
  ],
};
