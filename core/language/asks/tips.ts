import type { Clause } from '../clause.ts';
import { type Ask, ask, siteOf, WH, wordsOf } from './ask.ts';

/** Which tips, or how many, are in a state. */
export const tips: Ask = {
  name: 'ask:tips',
  read(c, question) {
    const text = wordsOf(c);
    const set = c.entities('tips').find(({ entity }) => entity.which !== undefined);
    const ones = question ? c.word(/^ones$/) : -1;
    if (c.at('tip') < 0 && set === undefined && ones < 0) return null;
    if (c.entities('tips').some(({ entity }) => entity.ids.length > 0)) return null;
    c.use(ones);
    const short = question && (set !== undefined || /^(any )?tips? out\b/.test(text));
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
    );
    return ask('tips', { filter, ...siteOf(c) }, 1.4);
  },
};

function listAsked(text: string, question: boolean): boolean {
  if (!LIST_WORDS.test(text)) return false;
  return (
    question ||
    LIST_OPENS.test(text.replace(/^(hi|hello|hey|morning|please|pls|can you|could you|so|and|ok) /, ''))
  );
}

const LIST_WORDS =
  /\bwhich\b|\bwhat\b|how many|what's|whats|list|how's|have we|do we have|any|are there|show|where are|where's|tell me|status|give me|got|is there|are all|wats|left/;
const LIST_OPENS = /^(which|what|how many|list|show|any|status|give|tell|tips)/;

function filterOf(c: Clause, text: string, which: string | undefined): string | null {
  if (
    /\bused\b|dirty|\b(still )?needs? (washing|cleaning|a wash|a clean|sterilising|processing|reprocessing|doing|to go)|need reprocessing|contaminated|need to go/.test(
      text,
    ) ||
    which === 'used'
  )
    return 'used';
  if (
    /\bout\b|missing|not sterile|aren't sterile|on scanners|not back|off the shelf|in circulation|on hold|held|not available|away|in the autoclave|in steri|in use|unavailable/.test(
      text,
    )
  )
    return 'out';
  if (
    c.has('sterile', 'sterilise') ||
    /clean|ready|available|good to go|fresh|usable|can (we|i) use|on the shelf|\bleft\b|spare|ok to use|fine to use|safe to use|can be used/.test(
      text,
    ) ||
    which === 'sterile'
  )
    return 'sterile';
  if (which === 'washed' || which === 'bagged' || which === 'sent') return 'out';
  if (
    /(which|what|how many|list|all|show|status)/.test(text) &&
    /(have|got|there|all|list|own|status|at|total|do we|tips)/.test(text)
  )
    return 'all';
  return null;
}
