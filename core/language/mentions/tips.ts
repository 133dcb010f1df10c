import type { TipSet } from '../../reading/slots.ts';
import type { TipsSaid } from '../part.ts';
import { endOfTag, type Finder, type Found, isNumber, matchAt, type Scan, textAt } from './scan.ts';
import { type IdList, tipList } from './tip-list.ts';

function said(list: IdList, named: boolean): TipsSaid {
  return { is: 'tips', ids: list.ids, unknown: list.unknown, choices: list.choices, except: [], named };
}

/** "Tip 4", "tips 2, 5 and 7", "T4", "#4". */
export const tipsByNumber: Finder = (scan, at) => {
  const noun = endOfTag(scan, at, 'tip');
  if (noun > 0) {
    const several = /s$/.test(textAt(scan, noun - 1)) && textAt(scan, noun - 1) !== "'s" ? 'several' : 'one';
    const list = tipList(scan, noun, several);
    return list === null ? null : { entity: said(list, true), to: list.to };
  }
  const text = textAt(scan, at);
  if (text === '#' && isNumber(scan, at + 1)) {
    const list = tipList(scan, at, 'no');
    return list !== null && list.ids.length > 0 ? { entity: said(list, false), to: list.to } : null;
  }
  if (text.length > 3 || scan.tokens[at]?.kind !== 'word') return null;
  const list = tipList(scan, at, 'no');
  return list?.lettered && (list.ids.length + list.choices.length > 0 || scan.names.tips.prefixes.has(text))
    ? { entity: said(list, true), to: list.to }
    : null;
};

/** Numbers with no word "tip" beside them: "4 and 6", taken for tips only where nothing else claims them. */
export const tipsBare: Finder = (scan, at) => {
  if (!isNumber(scan, at) || !standsFree(scan, at)) return null;
  if (/^(at|@)$/.test(textAt(scan, at - 1)) && !/^(look|looked|looking)$/.test(textAt(scan, at - 2)))
    return null;
  const list = tipList(scan, at, 'no');
  if (list === null || /^[)%]$/.test(textAt(scan, list.to)) || opensItem(scan, at) || counts(scan, list.to))
    return null;
  return { entity: said(list, false), to: list.to };
};

/** "4. Sometimes …" numbers a line. */
function opensItem(scan: Scan, at: number): boolean {
  const first = at === 0 || textAt(scan, at - 1) === '\n';
  return (
    first &&
    textAt(scan, at + 1) === '.' &&
    scan.tokens[at + 1]?.spaced === false &&
    scan.tokens[at + 2]?.kind === 'word'
  );
}

/** "1 ham and 2 eggs": a number before a thing counts it. */
function counts(scan: Scan, to: number): boolean {
  const next = scan.tokens[to];
  if (next?.kind !== 'word' || next.text === "'s") return false;
  const match = matchAt(scan, to);
  if (match === null) return true;
  return !match.senses.some(
    (s) =>
      s.sort === 'glue' ||
      s.sort === 'verb' ||
      s.sort === 'mood' ||
      s.sort === 'name' ||
      s.sort === 'number' ||
      s.tag === 'tip' ||
      s.tag === 'pouch' ||
      s.tag === 'mirror' ||
      s.tag === 'scan' ||
      s.tag === 'booking',
  );
}

/** A number that hangs on a letter or a mark ("md5", "#12", "1)") is part of something else. */
function standsFree(scan: Scan, at: number): boolean {
  const before = scan.tokens[at - 1];
  if (before === undefined || scan.tokens[at]?.spaced) return true;
  if (before.text === '.' && !before.spaced && scan.tokens[at - 2]?.kind === 'number') return false;
  return (
    before.kind === 'mark' &&
    /^[,(&+/.!?;:\-\n]$/.test(before.text) &&
    !(before.text === '-' && !before.spaced && at > 1)
  );
}

const SETS: Readonly<Record<string, TipSet>> = {
  used: 'used',
  dirty: 'used',
  contaminated: 'used',
  soiled: 'used',
  washed: 'washed',
  rinsed: 'washed',
  scrubbed: 'washed',
  cleaned: 'washed',
  bagged: 'bagged',
  pouched: 'bagged',
  wrapped: 'bagged',
  packed: 'bagged',
  sealed: 'bagged',
  packaged: 'bagged',
  sent: 'sent',
  sterile: 'sterile',
  sterilised: 'sterile',
  sterilized: 'sterile',
  clean: 'sterile',
  autoclaved: 'sterile',
};
function setNamed(word: string): TipSet | undefined {
  return Object.hasOwn(SETS, word) ? SETS[word] : undefined;
}

const WHOLE = new Set(['all', 'every', 'remaining', 'each', 'rest', 'other', 'others', 'everything']);
const FILLERS = new Set([
  'the',
  'of',
  'our',
  'my',
  'those',
  'these',
  'other',
  'remaining',
  'rest',
  'them',
  'lot',
  "today's",
  'todays',
  'still',
  'just',
]);
const NOUNS = new Set(['tips', 'ones', 'tip', 'lot', 'stuff']);
const BARRING = new Set([
  'except',
  'bar',
  'but',
  'excluding',
  'minus',
  'excl',
  'barring',
  'without',
  'besides',
  'exc',
]);

/** "All the used tips bar 3", "the rest of the bagged ones", "all tips". */
export const tipsBySet: Finder = (scan, from) => {
  const head = textAt(scan, from);
  if (!WHOLE.has(head) && head !== 'the' && setNamed(head) === undefined) return null;
  const lead = leadOf(scan, from);
  if (lead === null) return null;
  const which = setNamed(textAt(scan, lead.to)) ?? setBySense(scan, lead.to);
  const at = which === undefined ? lead.to : lead.to + 1;
  const noun = textAt(scan, at);
  if (!NOUNS.has(noun)) {
    const bare = lead.whole && which !== undefined && (barring(scan, at) > 0 || AFTER_SET.test(noun));
    return bare ? withExceptions(scan, which, at) : null;
  }
  if (!isSet(which, lead.whole, noun, head)) return null;
  // "used tips 2 and 6" names them.
  if (tipList(scan, at + 1, 'several') !== null && !BARRING.has(textAt(scan, at + 1))) return null;
  return withExceptions(scan, which ?? 'all', at + 1);
};

/** What may follow "all used" where the noun goes unsaid. */
const AFTER_SET = /^(in|to|are|is|has|sent|gone|went|now|washed|bagged|except|sterile)$/;

/** Past "all of the", "the rest of the", and whether every one is meant. */
function leadOf(scan: Scan, from: number): { to: number; whole: boolean } | null {
  let to = from;
  let whole = false;
  while (FILLERS.has(textAt(scan, to)) || WHOLE.has(textAt(scan, to))) {
    whole ||= WHOLE.has(textAt(scan, to)) && textAt(scan, to) !== 'other';
    to++;
    if (to > from + 6) return null;
  }
  return { to, whole };
}

function isSet(which: TipSet | undefined, whole: boolean, noun: string, head: string): boolean {
  if (which === undefined) return whole && noun === 'tips';
  return whole || noun === 'tips' || (noun === 'ones' && head === 'the');
}

const SET_TAGS: Readonly<Record<string, TipSet>> = {
  use: 'used',
  wash: 'washed',
  bag: 'bagged',
  send: 'sent',
  sterile: 'sterile',
};

function setBySense(scan: Scan, at: number): TipSet | undefined {
  const match = matchAt(scan, at);
  const sense =
    match !== null && match.to === at + 1
      ? match.senses.find((s) => s.form === 'd' && Object.hasOwn(SET_TAGS, s.tag))
      : undefined;
  return sense === undefined ? undefined : SET_TAGS[sense.tag];
}

function withExceptions(scan: Scan, which: TipSet, after: number): Found {
  const entity: TipsSaid = { is: 'tips', ids: [], unknown: [], choices: [], which, except: [], named: true };
  const at = barring(scan, after);
  if (at < 0) return { entity, to: after };
  const noun = endOfTag(scan, at, 'tip');
  const list = tipList(scan, noun > 0 ? noun : at, 'several');
  if (list === null || list.choices.length > 0) return { entity, to: after };
  return { entity: { ...entity, except: list.ids, unknown: list.unknown }, to: list.to };
}

/** Past "except for", "apart from", "other than", "but not"; −1 where none stands there. */
export function barring(scan: Scan, from: number): number {
  const at = /^[,(]$/.test(textAt(scan, from)) ? from + 1 : from;
  const [one, two] = [textAt(scan, at), textAt(scan, at + 1)];
  const pair = `${one} ${two}`;
  if (
    /^(apart from|other than|except for|but not|aside from|all but|bar for|with exception|and not|just not)$/.test(
      pair,
    )
  )
    return at + 2;
  if (pair === 'not including' || pair === 'leaving out' || pair === 'save for' || pair === 'not counting')
    return at + 2;
  if (one === 'not' && at > from) return at + 1;
  return BARRING.has(one) ? at + 1 : -1;
}
