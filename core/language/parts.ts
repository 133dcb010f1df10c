import { cycles, loads } from './mentions/loads.ts';
import { decimalNumber } from './mentions/numbers.ts';
import { everyScanner, letterScanner, strangeRoom, strangeScanner } from './mentions/places.ts';
import { capital, type Finder, type Found, matchAt, type Scan, textAt } from './mentions/scan.ts';
import { temperature } from './mentions/temperature.ts';
import { tipsBySet } from './mentions/tip-set.ts';
import { tipsBare, tipsByNumber } from './mentions/tips.ts';
import type { Entity, Part } from './part.ts';
import type { Match, Sense } from './table.ts';
import type { Clock, TimeSpan } from './times/time-span.ts';

/** Mentions that say themselves what they are: no time is looked for in them. */
const ANCHORED: readonly Finder[] = [tipsBySet, tipsByNumber, loads, cycles, strangeScanner, everyScanner];

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
function ordinalTail(scan: Scan, at: number): boolean {
  return (
    /^(st|nd|rd|th)$/.test(textAt(scan, at)) &&
    scan.tokens[at]?.spaced === false &&
    scan.tokens[at - 1]?.kind === 'number'
  );
}

const TO: Sense = { sort: 'glue', tag: 'glue', form: '', ref: '' };

/** "Ok 2 use", "moved lefty 2 op 2": a figure typed for "to". */
function isTo(scan: Scan, at: number): boolean {
  if (
    textAt(scan, at) !== '2' ||
    scan.tokens[at - 1]?.kind !== 'word' ||
    scan.tokens[at + 1]?.kind !== 'word'
  )
    return false;
  if (
    /^(tip|tips|room|surgery|op|surg|and|load|number|no|t|the|s|scanner|at|by|n)$/.test(textAt(scan, at - 1))
  )
    return false;
  const next = matchAt(scan, at + 1);
  if (next === null || textAt(scan, at + 1) === 'to') return false;
  return (
    /^(use|go|be|do|get|calibrate|clean|wipe|send)$/.test(textAt(scan, at + 1)) ||
    next.senses.some((s) => s.tag === 'room' || s.tag === 'site')
  );
}

function unitTemperature(scan: Scan, at: number): Found | null {
  const found = temperature(scan, at);
  return found?.entity.is === 'celsius' && found.entity.unit ? found : null;
}

function anchoredAt(scan: Scan, at: number, match: Match | null): Found | null {
  const known = scan.anchored[at];
  if (known !== undefined) return known;
  const found = anchorOf(scan, at, match);
  scan.anchored[at] = found;
  return found;
}

function anchorOf(scan: Scan, at: number, match: Match | null): Found | null {
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
function placeMatch(scan: Scan, at: number): Match | null {
  const match = matchAt(scan, at);
  if (match === null || match.to - at < 2 || !match.senses.some((s) => s.tag === 'site')) return match;
  if (scan.tokens[match.to]?.kind !== 'number' || textAt(scan, match.to - 1) !== 'surgery') return match;
  const short = offset(scan.table.longest(scan.texts.slice(at, match.to - 1), 0), at);
  return short?.senses.some((s) => s.tag === 'site') ? short : match;
}

/** The note as parts: mentions, times, words of the lexicon, marks, and words that nobody knows. */
export function partsOf(scan: Scan, times: readonly TimeSpan[]): Part[] {
  const parts: Part[] = [];
  let nextTime = 0;
  let at = 0;
  while (at < scan.tokens.length) {
    while (nextTime < times.length && (times[nextTime]?.from ?? 0) < at) nextTime++;
    const part = partAt(scan, at, times[nextTime]);
    parts.push(part);
    at = part.to;
  }
  return parts;
}

function partAt(scan: Scan, at: number, time: TimeSpan | undefined): Part {
  if (isTo(scan, at)) return { ...plainPart(scan, at, at + 1, [TO]), text: 'to' };
  const match = ordinalTail(scan, at) ? null : placeMatch(scan, at);
  const anchored = anchoredAt(scan, at, match);
  const barrier = time !== undefined && time.from > at ? time.from : Number.POSITIVE_INFINITY;
  if (anchored !== null && anchored.to <= barrier) return entityPart(scan, at, anchored);
  if (time !== undefined && time.from === at)
    return entityPart(scan, at, { entity: { is: 'time', span: time }, to: time.to });
  const named = namedAt(scan, at, match);
  if (named !== null) return entityPart(scan, at, named, match?.senses);
  const loose =
    letterScanner(scan, at) ??
    strangeRoom(scan, at) ??
    temperature(scan, at) ??
    tipsBare(scan, at) ??
    numberAt(scan, at);
  if (loose !== null && loose.to > (match?.to ?? 0) - 1 && loose.to <= barrier)
    return entityPart(scan, at, loose);
  if (match !== null && match.to <= barrier) {
    const personal = personAt(scan, at, match);
    return personal ?? plainPart(scan, at, match.to, match.senses);
  }
  const short = match === null ? null : shorter(scan, at, barrier);
  if (short !== null) return plainPart(scan, at, short.to, short.senses);
  return plainPart(scan, at, at + 1, []);
}

/** The longest phrase that ends before a time begins. */
function shorter(scan: Scan, at: number, barrier: number): Match | null {
  return scan.table.longest(scan.texts.slice(at, barrier), 0) === null
    ? null
    : offset(scan.table.longest(scan.texts.slice(at, barrier), 0), at);
}

function offset(match: Match | null, by: number): Match | null {
  return match === null ? null : { senses: match.senses, to: match.to + by };
}

function numberAt(scan: Scan, at: number): Found | null {
  const number = decimalNumber(scan, at);
  if (number === null || number.words) return null;
  const clock = clockOf(number.text);
  if (clock !== null)
    return {
      entity: { is: 'time', span: { from: at, to: number.to, bound: 'at', days: [], clocks: [clock] } },
      to: number.to,
    };
  return { entity: { is: 'number', value: number.value, text: number.text }, to: number.to };
}

/** "9.10", "13.30": two figures after the point are minutes. */
function clockOf(text: string): Clock | null {
  const [, hours, minutes] = /^(\d{1,2})\.([0-5]\d)$/.exec(text) ?? [];
  if (hours === undefined || minutes === undefined || Number(hours) > 23 || Number(hours) < 1) return null;
  const half = Number(hours) > 12 || (hours.length === 2 && hours.startsWith('0')) ? 'known' : 'open';
  return { sort: 'time', hour: Number(hours), minute: Number(minutes), half, about: false };
}

/** "The strip stayed white" where a scanner is called white too. */
function colourOfStrip(scan: Scan, at: number): boolean {
  return (
    /^(stayed|stays|still|went|gone|turned|remained|stay|go|turn)$/.test(textAt(scan, at - 1)) &&
    scan.texts.some((text) => /^(strip|strips|indicator|indicators|tst|integrator)$/.test(text))
  );
}

function namedAt(scan: Scan, at: number, match: Match | null): Found | null {
  if (match === null) return null;
  const { senses, to } = match;
  const by = (tag: string) => senses.find((s) => s.tag === tag);
  const scanner = by('scanner-name') ?? by('scanner-bare');
  const site = by('site');
  const rooms = senses.filter((s) => s.tag === 'room').map((s) => s.ref);
  const common = senses.some((s) => s.sort !== 'name' && s.sort !== 'other' && s.sort !== 'person');
  const autoclave = by('autoclave-name');
  const entity = ((): Entity | null => {
    if (scanner !== undefined) {
      if (scanner.tag === 'scanner-bare' && colourOfStrip(scan, at)) return null;
      const ids = [...new Set(senses.filter((s) => s.tag === scanner.tag).map((s) => s.ref))];
      return { is: 'scanner', ids, named: scanner.tag === 'scanner-name' ? 'name' : 'bare' };
    }
    if (rooms.length > 0) return { is: 'room', rooms, said: scan.texts.slice(at, to).join(' ') };
    if (site !== undefined) return { is: 'site', id: site.ref, bare: to - at === 1 };
    if (autoclave !== undefined && !(common && to - at === 1)) return { is: 'autoclave', id: autoclave.ref };
    const tip = by('tip-name');
    if (tip !== undefined)
      return { is: 'tips', ids: [tip.ref], unknown: [], choices: [], except: [], named: true };
    return null;
  })();
  return entity === null ? null : { entity, to };
}

/** Names that are common words too: people only where they have their capital. */
const WORDLIKE = new Set(
  'will mark may april june dawn grace sue bill pat max joy hope penny dan sky violet ruby iris lily daisy heather hazel holly poppy rob art gene faye jack rose ivy eve jean carol frank drew ray bob nick harry jim don gay miles chip jo mo kit phil guy rich earl king ford dale glen cliff reed rusty sandy misty crystal amber jade pearl olive rosemary basil ginger melody harmony angel star autumn summer josh jess meg al ed sam ben deb lee'.split(
    ' ',
  ),
);

function personAt(scan: Scan, at: number, match: Match): Part | null {
  const person =
    match.senses.find((s) => s.tag === 'person' && s.sort === 'name') ??
    match.senses.find((s) => s.tag === 'person');
  if (person === undefined) return null;
  const known = person.sort === 'name';
  const text = textAt(scan, at);
  const plain = match.senses.every((s) => s.tag === 'person');
  if (!capital(scan, at) && (!plain || (!known && WORDLIKE.has(text)) || (known && MODAL_NAMES.has(text))))
    return null;
  const token = scan.tokens[at];
  const typed = token === undefined ? '' : scan.note.slice(token.start, scan.tokens[match.to - 1]?.end);
  const name = known ? person.ref : typed.charAt(0).toUpperCase() + typed.slice(1);
  return { ...plainPart(scan, at, match.to, match.senses), entity: { is: 'person', name, known } };
}

const MODAL_NAMES = new Set(['will', 'may', 'mark', 'rob', 'bill', 'sue', 'pat', 'max']);

function entityPart(scan: Scan, from: number, found: Found, senses: readonly Sense[] = []): Part {
  return {
    from,
    to: found.to,
    text: textAt(scan, from),
    senses,
    entity: found.entity,
    mark: false,
    unknown: false,
  };
}

function plainPart(scan: Scan, from: number, to: number, senses: readonly Sense[]): Part {
  const mark = to - from === 1 && scan.tokens[from]?.kind === 'mark';
  const text = to - from === 1 ? textAt(scan, from) : scan.texts.slice(from, to).join(' ');
  return { from, to, text, senses, mark, unknown: senses.length === 0 && !mark };
}
