import type { Clause } from '../../clause.ts';
import { type AskResult, ask, siteOf } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';
import { daysBack, daysSaid } from './when.ts';
import { SHOW } from './words.ts';

const WHO = '(?:we|i|they|everyone|everybody|people|team|girls|nurses)';
const LOG =
  '(?:log|logs|record|records|report|notes|entries|log book|logbook|diary|audit trail|history|activity|paperwork)';
/** What a record counts. */
const COUNTED =
  '(?:scans|patients scanned|loads|cycles|calibrations|wipe downs|wipe-downs|wipedowns|moves|faults|tips)';

/** What happened on a day, what somebody did, how much was done. */
export const record: Phrases = {
  name: 'ask:record',
  phrases: [
    {
      form: form(
        '(?:what|what all|whats) (?:has |have |was |went |been |all )*(?:happened|happening|happen|gone on|went on|going on|noted|recorded|logged|done|written down|on)(?: (?:here|everywhere|in clinic))?',
        'what went(?: on| wrong| down)?',
        `what (?:have|did|has|all did) ${WHO} (?:do|done|did|note|log|record|get done|get up to|get through|write down)`,
        'who (?:did|done|has done) what',
        '(?:show|show me|give me|tell me about)',
        '(?:show |show me |give me |list |send me |export )?everything (?:that )?(?:happened|noted|done|recorded|logged|from|that happened|that was done|that was noted)',
        'what (?:was|were) (?:done|noted|recorded|logged|going on)',
        `${SHOW}(?:notes|entries|activity|goings on|goings-on)`,
        `how many ${COUNTED} (?:have|did|has|had|were|was|got) ?${WHO}? ?(?:do|done|did|have|run|ran|use|used|get through|been|made|get done|carry out)?(?: run| done| used| made)?`,
        `how many tips (?:did|have) ${WHO} (?:bin|binned|retire|retired|throw out|lose|lost|get through|use|used|chuck)(?: (?:out|away))?`,
        '(?:any|were there any|have we had any|did we have any|what|how many) (?:faults?|problems?|issues?|breakages|drops|dropped tips)(?: (?:have|were|did|with|on|noted|we|been|there|had|have) ?)*(?:scanners?|tips|autoclave|noted)?',
        `(?:number|count|total|total number) of ${COUNTED}(?: (?:done|run|made|used))?`,
        `how many times (?:have|did) ${WHO} (?:scan|calibrate|wipe down|run autoclave)(?:ned|d)?`,
      ),
      timed: true,
      make: ofDays,
    },
    {
      form: form(
        'what (?:did|has|have|had|was|is) <person> (?:do|done|did|been doing|note|noted|log|logged|been up to|get done|record|recorded|write|written)(?: down)?',
        `(?:show |show me |give me )?<person>(?:'s)? ${LOG}`,
        '(?:show |show me |give me |list )?(?:everything|what|anything) (?:that )?<person> (?:did|has done|noted|logged|recorded)',
        `how many ${COUNTED} (?:did|has|have) <person> (?:do|done|did|run|ran|put on|use|used)`,
        'whats <person> (?:done|been doing|been up to)',
      ),
      timed: true,
      make: ofPerson,
    },
  ],
};

function ofDays(c: Clause): AskResult | null {
  const days = daysBack(c);
  return days === null ? null : ask('record', { ...days, ...siteOf(c) }, SURE, daysSaid(c));
}

function ofPerson(c: Clause): AskResult | null {
  const person = c.first('person');
  const days = daysBack(c);
  if (person === null || days === null || !person.entity.known) return null;
  return ask('record', { ...days, ...siteOf(c), person: person.entity.name }, SURE, {
    ...daysSaid(c),
    person: [person.at],
  });
}
