import type { TipsSaid } from '../part.ts';
import { endOfTag, type Finder, isNumber, matchAt, type Scan, textAt } from './scan.ts';
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
