import type { Clause } from '../clause.ts';
import { type Ask, ask, siteOf, WH, wordsOf } from './ask.ts';

/** Which tips, or how many, are in a state. */
export const tips: Ask = {
  name: 'ask:tips',
  read(c, question) {
    const text = wordsOf(c);
    const set = c.entities('tips').find(({ entity }) => entity.which !== undefined);
    const ones = question ? c.word(/^ones$/) : -1;
    const nameless = question && NAMELESS.test(text);
    if (c.at('tip') < 0 && set === undefined && ones < 0 && !nameless) return null;
    if (OUT_OTHERWISE.test(text) || (c.scope.memory.load !== null && / in (it|that|there)$/.test(text)))
      return null;
    if (c.entities('tips').some(({ entity }) => entity.ids.length > 0)) return null;
    c.use(ones);
    const short = question && (set !== undefined || SHORT.test(text));
    if (!short && !listAsked(text, question)) return null;
    const filter = filterOf(c, text, set?.entity.which);
    if (filter === null) return null;
    c.use(set?.at ?? -1);
    c.useTags(
      ...WH,
      'tip',
      'sterile',
      'sterilise',
      'use',
      'clean',
      'bag',
      'wash',
      'shelf',
      'finish',
      'unit',
      'record',
      'send',
      'autoclave',
      'leave',
      'come',
      'go',
      'book',
      'patient',
      'fit',
      'scanner',
      'pass',
      'lose',
      'hold',
      'wash',
      'release',
      'load',
      'steri',
      'retire',
      'open',
      'number',
      'keep',
      'wait',
      'dry',
      'check',
      'want',
    );
    const site = /\bsteri tips?\b/.test(text) ? {} : siteOf(c);
    return ask('tips', { filter, ...site }, nameless ? 1.9 : 1.4);
  },
};

function listAsked(text: string, question: boolean): boolean {
  if (!LIST_WORDS.test(text)) return false;
  return question || LIST_OPENS.test(text.replace(COURTESY, ''));
}

const LIST_WORDS =
  /\bwhich\b|\bwhat\b|how many|what's|whats|list|how's|how are|have we|do we have|any|are there|show|where are|where's|where do|tell me|status|state of|give me|gimme|got|is there|^are all|wats|tips? left|ones left|any .*left|left on the|rundown|run down|overview|inform me|need to know|all (the )?tips/;
const COURTESY =
  /^(?:(?:hi|hello|hey|morning|please|pls|plz|can|could|cud|would|you|u|ye|i|we|so|and|ok|right|sorry|bot|,)(?: |$))+/;
const LIST_OPENS =
  /^(?:which|what|how many|list|show|any|status|state|give|gimme|get|have|see|tell|tips?|need to know|inform|full list|rundown|run down|overview|all|the status|a list|looking for a list)\b/;
/** Put as a question without a verb: "tips available?", "dirty tips?". */
const SHORT =
  /^(?:any |the |so )*(?:(?:dirty|used|clean|sterile|spare) tips?|tips? (?:still |not |ok |that are )*(?:out|available|left|ready|dirty|clean|sterile|free|back|in use|missing|on the shelf))\b/;

/** "What's sterile", "what's left on the shelf": only tips are spoken of so. */
const NAMELESS =
  /^(?:so |and |right )*what(?:'s| is|s)? (?:still )?(?:left on the shelf|on the shelf|sterile|still out|out)(?: and sterile)?(?: now| right now| right| please| pls| here| at the moment)*$|^(?:so |and )?what (?:have we got|do we have) that(?:'s| is) (?:still )?sterile$/;
/** "Check out the tips", "round out the report with a tip". */
const OUT_OTHERWISE =
  /\b(?:check|checking|checked|find|finding|figure|figuring|point|turn|round|hand|give|come) out\b|\bany of (?:you|us)\b/;

const CAN_BE_USED =
  /\b(?:can|may|could|should|ok|okay|fine|safe|good|ready|free|allowed) (?:(?:to|be|we|i|for|now|still) )*used?\b/;
const TO_REPROCESS =
  /\bused\b|dirty|contaminated|needs? reprocess|\b(?:needs?|needing|have to|has to|waiting|left|due) (?:to )?(?:be |go |get )?(?:a )?(?:wash|clean|steril|process|reprocess|doing|autoclav|through the autoclave|in the autoclave|to go|go)|(?:need|have|got|want) to (?:wash|clean|reprocess)/;
const OFF_SHELF =
  /\bout\b|missing|on scanners|off the shelf|in circulation|on hold|held|away|in the autoclave|in steri|in use|unavailable|\b(?:not|n't|aren't|arent|isn't|isnt) (?:\w+ ){0,2}(?:sterile|back|on the shelf|available|clean|ready)/;
const STERILE =
  /clean|ready|available|good to go|fresh|usable|can (?:we|i) use|on the shelf|\bleft\b|spare|(?:ok|fine|safe|good|safe) to use/;

function filterOf(c: Clause, text: string, which: string | undefined): string | null {
  if (CAN_BE_USED.test(text) || /\bsteri tips?\b/.test(text)) return 'sterile';
  if (TO_REPROCESS.test(text) || which === 'used') return 'used';
  if (OFF_SHELF.test(text)) return 'out';
  if (c.has('sterile', 'sterilise') || STERILE.test(text) || which === 'sterile') return 'sterile';
  if (which === 'washed' || which === 'bagged' || which === 'sent') return 'out';
  if (
    /(which|what|how many|list|all|show|status|state|rundown|run down|overview|how are|stand)/.test(text) &&
    /(have|got|there|all|list|own|status|state|at|total|do we|tips|stand)/.test(text)
  )
    return 'all';
  return null;
}
