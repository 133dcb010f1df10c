import { type Scan, textAt } from './scan.ts';
import { RELATIVE_DAYS, WEEKDAY_WORDS } from './words.ts';

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** A number after one of these is an id or a setting, never a time. */
const ID_NOUNS = set(
  'tip tips load loads cycle cycles room rooms surgery surgeries surg rm chair scanner scanners autoclave number ' +
    'all no nos num # t batch bay bays op ops operatory patient patients unit pouch pouches bag run test strip id ids',
);

/** A number before one of these is a measure or a length of time. */
const MEASURES =
  'mins min minute minutes sec secs second seconds hour hours hrs hr days day week weeks wk wks month months degrees ' +
  'degree deg degs c f celsius centigrade fahrenheit percent % ° x bar psi kpa ml mm cm km miles mile metres ' +
  'pounds quid kg g';
const MEASURED = set(MEASURES);

const THINGS =
  'scan scans tips times loads cycles patients pts pt people bookings appointments appts appointment of uses goes ' +
  'covers pouches bags cases impressions packs boxes rooms surgeries scanners attempts';
/** A number before a thing or a measure is a count. */
const COUNTED = set(`${MEASURES} ${THINGS}`);
/** Without a firm cue it may also count what an adjective or a participle stands for ("about 5 left"). */
const PERHAPS_COUNTED = set(
  `${MEASURES} ${THINGS} more left other others new old used dirty clean sterile spare extra different total`,
);

/** "Reading 18 at 9": the words that turn "at 18" into a temperature. */
const TEMPERATURE = set(
  'temp temps temperature reading reads read showing shows sitting thermometer thermostat heating degrees set ' +
    'sterilised sterilized sterilise ran run running held hold holding cycle band',
);

/** Words that may follow a bare hour after a weak cue ("about 5 on blue", "by 4 please"). */
const FOLLOWS = set(
  'on in at for with and then so but please pls plz today tomorrow yesterday this to from by before after until ' +
    'till since when if or we i it all everyone thanks thx ta cheers as because cos ish is was the',
);

/** "4 and 6 are dirty": what comes before these is a subject, not a time. */
const BE = set('are is were was need needs look looks have has');

/** How far back a list of ids is followed to its noun: longer lists of bare ids beside a time are not written. */
const LONGEST_LIST = 24;

/** True where the words before mark the number at `i` as an id, alone or in a list ("tips 2, 5 and 7"). */
export function idBefore(scan: Scan, i: number): boolean {
  if (isColonClock(scan, i) && !/^(tips?|loads?|cycles?|t|#|no|number)$/.test(textAt(scan, i - 1)))
    return false;
  // "Used tip 4, 9am".
  if (/^(?:am|pm)$/.test(textAt(scan, i + 1)) && !ID_NOUNS.has(textAt(scan, i - 1))) return false;
  let separated = false;
  for (let at = i - 1; at >= Math.max(0, i - LONGEST_LIST); at--) {
    const token = scan.tokens[at];
    if (token === undefined) return false;
    if (ID_NOUNS.has(token.text)) return true;
    if (token.kind === 'number') {
      // "Tip 4 2pm": with nothing between, the second number is no further id.
      if (!separated) return false;
      separated = false;
    } else if (/^(,|and|&|-|to|\+|\/)$/.test(token.text)) separated = true;
    else return false;
  }
  return false;
}

/** "Into the autoclave 16:35": no id is written with a colon inside it. */
function isColonClock(scan: Scan, i: number): boolean {
  return (
    textAt(scan, i + 1) === ':' &&
    gluedNumber(scan, i + 2) &&
    scan.tokens[i + 1]?.spaced === false &&
    /^[0-5]\d$/.test(textAt(scan, i + 2)) &&
    /^(\d|[01]\d|2[0-3])$/.test(textAt(scan, i))
  );
}

/** True where the words from `next` on make the number before them a count, a measure or part of a larger number. */
export function countedAfter(scan: Scan, next: number, firm = true): boolean {
  const text = textAt(scan, next);
  if (firm ? COUNTED.has(text) : PERHAPS_COUNTED.has(text)) return true;
  const token = scan.tokens[next];
  if (token === undefined || token.spaced) return false;
  if (text === '/' || text === '%' || text === '°') return true;
  if (text === 'c' || text === 'f' || text === 'x') return true;
  return (text === '.' || text === ',') && gluedNumber(scan, next + 1);
}

/** True where a unit follows: "10:30 min" is a length, "the 10:30 scan" a time. */
export function measuredAfter(scan: Scan, next: number): boolean {
  return MEASURED.has(textAt(scan, next));
}

export function gluedNumber(scan: Scan, i: number): boolean {
  const token = scan.tokens[i];
  return token !== undefined && token.kind === 'number' && !token.spaced;
}

/** True where the words before the cue at `i` speak of a temperature or a cycle. */
export function temperatureBefore(scan: Scan, i: number): boolean {
  return TEMPERATURE.has(textAt(scan, i - 1));
}

/** True where nothing, a mark, or a word that may follow a time stands at `next`. */
export function mayFollow(scan: Scan, next: number): boolean {
  const token = scan.tokens[next];
  if (token === undefined || token.kind === 'mark') return true;
  return FOLLOWS.has(token.text) || WEEKDAY_WORDS.has(token.text) || RELATIVE_DAYS.has(token.text);
}

/** True where a verb of being follows, so that a list of numbers before it is what is spoken of. */
export function beFollows(scan: Scan, next: number): boolean {
  return BE.has(textAt(scan, next));
}
