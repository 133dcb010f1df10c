import type { Clause } from '../../clause.ts';
import { type AskResult, ask, siteOf } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';
import { daysBack, daysSaid } from './when.ts';
import { ANY, SHOW } from './words.ts';

const CLAVE = '(?:<autoclave>|autoclave|autoclaves)';
const LOADS = '(?:loads?|cycles?|runs?|batch|batches)';
const OPEN =
  '(?:open|running|on|in|going|not finished|unfinished|still on|still running|still in|still open|still going|not out|not closed|waiting|on the go|in progress|outstanding|waiting for a result|without a result|with no result|on now|pending)';

/** Loads that are on, that failed, and those of a stretch of days. */
export const loads: Phrases = {
  name: 'ask:loads',
  phrases: [
    {
      form: form(
        `whats (?:currently |still )?(?:in|inside|running in|on in|cooking in|going through|being done in) ${CLAVE}(?: now)?`,
        `(?:is|are) (?:there )?(?:anything|something|any loads?|a load|stuff|tips) (?:still )?(?:in|running in|on in|inside) ${CLAVE}`,
        `(?:anything|something) (?:still |currently )?(?:in|running in|on in|inside) ${CLAVE}`,
        `(?:is|are|has|s) ${CLAVE} (?:running|empty|full|busy|in use|free|on|going|still running|still going|still on|finished|done|available|loaded|being used|in use now)`,
        `(?:which|what) ${LOADS} (?:are|is|'s|have|has) (?:currently |still )?${OPEN}`,
        `${ANY}(?:${OPEN} )?${LOADS} (?:are |is |that are |that is )?(?:currently )?${OPEN}`,
        `${ANY}${OPEN} ${LOADS}`,
        `${SHOW}(?:open|running|current|unfinished|outstanding|pending) ${LOADS}`,
        `how many ${LOADS} (?:are|is|have we got|do we have) (?:currently |still )?${OPEN}`,
        `what (?:load|cycle) (?:is|are) (?:<autoclave>|autoclave|it) (?:on|running|doing)`,
        `whats running(?: now)?`,
        `(?:what|which) (?:load|cycle)(?: number)? are we (?:on|up to|at)`,
        `(?:has|did|have) (?:the |that |last |this )?(?:load|cycle) (?:get|got|have|had|been given|finished|finish|been) ?(?:a result|its result|result|done|finished)?`,
        `(?:what|which) (?:load|cycle|batch) (?:is|s) (?:now |currently )?(?:in|on|on in) ${CLAVE}`,
        `${SHOW}(?:all |every )?(?:load|loads|cycle|cycles) (?:with|that have|that has|which have) (?:no|not got a|not had a|not got any) results?`,
        `(?:which|what|how many) tips (?:is|are|'s) (?:in|on in) ${CLAVE}`,
        `is there (?:a load|something|anything) on(?: in ${CLAVE})?`,
      ),
      make: (c) => loadsOf(c, 'open'),
    },
    {
      form: form(
        `${ANY}(?:failed|failing|aborted) ${LOADS}`,
        `${ANY}${LOADS} (?:that |which )?(?:have |has |had )?(?:failed|fail|abort|aborted|gone wrong|fallen over)`,
        `(?:did|have|has) (?:any|any of) ${LOADS} (?:failed|fail|abort|aborted)`,
        `(?:which|what|how many) ${LOADS} (?:have |has |had |did )?(?:failed|fail|abort|aborted|not pass)`,
        `${SHOW}(?:failed|failing|aborted) ${LOADS}`,
        `how many (?:failed|aborted) ${LOADS}(?: (?:have we had|did we have|were there|are there))?`,
        `when(?:s| was| did)? (?:we )?(?:last |our last |last have a )?(?:failed|failing|aborted) (?:load|cycle)`,
        `last (?:failed|aborted) (?:load|cycle)`,
        `when did (?:a|any|last) (?:load|cycle) (?:last )?fail(?:ed)?`,
        `have (?:we|there) (?:had|been|have) (?:any )?(?:failed ${LOADS}|failures|fails|${LOADS} failures)`,
        `(?:did|have) all ${LOADS} (?:pass|passed)`,
        `(?:${LOADS} )?failures`,
      ),
      make: (c) => loadsOf(c, 'failed'),
    },
    {
      form: form(
        '(?:has |have |did |is there |was there )?(?:anything|something) (?:at all )?(?:failed|fail|been failing|go wrong|gone wrong)',
        '(?:any|were there any|have we had any|did we have any) (?:failures|fails|fail)',
        'what (?:has |have |all )?(?:failed)',
      ),
      timed: true,
      make: (c) => loadsOf(c, 'failed'),
    },
    {
      form: form(
        `(?:which|what|how many) ${LOADS} (?:did|have|were|was|has|had) ?(?:we|i|you|they|been|there)? ?(?:run|ran|done|do|had|have|on|put on|put through|been)?(?: run| done)?`,
        `(?:show|show me|list|list me|give me|tell me|can i see|can i have) (?:all )?${LOADS}`,
        `${SHOW}(?:${LOADS}|autoclave) (?:list|log|history|record|records)`,
        `list of ${LOADS}`,
        `how many ${LOADS}`,
        `what (?:has|did|was) ${CLAVE} (?:run|ran|done|do|been doing)`,
        `what (?:went|has gone|was run|has been run|was put|was done) (?:through|in|into) ${CLAVE}`,
      ),
      timed: true,
      make: (c) => loadsOf(c, 'all'),
    },
    {
      form: form(
        `${SHOW}(?:${LOADS}|autoclave) (?:log|history)`,
        `(?:show|list|show me|give me) (?:all |last |latest |recent )?loads`,
        `(?:whats|what was|whens|when was) (?:our )?(?:last|latest|most recent) (?:load|cycle|load number)(?: (?:on|in|through|from) ${CLAVE})?`,
        `(?:last|latest) (?:load|cycle)(?: number)?(?: (?:on|in) ${CLAVE})?`,
      ),
      make: (c) => loadsOf(c, 'all'),
    },
  ],
};

function loadsOf(c: Clause, which: 'open' | 'failed' | 'all'): AskResult {
  const named = c.entities('autoclave').find(({ entity }) => entity.id !== null);
  const autoclave = named?.entity.id == null ? {} : { autoclave: named.entity.id };
  const days = which === 'open' ? {} : (daysBack(c) ?? {});
  return ask('loads', { which, ...autoclave, ...days, ...siteOf(c) }, SURE, daysSaid(c));
}
