import { lastStop, type Stop, strengthOf, tellsAnother } from './list-stops.ts';
import { isMeasured, wholeNumber } from './numbers.ts';
import { endOfTag, glued, isNumber, matchAt, type Scan, textAt } from './scan.ts';
import { type IdSaid, idAt, pastNumberWord } from './tip-id.ts';

export interface IdList {
  readonly ids: readonly string[];
  readonly unknown: readonly string[];
  readonly choices: readonly string[];
  readonly to: number;
  /** True where an id had its letters, which no other number has. */
  readonly lettered: boolean;
}

const JOINTS = new Set([
  ',',
  'comma',
  '/',
  '&',
  '+',
  '/',
  'and',
  'n',
  'plus',
  'an',
  'und',
  'nd',
  'y',
  'also',
]);

const RANGES = new Set(['-', 'to', 'thru', 'through', 'til', 'till', 'until', '--', 'upto', 'tru']);

const LONGEST_RANGE = 200;

/**
 * A list of tip ids: "2, 5 & 7", "3-6", "one thru four", "T4 and T7". `named` says that "tip" stands before it, so
 * that number words and numbers set side by side are ids too. `null` where none stands there.
 */
export function tipList(scan: Scan, from: number, named: Naming): IdList | null {
  const found = listFrom(scan, from, named, true);
  if (found === null || 'choices' in found || !tellsAnother(scan, from, found.to)) return listOf(scan, found);
  // "Sent 1 and 2 - 4 and 6 sterile": the dash parts two things told.
  const parted = listFrom(scan, from, named, false);
  if (parted === null || 'choices' in parted || parted.to !== found.to) return listOf(scan, parted);
  return endedAt(scan, found);
}

/** Ids as said, and where the list might have ended before. */
interface Listed {
  readonly said: readonly IdSaid[];
  readonly stops: readonly Stop[];
  readonly to: number;
}

function listOf(scan: Scan, list: Listed | IdList | null): IdList | null {
  return list === null || 'choices' in list ? list : asList(scan, list.said, list.to);
}

function listFrom(scan: Scan, from: number, named: Naming, dashes: boolean): Listed | IdList | null {
  const said: IdSaid[] = [];
  const stops: Stop[] = [];
  let at = from;
  let to = -1;
  for (let count = 0; count < LONGEST_RANGE; count++) {
    if (count > 0 && (namesScanner(scan, at) || isFronted(scan, at) || isClock(scan, at))) break;
    const item = rangeAt(scan, pastNumberWord(scan, at), named !== 'no', dashes);
    if (item === null || (count > 0 && named === 'no' && !isKnown(scan, item.said[0]))) break;
    said.push(...item.said);
    to = item.to;
    const either = eitherAt(scan, from, said, to);
    if (either !== null) return either;
    const next = goesOn(scan, from, to, named, item.said[0]?.words === true);
    if (next < 0 || (named !== 'several' && opensClause(scan, to, next))) break;
    stops.push({ ids: said.length, to, strength: strengthOf(scan, to, next) });
    at = next;
  }
  return to < 0 ? null : { said, stops, to };
}

/** The list up to where another thing is told of its last ids; none of them sure where that place cannot be seen. */
function endedAt(scan: Scan, { said, stops, to }: Listed): IdList {
  if (stops.length === 0) return asList(scan, said, to);
  const stop = lastStop(scan, to, stops);
  if (stop !== null) return asList(scan, said.slice(0, stop.ids), stop.to);
  const all = asList(scan, said, to);
  return { ...all, ids: [], choices: all.ids };
}

/** "Used tip 4, 9am": no tip 9. */
function isClock(scan: Scan, at: number): boolean {
  return isNumber(scan, at) && /^(?:am|pm|a\.m\.?|p\.m\.?|o'clock|oclock|ish)$/.test(textAt(scan, at + 1));
}

/** "I have bagged 12, and 14 I have sent": who did it stands behind what it was done to. */
function isFronted(scan: Scan, at: number): boolean {
  const item = idAt(scan, at, true);
  if (item === null || !/^(i|we|he|she|they|i've|we've|ive|weve)$/.test(textAt(scan, item.to))) return false;
  return (
    /^(have|has|had|did|'ve|then|also|just|am|was)$/.test(textAt(scan, item.to + 1)) ||
    pastVerb(scan, item.to + 1)
  );
}

function pastVerb(scan: Scan, at: number): boolean {
  return matchAt(scan, at)?.senses.some((s) => s.sort === 'verb' && s.form === 'd') === true;
}

/** "Tips 31 and 32 + no 2" where a scanner is called number two. */
function namesScanner(scan: Scan, at: number): boolean {
  const match = matchAt(scan, at);
  return (
    match !== null &&
    match.to > at + 1 &&
    match.senses.some((s) => s.tag === 'scanner-name' || s.tag === 'scanner-bare')
  );
}

/** "Debris on 3, 8 is fine": behind a comma alone, an id with a verb of one thing speaks of that one. */
function opensClause(scan: Scan, to: number, next: number): boolean {
  if (textAt(scan, to) !== ',' || next !== to + 1) return false;
  const item = idAt(scan, next, false);
  return item !== null && OPENS.test(textAt(scan, item.to));
}

const OPENS =
  /^(is|was|has|had|isn't|wasn't|hasn't|isnt|wasnt|hasnt|needs|needed|looks|still|not|yet|'s|doesn't|didn't|won't|wouldn't|wants|waiting|awaiting)$/;

type Naming = 'one' | 'several' | 'no';

/** An unknown number after a comma is rather something else than an id, unless nothing but ids is spoken of. */
function isKnown(scan: Scan, id: IdSaid | undefined): boolean {
  return id !== undefined && scan.names.tips.find(id.letters, id.digits).length > 0;
}

/** "Tip 4 or 5": which of them is not said. "Don't use 13 or 14" bans both. */
function eitherAt(scan: Scan, from: number, said: readonly IdSaid[], at: number): IdList | null {
  if (textAt(scan, at) !== 'or' || !isNumber(scan, at + 1) || banned(scan, from)) return null;
  const other = rangeAt(scan, at + 1, true);
  if (other === null) return null;
  const all = asList(scan, [...said, ...other.said], other.to);
  return { ...asList(scan, said, other.to), ids: [], choices: all.ids };
}

/** Where the list goes on after an id, −1 where it ends. */
function goesOn(scan: Scan, from: number, to: number, named: Naming, words: boolean): number {
  const joint = textAt(scan, to) === 'or' && banned(scan, from) ? to + 1 : pastJoint(scan, to);
  if (joint > to) return joint;
  const sideBySide = named === 'several' || (named === 'no' && knownNext(scan, to));
  return sideBySide && (isNumber(scan, to) || words) && !isMeasured(scan, to + 1) ? to : -1;
}

/** "3 7 8 sterile": numbers side by side are a list where each is a tip. */
function knownNext(scan: Scan, at: number): boolean {
  return (
    isNumber(scan, at) &&
    scan.names.tips.find('', textAt(scan, at)).length > 0 &&
    scan.tokens[at]?.spaced === true
  );
}

/** "Don't use 13 or 14" bans both. */
function banned(scan: Scan, from: number): boolean {
  for (let i = from - 1; i >= 0 && i >= from - 6; i--)
    if (/^(don't|dont|nobody|not|no|never|cannot|can't)$/.test(textAt(scan, i))) return true;
  return false;
}

function pastJoint(scan: Scan, at: number): number {
  let to = at;
  while (
    JOINTS.has(textAt(scan, to)) &&
    !(/^[ny]$/.test(textAt(scan, to)) && glued(scan, to + 1)) &&
    to < at + 3
  )
    to++;
  if (to === at) return at;
  const noun = endOfTag(scan, to, 'tip');
  if (noun < 0) return to;
  // "Scan done with tip 3, tip 5 off": after a comma alone another "tip" goes on with the list only where more follow.
  if (to === at + 1 && textAt(scan, at) === ',' && !listGoesOn(scan, noun)) return at;
  return noun;
}

function listGoesOn(scan: Scan, at: number): boolean {
  const next = wholeNumber(scan, at);
  if (next === null) return false;
  let to = next.to;
  while (JOINTS.has(textAt(scan, to)) && to < next.to + 2) to++;
  return to > next.to && (endOfTag(scan, to, 'tip') > 0 || wholeNumber(scan, to) !== null);
}

function rangeAt(
  scan: Scan,
  at: number,
  words: boolean,
  dashes = true,
): { said: IdSaid[]; to: number } | null {
  const first = idAt(scan, at, words);
  if (first === null) return null;
  const joint =
    textAt(scan, first.to) === 'up' && textAt(scan, first.to + 1) === 'to' ? first.to + 1 : first.to;
  const apart = !dashes && /^--?$/.test(textAt(scan, joint)) && scan.tokens[joint]?.spaced === true;
  if (apart || !RANGES.has(textAt(scan, joint))) return { said: [first], to: first.to };
  const noun = endOfTag(scan, joint + 1, 'tip');
  const last = idAt(scan, noun > 0 ? noun : joint + 1, words);
  const start = Number(first.digits);
  const end = last === null ? Number.NaN : Number(last.digits);
  const sameLetters = last !== null && (last.letters === first.letters || last.letters === '');
  if (last === null || !sameLetters || !(end > start) || end - start > LONGEST_RANGE)
    return { said: [first], to: first.to };
  const said = Array.from({ length: end - start + 1 }, (_, i) => ({ ...first, digits: String(start + i) }));
  return { said, to: last.to };
}

function asList(scan: Scan, said: readonly IdSaid[], to: number): IdList {
  const ids: string[] = [];
  const unknown: string[] = [];
  const choices: string[] = [];
  let letters = '';
  for (const one of said) {
    const own = one.letters === '' ? letters : one.letters;
    letters = own;
    const found = scan.names.tips.find(own, one.digits);
    const [id] = found;
    if (id === undefined) unknown.push(scan.names.tips.write(own, one.digits));
    else if (found.length > 1) choices.push(...found);
    else if (!ids.includes(id)) ids.push(id);
  }
  return { ids, unknown, choices, to, lettered: said.some((one) => one.letters !== '') };
}
