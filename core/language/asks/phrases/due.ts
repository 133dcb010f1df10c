import type { Clause } from '../../clause.ts';
import { type AskResult, ask, siteOf } from '../ask.ts';
import { asksAt, asksOn, form, type Phrases, SURE } from './phrase.ts';
import { daysBack, daysSaid, isPast, todayOf } from './when.ts';
import { SHOW, WE } from './words.ts';

const BRIEF =
  '(?:morning |daily |full |quick |todays |todays morning |short )?(?:status|summary|overview|rundown|run down|run-down|briefing|brief|round up|roundup|round-up|sitrep|state of play|lowdown|low down|status report|status update|status check|summary report|handover|hand over)(?: (?:of|for|on) (?:everything|it all|day|all|things|practice|clinic))?(?: for me)?';
const SHORTER = '(?:recap|update|catch up|catch-up|heads up|to do list|picture)';
const FOR_WHOM = '(?: (?:of|on|for) (?:everything|things|day|us all))?';
const BEFORE_CLOSING =
  '(?: (?:before|b4) (?:we|i|you|ye) (?:close|close up|lock up|shut|shut up|go|go home|leave|finish|finish up|head off|start|open|open up|begin)| to close| to finish| for tonight| tonight)?';

/** What is due, what was left, and how everything stands. */
export const due: Phrases = {
  name: 'ask:due',
  phrases: [
    {
      form: form(
        `${SHOW}${BRIEF}`,
        `(?:give me|give us|gimme|can i (?:have|get)|can you give me|could you give me|i need|need) (?:a |me |us )?(?:quick |full |short )?${SHORTER}${FOR_WHOM}`,
        'hows (?:everything|it all|things) (?:looking|standing|stand)',
        'how do(?:es)? (?:things|everything|it all) (?:stand|look)',
        'wheres everything at',
        'wheres we (?:at |up to )?with everything',
        '(?:where|how) are we (?:at|up to) with everything',
        '(?:give me |give us |can you give me |could you give me |i need |need |can i have )?(?:a )?(?:quick |brief |short )?(?:summary|overview|rundown|update|recap) (?:of|on) (?:where (?:we are|were|things are|everything is|we stand|things stand)(?: at| up to| with everything)?)',
        'fill me in',
        'catch me up',
        'bring me up to (?:speed|date)',
        'run me through everything',
        'whats going on today',
      ),
      make: (c) => (isHeading(c) ? null : dueOf(c, { all: true })),
    },
    {
      form: form(
        `(?:is there )?anything (?:that )?${WE} (?:should|need to|ought to|must|have to|gotta) know(?: about)?`,
        `anything to (?:know|report|flag|worry about|be aware of|watch out for|watch for|look out for)`,
        `anything (?:i|we) should (?:be aware of|watch for|look out for|be worried about)`,
      ),
      make: (c) => dueOf(c, { all: true }),
    },
    {
      form: form(
        `(?:whats|what have|what did|what) ${WE} (?:missed|miss|forgotten|forget|forgot)(?: to do)?`,
        `(?:have|did) ${WE} (?:missed|miss|forgotten|forget|forgot)(?: to do)? (?:anything|something)(?: to do)?`,
        `(?:anything|something) ${WE}(?:'ve| have)? (?:missed|forgotten|forgot|miss)(?: to do)?`,
        `(?:did|have) ${WE} (?:do|done|get|got|did) everything(?: done)?`,
        `(?:did|have) ${WE} (?:do|done) (?:it all|all of it|all jobs|all my jobs)`,
        `is (?:everything|it all|all) (?:done|finished|complete|completed)`,
        `everything done`,
        `is there (?:anything|something) (?:else|left|more|still)(?: left)?(?: (?:for me )?to do| needs doing| needing done| to be done| outstanding| due)`,
        `(?:anything|something) (?:else|left|more|still)(?: left)?(?: (?:for me )?to do| needs doing| needing done| to be done| outstanding| due)${BEFORE_CLOSING}`,
        `(?:is there )?(?:anything|something) (?:else )?(?:for me |for us )?(?:to do|to be done|needs doing|needing doing|needing done)${BEFORE_CLOSING}`,
        `(?:is there )?(?:anything|something) (?:else )?${WE} (?:need to|have to|should|must|gotta|ought to) do${BEFORE_CLOSING}`,
        `what (?:else )?(?:needs|need|still needs|wants) (?:doing|done|sorting|sorted|attention|seeing to|attending to|to be done)${BEFORE_CLOSING}`,
        `whats (?:still )?(?:left|outstanding|remaining|pending)(?: (?:to do|to be done|undone))${BEFORE_CLOSING}`,
        `what (?:do|should|must|shall|can) i do (?:now|next)`,
        `is there anything (?:that )?(?:needs|wants|still needs|needing) (?:my |our |sorting|doing|attention|seeing to|looking at|dealing with|sorted|done|fixing)+(?:attention)?`,
        `(?:anything|something) (?:that )?(?:needs|wants|still needs|needing) (?:my |our )?(?:sorting|doing|attention|seeing to|looking at|dealing with|sorted|done|fixing)`,
        `whats (?:still )?(?:left |outstanding |remaining |still )?on (?:my |to do |to-do |jobs )?list`,
        `when (?:must )?(?:<scanner>|scanner|scanners) (?:must|should|has to|have to|needs to|need to)? ?be calibrated`,
        `when (?:do|should|must|have) (?:i|we) (?:need to |have to |to )?calibrate(?: (?:next|again|scanners|them|scanner))?`,
        'what day (?:do|should) (?:we|i) calibrate',
        '(?:which|what) (?:scanners?|ones?) (?:is|are|will be) (?:due|due calibration|due for calibration|due a calibration|overdue)',
        `did ${WE} (?:forget|miss|remember) to (?:cover|wipe|send|do|clean|close|bag|calibrate)(?: (?:anything|everything|something|it all))`,
        `whens (?:next )?(?:calibration|cal|calibrating)(?: day)?(?: due)?`,
        `what (?:now|next|now then)`,
        `whats next(?: (?:then|on list|to do|job|thing|please))?`,
        `what (?:should|shall) ${WE} be doing(?: now| next)?`,
        `whats (?:my |our )?next (?:job|task|thing)`,
        `(?:can|may|could|shall) ${WE} (?:close|close up|lock up|shut|shut up shop|finish up|finish|go home|head home|go|knock off|clock off)`,
        `(?:are|am) ${WE} (?:ok|okay|good|clear|fine|free|done) to (?:close|close up|lock up|shut|finish|go|go home|leave|head off)`,
        `(?:what|which) (?:jobs|tasks|things) (?:are |is |'s )?(?:left|outstanding|due|to do|on list)`,
        `(?:any|are there any|is there any|got any) (?:jobs|tasks|chores|reminders)(?: (?:left|outstanding|due|to do|for me|open))?`,
        `end of day (?:check|checks|list|checklist)`,
        `close ?-?(?:out|down|up) (?:list|check|checks|checklist)`,
        `what do ${WE} (?:need|have) to do${BEFORE_CLOSING}`,
      ),
      make: (c) => dueOf(c, {}),
    },
    {
      // "Anything before I go?", "are we all done?" where it is put as a question
      form: form(
        `(?:anything|something)(?: else)? (?:before|b4) (?:we|i) (?:close|close up|lock up|shut|go|go home|leave|finish|head off)`,
        `(?:are|r) we (?:all )?done for (?:the )?(?:day|night|today)`,
        'all jobs done',
      ),
      asked: true,
      make: asksAt('due'),
    },
  ],
};

/** What was missed yesterday is in that day's record. */
function dueOf(c: Clause, slots: Record<string, unknown>): AskResult {
  const days = isPast(c) ? daysBack(c) : null;
  if (days !== null && days.to < todayOf(c))
    return ask('record', { ...days, ...siteOf(c) }, SURE, daysSaid(c));
  return asksOn('due', slots)(c);
}

/** "Summary:", "OVERVIEW": the heading of something that was pasted. */
function isHeading({ scope: { note } }: Clause): boolean {
  return /^\s*(?:S(?:ummary|UMMARY)|O(?:verview|VERVIEW))\s*[:.]?\s*$/.test(note);
}
