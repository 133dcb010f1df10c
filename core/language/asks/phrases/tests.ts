import type { Clause } from '../../clause.ts';
import { type AskResult, ask, siteOf } from '../ask.ts';
import { amid, form, type Phrases, SURE } from './phrase.ts';
import { SHOW } from './words.ts';

const TEST = '<test>(?: tests?)?';
/** Of no sort in particular. */
const ANY_TEST = '(?:(?:daily|weekly|morning|autoclave|steriliser|steri) )+(?:tests?|checks)';
/** What stands beside a test in a question about it, and nothing else. */
const BESIDE =
  'when whens what whats which who whos how hows has have had is are was were did do does will would can should must need needs to we i you they anyone someone anybody it its a all both each any every this last next latest first due overdue done run ran running pass passed passing fail failed been be get got come came back in on for of from with result results outcome log history record records date dates status show me us give list see check news word yet again ok okay fine clear negative positive good weekly daily monthly morning test tests testing <autoclave> autoclave autoclaves steriliser often long ago since until till before time much days day many noted recorded finished through go gone went turn turned out goes work worked required outstanding left missing missed schedule scheduled happened about joy not still so one ever never';

/** When the tests of the autoclaves were, how they came out, and when the next is due. */
export const tests: Phrases = {
  name: 'ask:tests',
  phrases: [
    { form: amid(TEST, BESIDE), asked: true, make: testsOf },
    { form: amid(ANY_TEST, BESIDE), asked: true, make: testsOf },
    {
      form: form(
        '(?:any|what|which|are there any|have we any|whats) (?:tests?|testing) (?:are |is |have |has |do |did |were )*(?:we |i )?(?:been |still |need to |have to )*(?:due|done|do|left|outstanding|run|outstanding|to do|overdue|failed|passed)(?: on (?:autoclave|<autoclave>))?',
        '(?:are|have|were) (?:all |any )?tests (?:been )?(?:due|done|overdue|run|passed|outstanding)',
      ),
      asked: true,
      make: testsOf,
    },
    {
      form: form(
        `(?:when )?(?:was|has|have|is|are|were) (?:<autoclave>|autoclave|autoclaves) (?:been )?(?:last )?(?:tested|checked)(?: last| yet)?`,
        `(?:has|have|did|does|is|was) (?:<autoclave>|autoclave|autoclaves) (?:had|have|passed|pass|got|done|been) (?:through )?(?:its|it's|their|all its)?(?: daily| weekly)? ?tests?(?: ok| yet)?`,
      ),
      asked: true,
      make: testsOf,
    },
    {
      // With no word of asking: by what one calls for only to read it
      form: form(
        `${SHOW}(?:last |latest )?(?:${TEST}|${ANY_TEST})(?: (?:on|for|of) (?:<autoclave>|autoclave))? (?:results|history|log|records?|dates?|due dates?|status|schedule)`,
        `(?:last|latest|next) (?:${TEST})(?: (?:date|due|when))?`,
        `${TEST} due (?:when|date)`,
        `(?:results?|outcome|date) (?:of|for|from) (?:last |latest )*${TEST}`,
      ),
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
