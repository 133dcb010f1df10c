import { numberWord } from '../lexicon/words.ts';
import type { TipsSaid } from '../part.ts';
import { endOfTag, type Finder, type Found, glued, isNumber, matchAt, type Scan, textAt } from './scan.ts';
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
    const [first] = list?.ids ?? [];
    if (list !== null && first !== undefined && several === 'one' && swapsFrom(scan, at))
      return { entity: said({ ...list, ids: [first] }, true), to: noun + 1 };
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

/** "Changed blue from tip 4 to tip 9" is no range. */
function swapsFrom(scan: Scan, at: number): boolean {
  if (/^(chang|swap|switch|replac)/.test(textAt(scan, at - 1))) return true;
  if (textAt(scan, at - 1) !== 'from') return false;
  return scan.texts.slice(Math.max(0, at - 6), at).some((text) => /^(chang|swap|switch|replac)/.test(text));
}

/** Numbers with no word "tip" beside them: "4 and 6", taken for tips only where nothing else claims them. */
export const tipsBare: Finder = (scan, at) => {
  if (numberWord(textAt(scan, at)) !== undefined) return tipsInWords(scan, at);
  if (!isNumber(scan, at) || !standsFree(scan, at) || COUNTS_DOWN.test(scan.note)) return null;
  if (/^(at|@)$/.test(textAt(scan, at - 1)) && !/^(look|looked|looking)$/.test(textAt(scan, at - 2)))
    return null;
  const list = tipList(scan, at, 'no');
  const own =
    list !== null && textAt(scan, list.to) === 's' && glued(scan, list.to) && tipThing(scan, list.to + 1);
  if (list !== null && own) return { entity: said(list, false), to: list.to + 1 };
  if (
    list === null ||
    /^[)%]$/.test(textAt(scan, list.to)) ||
    opensItem(scan, at) ||
    counts(scan, list.to) ||
    (Number(textAt(scan, at)) <= 12 && countsPacks(scan, list.to))
  )
    return null;
  return { entity: said(list, false), to: list.to };
};

/** "3 wet packs", "2 torn pouches". */
function countsPacks(scan: Scan, at: number): boolean {
  return (
    /^(wet|damp|soggy|torn|open|dry|empty|spare)$/.test(textAt(scan, at)) &&
    /^(packs|pouches|bags)$/.test(textAt(scan, at + 1))
  );
}

/** "2 washed, 3 to go": numbers alone count there. */
const COUNTS_DOWN = /\b\d+ (?:more )?to go\b/i;

/** "Bagged thirty one to thirty four", "one, three and eight are pouched": in words only where a verb stands beside them. */
function tipsInWords(scan: Scan, at: number): Found | null {
  const list = tipList(scan, at, 'several');
  if (list === null || list.unknown.length > 0 || list.ids.length === 0) return null;
  // "Used one", "bagged three" count.
  const spared = SPARED.test(textAt(scan, at - 1)) && scan.tokens[list.to] === undefined;
  if (list.ids.length === 1 && list.to - at === 1 && !spared && !SURE_WORDS.test(textAt(scan, at)))
    return null;
  if (counts(scan, list.to)) return null;
  if (spared) return { entity: said(list, false), to: list.to };
  return opensWithDone(scan, at, list.to) || doneBefore(scan, at)
    ? { entity: said(list, false), to: list.to }
    : null;
}

/** "All washed except three": at the end of a note a number in words is one of those left out. */
const SPARED = /^(except|bar|barring|excluding|cept)$/;
const SURE_WORDS = /^(eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)$/;
const DONE_TAGS = new Set([
  'use',
  'wash',
  'bag',
  'send',
  'retire',
  'find',
  'take',
  'remove',
  'check',
  'sterile',
  'fit',
  'drop',
  'put',
]);

function doneBefore(scan: Scan, at: number): boolean {
  for (let i = at - 1; i >= 0 && i >= at - 3; i--) {
    const match = matchAt(scan, i);
    if (match?.to !== at) continue;
    return match.senses.some((s) => s.sort === 'verb' && s.form === 'd' && DONE_TAGS.has(s.tag));
  }
  return false;
}

/** At the head of a note or behind a mark or "and", with a verb after it. */
function opensWithDone(scan: Scan, at: number, to: number): boolean {
  const before = scan.tokens[at - 1];
  if (before !== undefined && before.kind !== 'mark' && !/^(and|then)$/.test(before.text)) return false;
  const next = matchAt(scan, to);
  return (
    next?.senses.some((s) => s.sort === 'verb' && (s.form === 'd' || s.tag === 'be' || s.tag === 'have')) ===
    true
  );
}

/** "34s pouch ripped": what a tip has; the apostrophe is often left out. */
function tipThing(scan: Scan, at: number): boolean {
  return (
    ['pouch', 'strip', 'mirror', 'seal'].some((tag) => endOfTag(scan, at, tag) > 0) ||
    /^(on|off|fine|ok|done|gone|dirty|used|sterile|back|in)$/.test(textAt(scan, at))
  );
}

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
      s.tag === 'debris' ||
      s.tag === 'magnifier' ||
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
