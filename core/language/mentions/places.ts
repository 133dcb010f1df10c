import { wholeNumber } from './numbers.ts';
import { capital, endOfTag, type Finder, isNumber, type Scan, textAt } from './scan.ts';

const AFTER_NUMBER = /^(patients?|scans?|tips?|people|pts?|more|of|mins?|minutes|hours?)$/;

/** A room by number that the practice does not have ("room 9"). Names that it has are found in the table. */
export const strangeRoom: Finder = (scan, at) => {
  const noun = endOfTag(scan, at, 'roomword');
  if (noun < 0) return null;
  const number = wholeNumber(scan, noun);
  if (number === null || (number.words && number.value > 20) || AFTER_NUMBER.test(textAt(scan, number.to)))
    return null;
  return {
    entity: { is: 'room', rooms: [], said: `${textAt(scan, noun - 1)} ${number.text}` },
    to: number.to,
  };
};

/** A scanner by an id that the practice does not have ("scanner D"). */
export const strangeScanner: Finder = (scan, at) => {
  const noun = endOfTag(scan, at, 'scanner');
  if (noun < 0) return null;
  const text = textAt(scan, noun);
  const letter =
    /^[a-z]$/.test(text) &&
    (capital(scan, noun) || textAt(scan, noun + 1) === '' || /^[b-hj-rt-z]$/.test(text));
  const digit =
    isNumber(scan, noun) &&
    text.length <= 2 &&
    !AFTER_NUMBER.test(textAt(scan, noun + 1)) &&
    textAt(scan, noun + 1) !== ':';
  if (!letter && !digit) return null;
  const own = scan.names.letterIds.get(text);
  const id = own ?? scan.names.scannerIds.find((one) => one.toLowerCase() === text);
  if (id !== undefined) return { entity: { is: 'scanner', ids: [id], named: 'name' }, to: noun + 1 };
  if (letter && !capital(scan, noun) && text === 'a') return null;
  return { entity: { is: 'no-scanner', said: text }, to: noun + 1 };
};

/** Words after which "a" is the article, never scanner A. */
const AFTER_NAME =
  /^(to|at|in|is|was|has|had|on|and|down|off|with|back|'s|isn't|hasn't|wasn't|won't|failed|passed|moved|calibrated|cal'd|wiped|covered|dropped|wouldn't|didn't|->)$/;

const BEFORE_LETTER =
  /^(on|with|scanner|wiped|calibrated|covered|to|moved|down|dropped|cleaned|using|and|&|base|lens|back|w|disinfected|recalibrated|fixed|repaired)$/;

/** A scanner whose id is one letter, where the letter cannot be the article "a" or the "s" of an owner. */
export const letterScanner: Finder = (scan, at) => {
  const text = textAt(scan, at);
  const id = scan.names.letterIds.get(text);
  if (id === undefined || scan.tokens[at]?.kind !== 'word' || !standsAlone(scan, at)) return null;
  // "Mr B's scan" is a patient's.
  if (/^(mr|mrs|ms|miss|dr|patient|pt|px)$/.test(textAt(scan, at - 1))) return null;
  const named = capital(scan, at) ? 'bare' : 'letter';
  const next = textAt(scan, at + 1);
  const ends = next === '' || /^[,.;:!?)&+\-\n/(]$/.test(next);
  const meant =
    text === 'a' || text === 'i'
      ? isNoArticle(scan, at, ends)
      : named === 'bare' || ends || AFTER_NAME.test(next);
  return meant ? { entity: { is: 'scanner', ids: [id], named }, to: at + 1 } : null;
};

/** True where the letter is neither part of an abbreviation nor of code, and does not hang on a number or a mark. */
function standsAlone(scan: Scan, at: number): boolean {
  const [before, own, next] = [scan.tokens[at - 1], scan.tokens[at], scan.tokens[at + 1]];
  if (next?.kind === 'number' && !next.spaced) return false;
  if (next?.text === '.' && !next.spaced && scan.tokens[at + 2]?.spaced === false) return false;
  if (CODE.test(next?.text ?? '') || CODE.test(before?.text ?? '')) return false;
  if (before !== undefined && own?.spaced === false && !/^[,(/:+\-\n.!?;"]$/.test(before.text)) return false;
  return !allCapitals(scan.note) || /scanner/i.test(scan.note);
}

const CODE = /^[<>=/\\_@[\]{}]$/;

/** "A" that opens a sentence, and "a" before a noun, are the article; "I" is a person. */
function isNoArticle(scan: Scan, at: number, ends: boolean): boolean {
  if (textAt(scan, at) === 'i' && !ends) return false;
  const before = textAt(scan, at - 1);
  const opens = at === 0 || /^[.!?\n]$/.test(before);
  if (capital(scan, at) && (!opens || ends)) return true;
  return ends ? BEFORE_LETTER.test(before) : AFTER_NAME.test(textAt(scan, at + 1));
}

/** In a note with no small letter, capitals mean nothing. */
function allCapitals(note: string): boolean {
  return note.length > 24 && !/[a-z]/.test(note);
}

/** "Both scanners", "all the scanners". */
export const everyScanner: Finder = (scan, from) => {
  const head = textAt(scan, from);
  if (!/^(both|all|every|each|two)$/.test(head)) return null;
  let at = from + 1;
  let count: number | null = head === 'both' || head === 'two' ? 2 : null;
  while (/^(the|of|our|two|three|four|2|3|4|them)$/.test(textAt(scan, at)) && at < from + 4) {
    count = wholeNumber(scan, at)?.value ?? count;
    at++;
  }
  const noun = endOfTag(scan, at, 'scanner');
  if (noun < 0 || (head === 'two' && at === from + 1)) return null;
  return { entity: { is: 'some', of: 'scanner', count }, to: noun };
};
