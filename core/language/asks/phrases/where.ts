import type { Clause } from '../../clause.ts';
import { placeOf } from '../../roles/place.ts';
import { type AskResult, ask, oneItem } from '../ask.ts';
import { asks, form, type Phrases, SURE } from './phrase.ts';

const PLACE = '(?:<site>|<room> (?:at |in )?<site>|<room>)(?: (?:now|today|<time>|right now|at moment))?';
const IN = '(?:at|in|over at|up at|down at|on|for)';

/** Where everything is, what is somewhere, and what is on or in something. */
export const where: Phrases = {
  name: 'ask:where',
  phrases: [
    {
      form: form(
        'wheres (?:all |both )?(?:everything|scanners|scanner fleet|all scanners|them all)(?: (?:now|at|to|gone|got to|today|hiding))?',
        '(?:where|whereabouts) (?:have|did) (?:all |both )?(?:scanners|everything) (?:gone|go|got to|end up|get to)',
        "(?:who(?:'s| is| has| has got|s|'s got) |whos got |who have )(?:got )?(?:all )?scanners",
        '(?:show|list|show me|list me|tell me) where (?:everything|all scanners|scanners) (?:is|are)',
        '(?:which|what) (?:site|clinic|branch|practice|room|surgery)s? (?:are|is) (?:all )?scanners (?:at|in)?',
        'where (?:everything|all scanners|scanners) (?:is|are)',
        'scanner locations?',
        'locations? of (?:all )?scanners',
        'whereabouts of (?:all )?scanners',
      ),
      make: asks('where'),
    },
    {
      form: form(
        `(?:whats|what have we got|what have you got|what do we have|what is there|whats kept|whats sitting) (?:currently |still )?${IN} ${PLACE}`,
        `(?:which|what) (?:scanners?|kit|equipment|stuff)(?: and tips)? (?:is|are|'s|have we got|do we have)(?: currently)? ${IN} ${PLACE}`,
        `(?:whats|what has) ${PLACE} got`,
        `what (?:does|has) ${PLACE} (?:have|got)`,
        `(?:are|is) (?:there )?any scanners? ${IN} ${PLACE}`,
        `(?:any|how many) scanners? ${IN} ${PLACE}`,
        `(?:anything|any kit) ${IN} ${PLACE}`,
        `is there (?:a scanner|one|a scanner set up|one set up|one already set up|a scanner ready|one ready|a scanner already set up) ${IN} ${PLACE}`,
      ),
      placed: true,
      make: atPlace,
    },
    {
      form: form(
        '(?:which|what|wich) (?:tip|one|tip number) (?:is|are|was|s)? ?on <scanner>',
        '(?:which|what) tip (?:has|did|does|is) <scanner> (?:got|have|wearing|using)(?: on)?',
        '(?:which|what) tip (?:is|was|are|did|have) (?:it|we|i|you|someone|they) (?:put|got|fit|fitted|using|use)? ?on <scanner>',
        'whats (?:currently )?(?:on|fitted to|fitted on|fitted) <scanner>',
        'when (?:did|is|does|will|s) <scanner> (?:leave|left|arrive|get there|get here|get back|go|move|come|came|come back|due back|back|coming back|due here|be back|set off)(?: (?:for|to|at|from))?',
        '(?:has|is|did) <scanner> (?:still )?(?:arrived|left|gone|on its way|on the way|on way|en route|got there|been moved|back|back yet|in transit|travelling|set off|arrive|leave|moved|missing|found|lost)(?: yet)?',
        'how long has <scanner> been (?:there|here|away|gone|out)?',
        '(?:has|does|did) <scanner> (?:have|got|get) (?:a|any) tip(?: on| fitted)?',
        '(?:is there |is )?(?:a|any) tip (?:still )?on <scanner>(?: now)?',
        "whats (?:tip )?(?:number )?on <scanner>'s (?:tip|head|end)",
        'what (?:has|s) <scanner> got on(?: it)?',
      ),
      make: (c) => itemOf(c, true),
    },
    {
      form: form(
        '(?:what|which) (?:load|cycle|batch|run) (?:is|was|did|has|are|s) <tip> (?:in|go in|been in|go into|with|part of|put in|go on|on|go through in)?',
        'when (?:did|was|has) <tip> (?:go|went|put|gone|sent|leave|been put|been sent|last sent) ?(?:in|into|to|off|through|in to)? ?(?:autoclave|<autoclave>|load|a load|steri|wash)?',
        'how long has <tip> been (?:in|away|gone|out|sterile|held|on hold|missing|dirty|used|waiting|in autoclave|there|sitting|like that)(?: (?:autoclave|<autoclave>|for))?',
        'is <tip> (?:still )?(?:missing|lost|found|back yet|held|on hold|out)',
        '(?:has|did) (?:anyone|anybody|someone|we) (?:find|found|seen|lost|lose) <tip>(?: yet)?',
        '(?:why|how come) (?:was|is|did|s) <tip> (?:held|on hold|taken out|put on hold|retired|binned|out of use)',
        '(?:which|what) (?:loads|cycles|load) (?:has|was|have|did) <tip> (?:been|go|gone) (?:in|through|into)',
        '(?:which|what) (?:load|cycle) (?:has|had) <tip>(?: in it)?',
        '(?:which|what) scanner (?:is|was|s) <tip> on',
        'whats <tip> on',
        'when(?:s| will| is|ll| does| can i expect) <tip> (?:be |due |come |coming |get |to be )?(?:back|out|done|finished|ready|back again|through|sterile)',
        'how long (?:till|til|until|before|for) <tip>(?: is| will be)? ?(?:back|out|done|finished|ready|sterile)?',
        '(?:hows|how is) <tip>(?: (?:doing|getting on|coming along))?',
        `<tip> when (?:come |coming |will come |is )?(?:back|ready|done|out)`,
        `(?:is|has) <tip> (?:been )?(?:back yet|finished|done|out|through|come back|come out|came back|out of autoclave|back from autoclave|still in autoclave|in autoclave|in a load|on a scanner|still on a scanner|at autoclave)(?: yet)?`,
      ),
      make: (c) => itemOf(c, false),
    },
  ],
};

function atPlace(c: Clause): AskResult | null {
  const place = placeOf(c);
  if (place?.site === undefined || place.missing !== undefined) return null;
  const room = place.room === undefined ? {} : { room: place.room };
  return ask('where', { site: place.site, ...room }, SURE, { site: place.said });
}

function itemOf(c: Clause, ofScanner: boolean): AskResult | null {
  const item = oneItem(c, { before: false });
  if (item === null || item.item.startsWith('scanner:') !== (ofScanner || item.missing !== undefined))
    return null;
  return ask('where', { item: item.item }, SURE, { item: item.said }, item.missing);
}
