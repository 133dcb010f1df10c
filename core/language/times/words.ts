/** Words that tell times, as data. Another language is another such file. */

export const WEEKDAY_WORDS: ReadonlyMap<string, number> = new Map([
  ...entries(1, 'monday mon mondays'),
  ...entries(2, 'tuesday tue tues tuesdays'),
  ...entries(3, 'wednesday wed weds wednesdays'),
  ...entries(4, 'thursday thu thur thurs thursdays'),
  ...entries(5, 'friday fri fridays'),
  ...entries(6, 'saturday sat saturdays'),
  ...entries(7, 'sunday sun sundays'),
]);

/** Words that are weekdays only beside a cue ("blue sat in the car", "in the sun"). */
export const SHY_WEEKDAYS: ReadonlySet<string> = new Set(['sat', 'sun']);

export const MONTH_WORDS: ReadonlyMap<string, number> = new Map([
  ...entries(1, 'january jan'),
  ...entries(2, 'february feb'),
  ...entries(3, 'march mar'),
  ...entries(4, 'april apr'),
  ...entries(5, 'may'),
  ...entries(6, 'june jun'),
  ...entries(7, 'july jul'),
  ...entries(8, 'august aug'),
  ...entries(9, 'september sept sep'),
  ...entries(10, 'october oct'),
  ...entries(11, 'november nov'),
  ...entries(12, 'december dec'),
]);

/** Months that need no cue: the others are also verbs, adjectives, or people's names. */
export const BOLD_MONTHS: ReadonlySet<string> = new Set(
  'january february july september october november december'.split(' '),
);

/** Days from today. */
export const RELATIVE_DAYS: ReadonlyMap<string, number> = new Map([
  ...entries(0, 'today 2day tday todays'),
  ...entries(1, 'tomorrow tomorrows tomoz tomorow tommorow tommorrow tmrw tmr tmw tmoro 2moro 2morrow'),
  ...entries(-1, 'yesterday yesterdays yest yday yesty yesterdy ystrday'),
]);

export const NUMBER_WORDS: ReadonlyMap<string, number> = new Map([
  ['one', 1],
  ['two', 2],
  ['three', 3],
  ['four', 4],
  ['five', 5],
  ['six', 6],
  ['seven', 7],
  ['eight', 8],
  ['nine', 9],
  ['ten', 10],
  ['eleven', 11],
  ['twelve', 12],
  ['thirteen', 13],
  ['fourteen', 14],
  ['fifteen', 15],
  ['sixteen', 16],
  ['seventeen', 17],
  ['eighteen', 18],
  ['nineteen', 19],
]);

export const TENS_WORDS: ReadonlyMap<string, number> = new Map([
  ['twenty', 20],
  ['thirty', 30],
  ['forty', 40],
  ['fifty', 50],
]);

/** Days of a month in words, as after "the": "the second of November". */
export const ORDINAL_WORDS: ReadonlyMap<string, number> = new Map(
  (
    'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth ' +
    'fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'
  )
    .split(' ')
    .map((word, index) => [word, index + 1]),
);

/** Dates known by a name. */
export const FEASTS: ReadonlyMap<string, { readonly month: number; readonly day: number }> = new Map([
  ['christmas eve', { month: 12, day: 24 }],
  ['xmas eve', { month: 12, day: 24 }],
  ['christmas day', { month: 12, day: 25 }],
  ['xmas day', { month: 12, day: 25 }],
  ['boxing day', { month: 12, day: 26 }],
  ['new years eve', { month: 12, day: 31 }],
  ["new year's eve", { month: 12, day: 31 }],
  ['new years day', { month: 1, day: 1 }],
  ["new year's day", { month: 1, day: 1 }],
]);

/** Minutes in a unit. */
export const UNITS: ReadonlyMap<string, number> = new Map([
  ...entries(1 / 60, 'sec secs second seconds s'),
  ...entries(1, 'min mins minute minutes m minuets'),
  ...entries(60, 'hour hours hr hrs h'),
  ...entries(1440, 'day days'),
  ...entries(10_080, 'week weeks wk wks'),
  ...entries(20_160, 'fortnight fortnights'),
]);

function entries<T>(value: T, words: string): [string, T][] {
  return words.split(' ').map((word) => [word, value]);
}
