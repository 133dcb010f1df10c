import type { Token } from './token.ts';

/**
 * The words, numbers and marks of a note, in order. A word is a run of letters (with inner apostrophes, so
 * "haven't" is one, but a final 's stands alone); a number a run of digits; every other visible character is
 * a mark of its own. "T4", "64F", "10:30" and "17.5" come apart, unspaced, for later steps to put together.
 * Invisible characters (direction marks, joiners, variation selectors) are stepped over. Linear in the length.
 */
export function tokenize(note: string): Token[] {
  const tokens: Token[] = [];
  let spaced = true;
  let at = 0;
  while (at < note.length) {
    const code = note.codePointAt(at) ?? 0;
    const width = code > 0xffff ? 2 : 1;
    const sort = sortOf(code);
    if (sort === 'space' || sort === 'none') {
      spaced ||= sort === 'space';
      at += width;
      continue;
    }
    if (sort === 'mark' && ownsNumber(note, at, tokens.at(-1))) {
      tokens.push({ text: "'s", start: at, end: at + 2, kind: 'word', spaced: false });
      at += 2;
      continue;
    }
    const end = sort === 'mark' ? at + width : runEnd(note, at, sort);
    if (!closesArrow(tokens, note, at)) pushRun(tokens, note, at, end, sort, spaced);
    spaced = false;
    at = end;
  }
  return tokens;
}

/** "->" is one mark: the dash before is taken into it. */
function closesArrow(tokens: Token[], note: string, at: number): boolean {
  const dash = tokens.at(-1);
  if (note[at] !== '>' || dash?.text !== '-' || dash.end !== at) return false;
  tokens[tokens.length - 1] = { ...dash, text: '->', end: at + 1 };
  return true;
}

type Sort = 'word' | 'number' | 'mark' | 'space' | 'none';

const LETTER = /\p{L}|\p{M}/u;
const DIGIT = /\p{Nd}/u;
const INVISIBLE = /\p{Cf}|\p{Emoji_Modifier}|\p{Variation_Selector}/u;

/** What each ASCII character is: most notes hold nothing else, and this is asked of every character. */
const ASCII: readonly Sort[] = Array.from({ length: 128 }, (_, code) => {
  const char = String.fromCharCode(code);
  if (/[a-z]/i.test(char)) return 'word';
  if (/[0-9]/.test(char)) return 'number';
  if (/[\r\n]/.test(char)) return 'mark';
  return code <= 32 || code === 127 ? 'space' : 'mark';
});

function sortOf(code: number): Sort {
  const plain = ASCII[code];
  if (plain !== undefined) return plain;
  const char = String.fromCodePoint(code);
  if (INVISIBLE.test(char)) return 'none';
  if (LETTER.test(char)) return 'word';
  if (DIGIT.test(char)) return 'number';
  if (/\s|\p{Cc}/u.test(char)) return code === 0x2028 || code === 0x2029 ? 'mark' : 'space';
  return 'mark';
}

function isApostrophe(code: number): boolean {
  return (
    code === 39 || code === 0x2019 || code === 0x2018 || code === 0x60 || code === 0xb4 || code === 0x2bc
  );
}

/** "tip 4's gone", "T4's": the 's after a number is a token of its own, as it is after a word. */
function ownsNumber(note: string, at: number, last: Token | undefined): boolean {
  return (
    last?.kind === 'number' &&
    last.end === at &&
    isApostrophe(note.charCodeAt(at)) &&
    /^s(?![a-z])/i.test(note.slice(at + 1, at + 3))
  );
}

function runEnd(note: string, from: number, sort: 'word' | 'number'): number {
  let at = from;
  while (at < note.length) {
    const code = note.codePointAt(at) ?? 0;
    const width = code > 0xffff ? 2 : 1;
    const here = sortOf(code);
    const inner =
      sort === 'word' && isApostrophe(code) && at > from && sortOf(note.codePointAt(at + 1) ?? 32) === 'word';
    if (here !== sort && here !== 'none' && !inner) break;
    at += width;
  }
  return at;
}

function pushRun(
  out: Token[],
  note: string,
  start: number,
  end: number,
  kind: Token['kind'],
  spaced: boolean,
) {
  const text = fold(note.slice(start, end), kind);
  if (text === '') return;
  const owner = kind === 'word' ? ownerLength(text) : 0;
  if (owner > 0) {
    const cut = end - (text.length - owner);
    out.push({ text: text.slice(0, owner), start, end: cut, kind, spaced });
    out.push({ text: "'s", start: cut, end, kind, spaced: false });
    return;
  }
  out.push({ text, start, end, kind, spaced });
}

/** Length of what stands before a final 's, 0 where there is none or the whole is a word of its own ("it's"). */
function ownerLength(text: string): number {
  return text.endsWith("'s") ? text.length - 2 : 0;
}

const MARKS: Readonly<Record<string, string>> = {
  '\n': '\n',
  '\r': '\n',
  '\u2028': '\n',
  '\u2029': '\n',
  '\u201c': '"',
  '\u201d': '"',
  '\u201e': '"',
  '\u00ab': '"',
  '\u00bb': '"',
  '\u2018': "'",
  '\u2019': "'",
  '`': "'",
  '\u00b4': "'",
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
  '\u2013': '-',
  '\u2014': '--',
  '\u2015': '--',
  '\u2212': '-',
  '\u2026': '.',
  '→': '->',
  '➡': '->',
  '\uff1f': '?',
  '\uff01': '!',
  '\uff0c': ',',
  '\u061f': '?',
};

const PLAIN = /^[a-z0-9']*$/;

function fold(raw: string, kind: Token['kind']): string {
  if (kind === 'mark') return MARKS[raw] ?? raw;
  const low = raw.toLowerCase();
  if (PLAIN.test(low)) return low;
  return low
    .normalize('NFKD')
    .replace(/[\u2018\u2019\u0060\u00b4\u02bc]/g, "'")
    .replace(/\p{M}|\p{Cf}/gu, '')
    .toLowerCase();
}
