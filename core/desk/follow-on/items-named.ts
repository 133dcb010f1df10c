import { slipsBetween } from '../../language/suggest.ts';
import type { Item } from '../../reading/slots.ts';
import type { Session } from '../session.ts';
import type { Leaning } from './told.ts';

/** "7", "T7", "N-7", "2-5". */
const ID = /^#?\p{L}{0,4}-?\d{1,4}(?:[-–]\p{L}{0,4}\d{1,4})?$/u;
const NUMBER =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty)$/i;
const BETWEEN = /^(?:tips?|no|nos|number|numbers|num|and|n|also|plus|to|thru|[-–&+])$/i;
const LOAD = /^(?:loads?|cycles?) (?:no |number )?#?(\d{1,6})$/i;

/** What words that name items alone stand for: as scanners, as tips, as a load; empty where they are no such thing. */
export interface Named extends Tips {
  readonly scanners: readonly Item[];
  readonly loads: readonly Item[];
  /** They name tips, by that word or by ids that no scanner has. */
  readonly plainlyTips: boolean;
  /** They hold words that are no name ("green but it failed"): what is meant has to be asked. */
  readonly more: boolean;
}

/**
 * The reader knows names, slips of them, ranges and prefixes: it is given the words as a note that says nothing else. What
 * it makes of them beside items (a place, a time, a doubt) means that they are not items alone.
 */
export function itemsNamed(session: Session, words: string, note: Leaning): Named {
  const list = words
    .split(/[\s,]+/)
    .map((word) => word.replace(/[.;:!]+$/, ''))
    .filter((word) => word !== '');
  const areIds =
    list.some((word) => ID.test(word) || NUMBER.test(word)) &&
    list.every((word) => ID.test(word) || NUMBER.test(word) || BETWEEN.test(word));
  const saysTip = /\btips?\b/i.test(words);
  const load = LOAD.exec(words)?.[1];
  return {
    scanners: saysTip || load !== undefined ? [] : scannersIn(session, `wiped ${words}`, note),
    ...(areIds ? tipsIn(session, `used ${saysTip ? '' : 'tips '}${listed(list)}`, note) : NO_TIPS),
    loads: load === undefined ? [] : [`load:${load}`],
    plainlyTips: saysTip,
    more: !areIds && load === undefined && !list.every((word) => isOfName(session, word)),
  };
}

/** The ids with commas between them, whatever people put there ("3. also 4"); a stretch stays one ("4 to 6"). */
function listed(words: readonly string[]): string {
  const isId = (one = '') => ID.test(one) || NUMBER.test(one);
  return words
    .filter((word) => !/^(?:and|n|also|plus|[&+])$/i.test(word))
    .map((word, n, all) => (isId(word) && isId(all[n + 1]) ? `${word},` : word))
    .join(' ');
}

const GLUE = /^(?:the|our|my|and|n|[&+]|one|ones|both|scanner|scanners|too)$/i;

/** A word of a scanner's name, or of one that was learned, with at most one slip where it is long enough. */
function isOfName({ practice, learned }: Session, word: string): boolean {
  if (GLUE.test(word)) return true;
  const names = [
    ...practice.scanners.flatMap(({ id, name, also }) => [id, name, ...also]),
    ...learned.map(({ words }) => words),
  ];
  const typed = word.toLowerCase().replace(/['’]s$/, '');
  return names
    .flatMap((name) => name.toLowerCase().split(/\s+/))
    .some((own) => own === typed || (own.length > 3 && slipsBetween(typed, own, 1) <= 1));
}

function scannersIn({ read }: Session, text: string, { at, from, room }: Leaning): readonly Item[] {
  const { facts, asks, plans, unclear } = read(text, { at, from, room }).reading;
  if (asks.length + plans.length + unclear.length > 0) return [];
  const items = facts.map((fact): Item | null => {
    const { kind, when, ...rest } = fact;
    const isPlain = Object.keys(rest).every((slot) => slot === 'scanner' || slot === 'part');
    return fact.kind === 'wiped' && fact.part === 'all' && isPlain && Date.parse(when) === at
      ? `scanner:${fact.scanner}`
      : null;
  });
  return items.includes(null) ? [] : items.filter((item) => item !== null);
}

function tipsIn({ read }: Session, text: string, { at, from, room }: Leaning): Tips {
  const { reading, gaps } = read(text, { at, from, room });
  const { facts, asks, plans, unclear } = reading;
  const [fact, ...more] = facts;
  const none = gaps.find(({ unclear: { about }, words }) => about === 'tip' && words !== undefined)?.words;
  if (none !== undefined) return { tips: [], none };
  if (fact?.kind !== 'used' || more.length + asks.length + plans.length + unclear.length > 0) return NO_TIPS;
  const { kind: _, when, tips = [], ...rest } = fact;
  if (Object.keys(rest).length > 0 || Date.parse(when) !== at) return NO_TIPS;
  return { tips: tips.map((tip): Item => `tip:${tip}`) };
}

interface Tips {
  readonly tips: readonly Item[];
  /** An id among them that is no tip's. */
  readonly none?: string;
}

const NO_TIPS: Tips = { tips: [] };
