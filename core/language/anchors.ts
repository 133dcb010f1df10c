import { numberWord } from './lexicon/words.ts';
import { cycles } from './mentions/cycles.ts';
import { loads } from './mentions/loads.ts';
import { everyScanner, strangeRoom, strangeScanner } from './mentions/places.ts';
import { type Finder, type Found, matchAt, type Scan, textAt } from './mentions/scan.ts';
import { temperature } from './mentions/temperature.ts';
import { tipsBySet } from './mentions/tip-set.ts';
import { SET_WORDS, WHOLE } from './mentions/tip-set-words.ts';
import { tipsByNumber } from './mentions/tips.ts';
import type { Match } from './table.ts';

/** Mentions that say themselves what they are: no time is looked for in them. */
const ANCHORED: readonly Finder[] = [tipsBySet, tipsByNumber, loads, cycles, strangeScanner, everyScanner];

/** Words that such a mention may begin with besides numbers, letters of tip ids and what the lexicon names. */
const STARTS: ReadonlySet<string> = new Set([
  ...WHOLE,
  ...SET_WORDS,
  ...'the both each two a t # : no nos num nr id ids'.split(' '),
]);
const START_TAGS: ReadonlySet<string> = new Set(['tip', 'load', 'scanner', 'autoclave-name']);

/** False where no finder can find anything, as at three tokens of four. */
function mayAnchor(scan: Scan, at: number): boolean {
  const token = scan.tokens[at];
  if (token === undefined || token.kind === 'number') return true;
  if (matchAt(scan, at)?.senses.some((s) => START_TAGS.has(s.tag)) === true) return true;
  return (
    STARTS.has(token.text) || scan.names.tips.prefixes.has(token.text) || numberWord(token.text) !== undefined
  );
}

/** Which tokens belong to mentions that cannot be times ("tip 5", "load 118", "surgery 2"). */
export function blockedTokens(scan: Scan): boolean[] {
  const blocked = scan.tokens.map(() => false);
  let at = 0;
  while (at < scan.tokens.length) {
    const match = ordinalTail(scan, at) ? null : placeMatch(scan, at);
    const found = anchoredAt(scan, at, match) ?? strangeRoom(scan, at) ?? unitTemperature(scan, at);
    const named = match !== null && holdsItsWords(scan, match, at) ? match.to : at;
    const to = found !== null && found.to >= named ? found.to : named;
    for (let i = at; i < to; i++) blocked[i] = true;
    at = Math.max(to, at + 1);
  }
  return blocked;
}

/** Names, and verbs that end in a preposition ("looked at 4"), are no times. */
function holdsItsWords(scan: Scan, match: Match, at: number): boolean {
  if (match.senses.some((s) => s.sort === 'name' && s.tag !== 'steri')) return true;
  return (
    match.to - at > 1 &&
    match.senses.some((s) => s.sort === 'verb') &&
    /^(at|in|on|by|for)$/.test(textAt(scan, match.to - 1))
  );
}

/** The letters of "2nd" are no room's name. */
export function ordinalTail(scan: Scan, at: number): boolean {
  return (
    scan.tokens[at]?.spaced === false &&
    scan.tokens[at - 1]?.kind === 'number' &&
    /^(st|nd|rd|th)$/.test(textAt(scan, at))
  );
}

function unitTemperature(scan: Scan, at: number): Found | null {
  const found = temperature(scan, at);
  return found?.entity.is === 'celsius' && found.entity.unit ? found : null;
}

/** The mention at a token that says itself what it is, looked up once; `null` where none stands there. */
export function anchoredAt(scan: Scan, at: number, match: Match | null): Found | null {
  const known = scan.anchored[at];
  if (known !== undefined) return known;
  const found = anchorOf(scan, at, match);
  scan.anchored[at] = found;
  return found;
}

function anchorOf(scan: Scan, at: number, match: Match | null): Found | null {
  if (!mayAnchor(scan, at)) return null;
  let best: Found | null = null;
  for (const find of ANCHORED) {
    const found = find(scan, at);
    if (found !== null && (best === null || found.to > best.to)) best = found;
  }
  // "S2" the room, "Z1" the scanner, "big one" the autoclave: a longer or equal name of the practice wins.
  const name = match?.senses.some((s) => s.sort === 'name');
  return best !== null && name && match !== null && match.to >= best.to && best.entity.is !== 'load'
    ? null
    : best;
}

/** "Harbour surgery 2" is surgery 2 at Harbour, though "Harbour surgery" is the site too: the number goes with the room. */
export function placeMatch(scan: Scan, at: number): Match | null {
  const match = matchAt(scan, at);
  if (match !== null && match.to === at + 1 && counts(scan, at, match)) return withoutPlaces(match);
  if (match === null || match.to - at < 2 || !match.senses.some((s) => s.tag === 'site')) return match;
  if (scan.tokens[match.to]?.kind !== 'number' || textAt(scan, match.to - 1) !== 'surgery') return match;
  const short = offset(scan.table.longest(scan.texts.slice(at, match.to - 1), 0), at);
  return short?.senses.some((s) => s.tag === 'site') ? short : match;
}

/** "Twenty minutes ago", "at seven" where a room is called so: only "in twenty" with nothing counted behind it is the room. */
function counts(scan: Scan, at: number, match: Match): boolean {
  if (numberWord(textAt(scan, at)) === undefined || !match.senses.some((s) => s.tag === 'room')) return false;
  const before = textAt(scan, at - 1);
  const led = /^(in|into|from)$/.test(before) || (before === 'to' && scan.tokens[at - 2]?.kind !== 'number');
  return !led || COUNTED.test(textAt(scan, at + 1)) || scan.tokens[at + 1]?.kind === 'number';
}

const COUNTED =
  /^(min|mins|minutes?|hours?|hrs?|days?|weeks?|months?|seconds?|secs?|past|to|o|o'clock|am|pm|percent|degrees?|deg|tips?|of|scans?|patients?|pts|more|or|and|one|two|three|four|five|six|seven|eight|nine|thirty|fifteen)$/;

function withoutPlaces(match: Match): Match {
  return { senses: match.senses.filter((s) => s.tag !== 'room'), to: match.to };
}

/** A match found in a cut of the note, counted from the whole. */
export function offset(match: Match | null, by: number): Match | null {
  return match === null ? null : { senses: match.senses, to: match.to + by };
}
