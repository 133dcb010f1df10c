import { ask, oneItem } from '../ask.ts';
import { asks, asksAt, form, type Phrases, SURE } from './phrase.ts';
import { ANY, SHOW } from './words.ts';

const WORN =
  '(?:(?:nearly|almost|about|getting|near|close to|coming up to|nearing|due|ready|due to be|needing|reaching|at|past|over|on|on the way|going|running|low on|short of|short on|short) ?(?:for |to |be )?)*(?:worn out|worn|finished for good|knackered|past it|old|limit|their limit|its limit|cycle limit|end|end of life|last legs|their last legs|retired|retiring|retirement|retire|replaced|replacing|replacement|replace|binned|binning|bin|limits|end of their life|cycles|max|maximum|life)';
const DO = '(?:(?:do|does|should|must|will|would|shall|is|has|does|when|can|did) ?)';

/** How far tips are worn, and whether to order. */
export const wear: Phrases = {
  name: 'ask:wear',
  phrases: [
    {
      form: form(
        `(?:which|what|how many) tips? (?:are|is|have|has|'re|need|needs|want|wants|will|should be)(?: got| to)? ?${WORN}`,
        `${ANY}tips? (?:that )?(?:are |is |need |needs |needing |wanting |want |to )?${WORN}`,
        `(?:are|is|do|does) any (?:tips?|of them) (?:need |needs |want )?(?:to )?(?:be )?${WORN}`,
        `${SHOW}(?:tip cycles|cycle counts?|tip wear|tip cycle counts?|tips wear|wear|tip life|tip lives|tips cycles|cycles on tips|cycles left)(?: (?:on|for|of|left) (?:tips|all tips|each tip|them))?`,
        `(?:which|what) tips? (?:has|have|s|is|are) ?(?:done|got|had)? ?(?:most|fewest|least|oldest) ?(?:cycles|uses|life|runs|goes|left)*(?: left)?`,
        `(?:which|what) (?:is|are|s) (?:oldest|most used|most worn|most cycled) tips?`,
        `(?:whats|which is) (?:oldest|most used|most worn|most worn out) tip`,
        `how many cycles (?:have|has|do|are|left|can) ?(?:tips|all tips|they|they all|each tip|each|we)? ?(?:done|got|have|left|had|got left|on tips|do)?`,
        `(?:which|what|how many) tips? (?:has|have|with|got) (?:got )?(?:no|few|hardly any|not many|least|fewest|most|only a few) (?:more )?(?:cycles|uses|goes|life|runs)(?: left)?`,
        `(?:which|what|any) tips (?:are |that are )?(?:wearing|wearing out|nearly done for|done for|on (?:their|its|the) last legs|getting old|getting worn)(?: out)?`,
        'tips (?:nearly |almost )?(?:done for|worn out|worn)',
        `(?:whats|what are) (?:tip |cycle |tips' |makers |maker's |tips )*(?:limit|limits)(?: (?:on|for|of) (?:tips|a tip|each tip))?`,
        `how many (?:cycles|times|goes|uses) (?:are|is) (?:tips|a tip|each tip) (?:good for|allowed|ok for|rated for|meant to do)`,
        `how (?:worn|old|used) (?:are|is) (?:tips|they|all tips)`,
        `when do tips (?:need|want) (?:replacing|binning|retiring|changing|to be replaced)`,
        `how (?:long|many cycles|many goes|many times) (?:do|does|can|will) (?:tips?|a tip|each tip) (?:last|do|have|go for|be used|get)`,
      ),
      make: asksAt('wear'),
    },
    {
      form: form(
        `how (?:old|worn|worn out|used) (?:is|are|s) <tip>(?: now)?`,
        `how (?:many|much) (?:more )?(?:cycles|uses|goes|life|times|runs) ?(?:more )?(?:has|does|is|can|will|have)? ?<tip> ?(?:got|have|do|last|good for|be used)? ?(?:left)?(?: in it)?`,
        `how (?:many|much) (?:more )?(?:cycles|uses|goes|life|runs) (?:is |are |does |has )?(?:left )?(?:on|in|for|left on|left in|left for) <tip>`,
        `(?:when|how soon) (?:s |is |does |do |will |should |must |would |to |shall )?(?:i |we |you )?(?:need to |have to )?(?:<tip> )?(?:be |need |needs |due |due for |want |have to be |get |for |to be )*(?:replaced?|replacing|binned|binning|bin|retired?|retiring|changing|changed|a change|renewing|replacement|retirement|throwing out|chucking)(?: <tip>)?`,
        `whens <tip> (?:due|due for|need|needing|to be|for|ready for) ?(?:to be )?(?:replaced?|replacing|binning|binned|bin|retiring|retired|replacement|retirement)`,
        `(?:is|are|s) <tip> (?:still )?${WORN}`,
        `(?:is|s) <tip> (?:nearly|almost|about|close to being) (?:finished|done|out|gone|dead)`,
        `when (?:will|does|is|s) <tip> (?:run out|wear out|hit its limit|reach its limit|expire|be done for|be worn out|get to its limit|at its limit)`,
        `(?:does|do|should|must) (?:we |i )?<tip> (?:need|needs|want|be)(?: to be)? (?:replacing|replaced|binning|binned|retiring|retired|changing)`,
        `how long (?:will|does|can|has|is) <tip> (?:last|got|got left|have left|good for|left)`,
        `(?:life|cycles|wear|cycle count) (?:of|on|for|left on|left in) <tip>`,
        `<tip> (?:cycles|cycle count|life|wear|age)`,
        `(?:whats|show|show me) <tip>(?:'s)? (?:cycle count|cycles|wear|age|life|count)`,
      ),
      make: (c) => {
        const item = oneItem(c, { before: false });
        if (item === null) return null;
        return ask('wear', { item: item.item }, SURE, { item: item.said }, item.missing);
      },
    },
    {
      form: form(
        `${DO}*(?:we|i|you|they|someone|need to)? ?(?:need to|have to|got to|ought to|want to|to|be)? ?(?:be )?(?:ordering|order|reorder|re-order|buy|buying|get in|order in|order up|stock up on)(?: (?:any|some|more|new|any more|some more|any new|a few))* ?tips?`,
        `(?:is it |it )?time to (?:order|reorder|re-order|buy)(?: (?:any|some|more|new))* tips`,
        `how many (?:new )?tips (?:do|should|shall|must|would|to) ?(?:we|i|you)? ?(?:need to|have to)? ?(?:order|buy|reorder|get in)`,
        `when (?:do|should|must|shall|will|to|are) ?(?:we|i|you)? ?(?:need to|have to|due to)? ?(?:order|buy|reorder|re-order)(?: (?:more|new|some|next|any|any more|some more))* tips`,
        `(?:do|does) (?:tips|any tips) (?:need|want) (?:ordering|reordering|to be ordered)`,
        `(?:tips?|tip) (?:order|reorder|ordering|re-order)(?: (?:due|status|needed|point|check|date))?`,
        `(?:are|r) (?:tips|we) (?:due|needing) (?:an order|order|ordering|to order)(?: of)?(?: tips)?`,
      ),
      asked: true,
      make: asks('order'),
    },
  ],
};
