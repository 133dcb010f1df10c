import { endsList, opensClause } from './list-ends.ts';
import { lastStop, type Stop, strengthOf, tellsAnother } from './list-stops.ts';
import { isMeasured, wholeNumber } from './numbers.ts';
import { endOfTag, glued, isNumber, type Scan, textAt } from './scan.ts';
import { type IdSaid, pastNumberWord } from './tip-id.ts';
import { LONGEST_RANGE, rangeAt } from './tip-range.ts';

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
    if (count > 0 && endsList(scan, at)) break;
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
