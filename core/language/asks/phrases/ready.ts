import { addDays } from '../../../time/zone.ts';
import type { Clause } from '../../clause.ts';
import { autoclaveItem } from '../../roles/autoclave.ts';
import { type AskResult, ask, dayOf, oneItem, siteOf } from '../ask.ts';
import { form, type Phrases, SURE } from './phrase.ts';
import { todayOf } from './when.ts';

const ALL = '(?:everything|it all|things|all scanners|scanners|all of them|all)';
const FIT =
  '(?:ready|all ready|good to go|gtg|ready to go|ready to use|ready for use|set|all set|set up|all set up|sorted|all sorted|prepped|in order|set to go|in place|right to go|grand|ok to use|good to use|up and running|usable|ready to rock)';
const FOR_WORK =
  '(?: (?:for|to) (?:clinic|morning|afternoon|patients|first patient|next patient|list|session|morning list|afternoon list|use|start|starting|go|open|opening|begin|off|first scan|next scan|scanning|scans|scan|day|us|me|<number>))*';
/** Things of which it is asked how they are. */
const ITEM = '(?:<scanner>|scanner|<tip>|<autoclave>|autoclave|<load>)';

/** Whether everything is ready, and how one thing stands. */
export const ready: Phrases = {
  name: 'ask:ready',
  phrases: [
    {
      form: form(
        `(?:is|are) ${ALL} (?:all )?${FIT}${FOR_WORK}`,
        `whats (?:status|state|condition) (?:of|on|with) (?:all )?scanners`,
        `(?:any|are there any|is there any|got any|have we got any) (?:problems?|issues?|trouble|faults?|bother) with (?:any of )?(?:scanners?|kit|them)`,
        `(?:is|are) any scanners? (?:down|out|out of service|held|off|broken|not ready|out of use|out of action|overdue|due)`,
        `(?:which|what) scanners? (?:is|are|'s|isn't|aren't) (?:not )?(?:down|out|out of service|held|off|broken|ready|out of use|out of action|usable|unusable)`,
        `(?:are|r) we (?:all )?${FIT}${FOR_WORK}`,
        `is (?:everything|it all) (?:good|ok|okay|fine|alright|all right|as it should be)${FOR_WORK}`,
        `am i (?:all )?${FIT}${FOR_WORK}`,
        `(?:is|are) (?:any|both|either|which) (?:of )?(?:scanners?|them) ${FIT}${FOR_WORK}`,
        `(?:which|what) scanners? (?:can|could|do|should|shall|may) (?:i|we) (?:use|take|have|grab)`,
        `(?:which|what) scanners? (?:is|are|'s) (?:free|available|clear|not in use|ok|good|fine|ready|spare)`,
        `(?:is|have) (?:everything|we|it all) been (?:calibrated|prepped|set up)`,
        `(?:can|could|may) (?:i|we) (?:start|begin|get started|start scanning|scan|start clinic|start list|crack on)`,
        `(?:are|r) we (?:ok|okay|good|clear|able|allowed|right|safe|fit) to (?:start|scan|go|begin|get going|start scanning)`,
        `(?:(?:is there|are there|do we have|have we got|have we|got|is|there) (?:a|any)|are there|any) scanners? (?:free|available|ready|spare|going|clear|i can use|we can use|to use|not in use)(?: (?:for me|for us|to use))?`,
        `(?:hows|how are) scanners(?: doing| looking)?`,
        `scanners? (?:status|state|check)`,
        `(?:status|state|condition) (?:of|on|for) (?:all )?scanners`,
      ),
      make: everything,
    },
    {
      form: form(
        `(?:everything|all|scanners|all scanners) ${FIT}${FOR_WORK}`,
        `(?:good|ready|all set|all ready|set) (?:to go|to start|to scan)${FOR_WORK}`,
        `${FIT}${FOR_WORK}`,
      ),
      asked: true,
      make: bare,
    },
    {
      // Without a day it may be of anything
      form: form('(?:are|r) we (?:all )?(?:good|ok|okay|fine|grand|right|alright|covered|sorted)'),
      timed: true,
      make: everything,
    },
    {
      form: form(
        `${ITEM} (?:status|state|condition|update|check)`,
        `(?:whats |what is |check |show |show me |give me |tell me )?(?:status|state|condition) (?:of|on|for|with) ${ITEM}`,
        `(?:whats|what seems to be) (?:wrong|matter|problem|issue|trouble) with (?:<scanner>|<tip>|<autoclave>)`,
        `(?:is there |is )?(?:anything|something) (?:wrong|up|matter) with (?:<scanner>|<tip>|<autoclave>)`,
        `(?:why|how come) (?:isn't|is not|ain't|is|can't (?:i|we) use|can (?:i|we) not use|'s|can't i use) (?:<scanner>|<tip>|<autoclave>)(?: (?:not )?(?:ready|held|on hold|out|off|out of service|down|due|out of use|not ready|working|overdue|usable|available))?`,
        `(?:hows|how is) (?:<scanner>|<autoclave>)(?: (?:doing|looking|getting on|today|now))?`,
        `when (?:can|could|may|will|shall) (?:i|we|you|anyone|someone) (?:use|have|get|take|start using|scan with|be able to use) (?:<scanner>|scanner|<autoclave>)`,
        `when(?:s| will| is|ll|'s| does) (?:<scanner>|scanner|<autoclave>)(?: be| get)? (?:ready|free|available|usable|settled|good to go|ok to use|back in use|back in service)`,
        `(?:how long|how much longer) (?:till|til|until|before|for|to) (?:<scanner>|scanner)(?:'s| is| will be| can be)? ?(?:ready|free|settled|settles|used|usable|available|done)?`,
        `how long (?:does|will|must|should|do) (?:<scanner>)(?: (?:need|have|take|want))?(?: to)? (?:settle|sit|rest|wait|acclimatise|warm up|stand)(?: for)?`,
        `(?:is|are) (?:any |either |both )?(?:autoclaves?|<autoclave>) (?:ready|ok|okay|fine|good|safe|clear|up and running|working|in service|out of service|held|on hold|down|off|back)(?: (?:for|to) (?:next load|use|go|a load|load|run|be used))*`,
        `(?:can|could|may) (?:i|we|you) (?:use|run|load|start|put a load in) (?:autoclave|<autoclave>)`,
        `(?:can|may|could) (?:i|we) (?:use|fit|have|put on|take) <tip>(?: (?:or|and) (?:is|not|no).*)?`,
        `(?:when )?(?:can|may|should|could) (?:i|we|you) (?:calibrate|start calibrating) <scanner>`,
        `is <scanner> (?:warm|cool|settled|ready) ?(?:enough)?(?: to (?:calibrate|use|scan|be calibrated))?`,
        `<tip> (?:can use|can i use|ok to use|good to use|usable|safe to use)(?: (?:or|yes or) (?:no|not))?`,
        `(?:how long|how much longer) (?:till|til|until|before) (?:i|we|you|someone) can (?:use|scan with|have|take|scan on|start with) <scanner>`,
        `(?:is|has) <scanner>(?: been)? (?:settled|acclimatised|warmed up|had time to settle|finished settling)`,
      ),
      make: one,
    },
  ],
};

/** "Ready for Friday?" is asked of many things; "all set for tomorrow?" less so. */
function bare(c: Clause): AskResult | null {
  const { day } = dayOf(c, siteOf(c).site);
  const far = typeof day === 'string' && day > addDays(todayOf(c), 1);
  return far || c.parts.length > 9 ? null : everything(c);
}

/** Nobody scans then: it is of an evening out. */
const ELSEWHEN = /\b(?:night|tonight|evening|weekend|holidays?)\b/i;

function everything(c: Clause): AskResult | null {
  const site = siteOf(c);
  const { day } = dayOf(c, site.site);
  if (ELSEWHEN.test(c.scope.note)) return null;
  // Of a day to come nothing is known of scanners: whether tips will do is
  if (typeof day === 'string' && day > todayOf(c)) return ask('supply', { ...site, day }, SURE);
  return ask('ready', site, SURE);
}

function one(c: Clause): AskResult | null {
  if (c.at('autoclave') >= 0 && c.entities('autoclave').length === 0) {
    const item = autoclaveItem(c) ?? 'autoclave';
    return ask('ready', { item }, SURE);
  }
  const load = c.first('load');
  if (load !== null) return ask('load', { load: load.entity.ids[0] ?? '' }, SURE, { load: [load.at] });
  const item = oneItem(c, { before: false });
  return item === null ? null : ask('ready', { item: item.item }, SURE, { item: item.said }, item.missing);
}
