import {
  MONTH_WORDS,
  NUMBER_WORDS,
  ORDINAL_WORDS,
  RELATIVE_DAYS,
  TENS_WORDS,
  WEEKDAY_WORDS,
} from './words.ts';

/** Words that may begin a time phrase; all others are passed over without a closer look. */
export const TIME_STARTS: ReadonlySet<string> = new Set([
  ...WEEKDAY_WORDS.keys(),
  ...MONTH_WORDS.keys(),
  ...RELATIVE_DAYS.keys(),
  ...NUMBER_WORDS.keys(),
  ...TENS_WORDS.keys(),
  ...ORDINAL_WORDS.keys(),
  ...[...NUMBER_WORDS.keys()].map((word) => `${word}ish`),
  ...(
    'at @ on in by for from since until till til untill before after between about around bout bang dead circa approx approximately roughly ~ ' +
    'nearly over during through of just shortly straight right soon bit gone half ½ quarter qtr a an the this last next past ' +
    'previous coming all now atm as only have noon midday mid midnight end close cob eop eod closing home hometime opening ' +
    'start beginning middle the when first early late earlier later tonight tonite arvo sarvo overnight lunchtime lunch dinnertime so bright day ' +
    'week w wc wk moments moment seconds secs ages some sometime not while quite christmas xmas boxing new couple few ' +
    'several hour hr within like maybe weekend'
  ).split(' '),
]);

/** Those that tell no time alone: another word of time stands right behind them. */
export const NEEDS_MORE: ReadonlySet<string> = new Set(
  'at @ on in by for from since until till til before after between about around over during through of a an the this last next past all have not so'.split(
    ' ',
  ),
);

/** Words that may stand right after a cue besides these: "before we open", "over dinner". */
export const AFTER_CUE: ReadonlySet<string> = new Set([
  ...TIME_STARTS,
  'we',
  'open',
  'dinner',
  'shutting',
  'shut',
]);
