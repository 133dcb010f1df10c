import { isMeasured, wholeNumber } from './numbers.ts';
import { glued, isNumber, matchAt, type Scan, textAt } from './scan.ts';

/** An id as it was said: its letters, its figures, and one past its last token. */
export interface IdSaid {
  readonly letters: string;
  readonly digits: string;
  readonly to: number;
  readonly words: boolean;
}

/** Past what may stand between "tip" and its number: "no.", "number", "#", ":", "id". */
export function pastNumberWord(scan: Scan, at: number): number {
  let to = at;
  while (/^(no|nos|number|numbers|num|nr|#|:|id|ids|numbered|called|labelled)$/.test(textAt(scan, to))) {
    to += textAt(scan, to + 1) === '.' && /^(no|nos|num|nr)$/.test(textAt(scan, to)) ? 2 : 1;
  }
  return to;
}

/** One id: "4", "four", "T4", "T-04", "N1", "a six" where ids are A1, A2 … */
export function idAt(scan: Scan, from: number, words: boolean): IdSaid | null {
  const at = textAt(scan, from) === '#' ? from + 1 : from;
  const lettered = letteredAt(scan, at);
  if (lettered !== null) return spoilt(scan, lettered);
  if (words && struckBeside(scan, at))
    return { letters: textAt(scan, at), digits: textAt(scan, at + 1), to: at + 2, words: false };
  const number = wholeNumber(scan, at);
  if (number === null || (number.words && !words)) return null;
  if (thousands(scan, number.to) || slashed(scan, number.to)) return null;
  if (isMeasured(scan, number.to, words)) return null;
  const said = { letters: '', digits: number.text, to: number.to, words: number.words };
  if (!gluedLetters(scan, number.to)) return said;
  return words && !number.words ? spoilt(scan, said, true) : null;
}

/** "T12q", "5t": one letter too many makes an id that is none; which was meant is asked, never guessed. */
function spoilt(scan: Scan, said: IdSaid, must = false): IdSaid | null {
  const hangs = gluedLetters(scan, said.to) && textAt(scan, said.to).length === 1;
  if (!hangs) return must ? null : said;
  return { ...said, digits: said.digits + textAt(scan, said.to), to: said.to + 1 };
}

/** "G1, y4 and G6": where ids have letters, another letter before a number that is no name of ours. */
function struckBeside(scan: Scan, at: number): boolean {
  if (scan.names.tips.prefixes.size === 0 || !/^[a-z]$/.test(textAt(scan, at))) return false;
  if (!isNumber(scan, at + 1) || !glued(scan, at + 1) || isMeasured(scan, at + 2, true)) return false;
  return matchAt(scan, at)?.senses.some((s) => s.sort === 'name') !== true;
}

function letteredAt(scan: Scan, at: number): IdSaid | null {
  const text = textAt(scan, at);
  const prefix = scan.names.tips.prefixes.has(text);
  if (scan.tokens[at]?.kind !== 'word' || (!prefix && text !== 't')) return null;
  const dash = textAt(scan, at + 1) === '-' && glued(scan, at + 1) ? at + 2 : at + 1;
  if (isNumber(scan, dash)) {
    const joined = glued(scan, dash) || dash === at + 1;
    return joined && !isMeasured(scan, dash + 1, true)
      ? { letters: text, digits: textAt(scan, dash), to: dash + 1, words: false }
      : null;
  }
  const spoken = prefix ? wholeNumber(scan, at + 1) : null;
  if (!spoken?.words || spoken.value === 0 || isMeasured(scan, spoken.to)) return null;
  return { letters: text, digits: spoken.text, to: spoken.to, words: true };
}

/** "3/11", "50/50": after a stroke only another tip goes on with a list. */
function slashed(scan: Scan, at: number): boolean {
  return (
    textAt(scan, at) === '/' &&
    glued(scan, at) &&
    isNumber(scan, at + 1) &&
    scan.names.tips.find('', textAt(scan, at + 1)).length === 0
  );
}

/** "100,000": a comma that groups figures makes no list. */
function thousands(scan: Scan, at: number): boolean {
  return (
    textAt(scan, at) === ',' && glued(scan, at) && /^\d{3}$/.test(textAt(scan, at + 1)) && glued(scan, at + 1)
  );
}

/** "2x2s", "4mm": letters hang on it, so it is no id. */
function gluedLetters(scan: Scan, at: number): boolean {
  const token = scan.tokens[at];
  return (
    token?.kind === 'word' &&
    !token.spaced &&
    token.text !== "'s" &&
    token.text !== 's' &&
    !/^(n|and|on|is|in|to)$/.test(token.text)
  );
}
