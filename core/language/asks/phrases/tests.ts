import type { Clause } from '../../clause.ts';
import { type AskResult, ask, siteOf } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';
import { ANY, SHOW } from './words.ts';

const TEST = '(?:weekly |daily |monthly |morning )?(?:<test>|autoclave tests?|steriliser tests?)(?: tests?)?';
const ON = '(?: (?:on|for|in|of|from) (?:<autoclave>|autoclave|it))?';
const DONE =
  '(?:done|run|ran|passed|pass|ok|okay|fine|clear|negative|back|in|through|gone through|come back|came back|finished|completed|due|noted|recorded|failed|fail|positive|alright|good|overdue)';

/** When the tests of the autoclaves were, how they came out, and when the next is due. */
export const tests: Phrases = {
  name: 'ask:tests',
  phrases: [
    {
      form: form(
        `when (?:was|were|did|is|are|has|have|do|does|should|must|will|would|can|'s)? ?(?:we|i|you|someone|anyone)? ?(?:(?:last|next|latest|need to|have to|last do|last run|do|run|need|get|result of|results of) ?)*${TEST}${ON}(?: (?:done|run|due|last|last done|last run|passed|be done|to be done|be run|be back|back|need doing|next|next due|due next|result|results|results due|result due))?${ON}`,
        `whens (?:(?:last|next|latest|result of|results of) ?)*${TEST}${ON}(?: (?:done|due|due next|next due|last|back|result|results|results due|result due|last done|need doing|needing done))?${ON}`,
        `(?:how long ago|how long|how many days) (?:was|since|is it since|has it been since|till|til|until|before|to) (?:last |next |we did |we ran )*${TEST}${ON}(?: (?:is |was )?(?:due|done|run))?`,
        `(?:last|latest|next) ${TEST}${ON}(?: (?:date|result|results|due|done|was when|when|on))?`,
        `${SHOW}(?:last |latest )?${TEST}${ON} (?:results|history|log|record|records|date|dates|due date|status|schedule|outcome|outcomes)`,
        `${SHOW}(?:result|results|date|log|history|outcome|status) (?:of|for|from) (?:last |latest )?${TEST}${ON}`,
        `(?:has|have|was|were|is|are|did|do|does|s|isn't|hasn't|did) (?:we |i |you |anyone |anybody |someone |somebody |any1 )?(?:(?:all|both|last|weekly|daily|todays|this weeks|done|do|run|ran|already|got|had|have|get) ?)*${TEST}${ON}(?: (?:all |both )?(?:been |come |came |get |got |gone )?${DONE})?(?: ok| okay| fine| alright)?${ON}`,
        `(?:has|have|did|does|is|was) (?:<autoclave>|autoclave|autoclaves) (?:had |have |has |got |get |been |pass |passed |fail |failed |due |due for |its |it's |a |any )*${TEST}(?: (?:done|run|due|ok|passed))?`,
        `${ANY}(?:news|word|result|results) (?:on|of|from|about|for|back on|back from) (?:last )?${TEST}${ON}`,
        `(?:hows|how did|how was|what about|how about|what happened with|any joy with|how has) ${TEST}${ON}(?: (?:go|do|doing|come out|turn out|get on|went))?`,
        `who (?:did|done|ran|does|has done|last did|runs|noted) ${TEST}${ON}(?: last)?`,
        `(?:which|what) tests (?:are|is|have|has|were|do) ?(?:we|been)? ?(?:due|done|left|outstanding|need|have to do|need to do|been done)?(?: on (?:autoclave|<autoclave>))`,
        `is it time for ${TEST}`,
        `do (?:we|i) need (?:to do |to run |a )*${TEST}${ON}`,
      ),
      make: testsOf,
    },
    {
      // "Spore test back?": said as a statement it would be a note.
      form: form(`${TEST}${ON} (?:been |come )?${DONE}(?: yet| or not| ok)?`, `${TEST}${ON}`),
      asked: true,
      make: testsOf,
    },
    {
      form: form(
        '(?:have|has|are|were|did) ?(?:we|i|you|anyone|someone|all)? ?(?:daily|morning|weekly|autoclave|steriliser) (?:tests|checks)(?: (?:been )?(?:done|run|passed|ok))',
        '(?:have|did|has) (?:we|i|you|anyone|someone) (?:done|do|run|ran) (?:daily|morning|weekly|autoclave|steriliser|all) (?:tests|test)',
        '(?:daily|weekly|autoclave) tests (?:done|due|status)',
      ),
      asked: true,
      make: testsOf,
    },
  ],
};

const SORTS = ['spore', 'penetration', 'control', 'leak'] as const;

/** The sort that is named, where it is one; the autoclave that is named. */
function testsOf(c: Clause): AskResult | null {
  const found = SORTS.map((sort) => ({ sort, at: c.at(sort) })).filter(({ at }) => at >= 0);
  const [one, ...more] = found;
  const sort = one === undefined || more.length > 0 ? {} : { sort: one.sort };
  const named = c.entities('autoclave').find(({ entity }) => entity.id !== null);
  const autoclave = named?.entity.id == null ? {} : { autoclave: named.entity.id };
  return ask(
    'tests',
    { ...sort, ...autoclave, ...siteOf(c) },
    SURE,
    one === undefined ? {} : { sort: [one.at] },
  );
}
