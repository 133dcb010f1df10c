import type { Clause } from '../../clause.ts';
import { type AskResult, ask, siteOf } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';
import { daysBack, daysSaid } from './when.ts';
import { ANY, SHOW } from './words.ts';

const INCIDENTS = '(?:incidents?|tip incidents?|incident reports?)';
const STANDING =
  '(?:open|opened|outstanding|unclosed|not closed|unresolved|waiting|pending|still open|left open|live)';

/** Incidents with no stretch of time said, and those that are open. */
export const incidents: Phrases = {
  name: 'ask:incidents',
  phrases: [
    {
      form: form(
        `${ANY}(?:new )?${INCIDENTS}(?: (?:here|on record|to report|recorded|noted|logged))?`,
        `${SHOW}${INCIDENTS}`,
        `${SHOW}incident (?:log|list|register|book|record|records|report|history)`,
        `how many ${INCIDENTS}(?: (?:have we had|have there been|did we have|were there|are there|on record|do we have))?`,
        `(?:have|did) we (?:had|have) (?:any )?${INCIDENTS}`,
        `(?:what|what was|what has been|whats|what is) (?:been |being )?(?:done|happened|happening|decided) (?:about|with|on|to) (?:last |latest |our last )?${INCIDENTS}`,
        `(?:whats|when was|whens|when did we have|what was) (?:our )?(?:last|latest|most recent|newest) incident`,
        `(?:last|latest) incidents?`,
        `who (?:closed|opened|reported|answered) (?:last |latest |that )?${INCIDENTS}`,
        `(?:show|print|print out|export|send) (?:me |us )?(?:incident list|incidents list)`,
        `list of ${INCIDENTS}`,
        `${SHOW}${INCIDENTS} for (?:year|whole year|all time)`,
        `which ${INCIDENTS} (?:have we had|did we have|were there|are on record)`,
      ),
      make: (c) => incidentsOf(c, false),
    },
    {
      form: form(
        `${ANY}${STANDING} ${INCIDENTS}(?: (?:to close|to be closed|waiting|left))?`,
        `${ANY}${INCIDENTS} (?:that (?:are|is) |which are |which is )?(?:still )?${STANDING}`,
        `${SHOW}${STANDING} ${INCIDENTS}`,
        `(?:which|what|how many) ${INCIDENTS} (?:are|is|'s|have|do we have|have we got) (?:still )?(?:${STANDING}|to close|to be closed|need closing)`,
        `${INCIDENTS} (?:still )?(?:to close|to be closed|open)`,
        `(?:has|have|did) (?:<person>|anyone|someone|we|you) (?:close|closed|sorted|dealt with) (?:that |last )?${INCIDENTS}`,
        `(?:is|are) (?:there )?(?:a |any |still a |still any )?${INCIDENTS} (?:still )?${STANDING}(?: (?:for|on|about|with) (?:<tip>|<scanner>|<load>))?`,
        `how many ${STANDING} ${INCIDENTS}(?: (?:are there|do we have|have we got))?`,
        `(?:are|is) (?:all )?${INCIDENTS} (?:all )?(?:closed|open|sorted|closed off|resolved|dealt with)`,
        `${ANY}${INCIDENTS} (?:to|that need|needing|need) (?:close|closing|to be closed|sorting|dealing with)`,
      ),
      make: (c) => incidentsOf(c, true),
    },
  ],
};

function incidentsOf(c: Clause, open: boolean): AskResult {
  const state = open ? { open } : {};
  return ask('incidents', { ...(daysBack(c) ?? {}), ...siteOf(c), ...state }, SURE, daysSaid(c));
}
