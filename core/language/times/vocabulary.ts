import { TIME_STARTS } from './starts.ts';
import { MONTH_WORDS, RELATIVE_DAYS, UNITS, WEEKDAY_WORDS } from './words.ts';

/** Every word that the time grammar knows, short forms included: spelling must never change one of these. */
export const TIME_WORDS: ReadonlySet<string> = new Set([
  ...TIME_STARTS,
  ...UNITS.keys(),
  ...(
    'morning mornings morn mornin am pm afternoon afternoons aft avo evening eve night thing doors play business session ' +
    'clinic shift time open up we shut closed opened shutting start beginning break dinner past to til thru ago back since ' +
    "o'clock oclock clock oh sharp dot ish odd thereabouts hrs nd rd th st year month fortnight few year's years commencing " +
    'starting week weekend gone only long one day other days inclusive including minuets mo moment tick bit sec like ' +
    'quarters moro morrow whole in the of or so and a'
  ).split(' '),
]);

/** Read as they stand, never arrived at. */
const PLURALS: ReadonlySet<string> = new Set([
  'mondays',
  'tuesdays',
  'wednesdays',
  'thursdays',
  'fridays',
  'saturdays',
  'sundays',
]);

/** The long ones among them: what a slip ("yesteday", "mintues") may be put right toward. */
export const TIME_TARGETS: ReadonlySet<string> = new Set([
  ...long(WEEKDAY_WORDS.keys(), 6),
  ...long(MONTH_WORDS.keys(), 7),
  ...['today', 'tomorrow', 'yesterday'].filter((word) => RELATIVE_DAYS.has(word)),
  ...(
    'morning afternoon evening tonight overnight lunchtime midday midnight quarter twenty minutes minute hours hour ' +
    'earlier weekend before after since until between about around'
  ).split(' '),
]);

function long(words: Iterable<string>, least: number): string[] {
  return [...words].filter((word) => word.length >= least && !PLURALS.has(word));
}
