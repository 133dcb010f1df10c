/** What stands for things told of before: one, two, several, the other of two, or no word at all ("wiped down"). */
export type Standing = 'one' | 'two' | 'several' | 'other' | 'left-out';

/** A short note in which a word stands for what was told of before: "binned it", "they're both in the bath". */
export interface Pronoun {
  readonly standing: Standing;
  /** How many words it has. */
  readonly words: number;
  /** The note with these words in its place: how the reader reads it then says what was meant. */
  readonly saying: (name: string) => string;
}

/** Longer notes speak for themselves. */
const LONGEST = 9;

/** Behind these it seldom is a thing that something was done with ("sorry about it", "both scanners"). */
const NOT_BEFORE = String.raw`(?<!\b(?:about|for|at|like|of|with|from|than|by|in|to|that's|thats|call|make|made|let|feel) )`;
const NOT_BEHIND = String.raw`(?! (?:of|the|these|those|my|our|tips?|scanners?|autoclaves?|sites?|rooms?|surger(?:y|ies)|loads?|covers?|days?|ways?|ends?|ones?|patients?|people)\b)`;
/** "It's gone" has, "it's fogging" is. */
const HAS = String.raw`(?= (?:been|gone|had|got|come|split|stopped|started|fallen|left|lost|broken|cracked)\b)`;

/** "Its mirror", with or without an apostrophe. */
const OWNS = String.raw`(?= (?:mirror|lens|pouch|pack|bag|strip|body|cover|cable|base|calibration)\b)`;

/** "It was freezing" is said of no scanner. */
const NOT_WEATHER = String.raw`(?! (?:so |really |absolutely |too |bloody )?(?:freezing|boiling|raining|snowing|pouring|baking|roasting|cold|hot|warm|chilly)\b)`;

interface Form {
  readonly standing: Standing;
  readonly words: RegExp;
  readonly verb: string;
}

function form(standing: Standing, words: string, verb = ''): Form {
  return {
    standing,
    words: new RegExp(`${NOT_BEFORE}(?<![\\p{L}\\p{N}'])(?:${words})(?![\\p{L}\\p{N}'])`, 'giu'),
    verb,
  };
}

/** The longest words first: "they're both" is one thing said. */
const FORMS: readonly Form[] = [
  form(
    'two',
    `(?:they're both|they both are|theyre both|they are both|both are|they've both|they have both|they were both)`,
    ' are',
  ),
  form('two', `both of (?:them|those|these|em)|them both|those both|they both|both${NOT_BEHIND}`),
  form('several', `(?:they're|theyre|they are|they were|they're all|they are all|all of them are)`, ' are'),
  form('several', `(?:they've|they have)`, ' have'),
  form('several', `all of them|them all|they all|they|them|'em`),
  form('one', `(?:it's|its)${OWNS}`, "'s"),
  form('one', `(?:it's|its|that one's|this one's)${HAS}`, ' has'),
  form('one', `(?:it's|its|that one's|this one's|it is|it was|that one is|this one is)${NOT_WEATHER}`, ' is'),
  form('one', `that one|this one|it(?! (?:is|was)\\b)`),
  form('other', `the other one is|other one's|the other one's`, ' is'),
  form('other', `the other one|other one|the other${NOT_BEHIND}`),
];

/** `null` where nothing of the kind stands in the note, several sorts do, it asks, or it is long. */
export function pronounIn(text: string): Pronoun | null {
  const plain = text
    .replaceAll(/[’‘`´]/g, "'")
    .replaceAll(/\s+/g, ' ')
    .trim();
  const count = plain.split(' ').length;
  if (plain.includes('?') || count > LONGEST || plain.length > 80) return null;
  const found = FORMS.find(({ words }) => plain.search(words) >= 0);
  if (found === undefined) return leftOut(plain, count);
  const { words, verb, standing } = found;
  const rest = plain.replaceAll(words, ' ');
  if (FORMS.some((other) => other.standing !== standing && rest.search(other.words) >= 0)) return null;
  return { standing, words: count, saying: (name) => plain.replaceAll(words, () => `${name}${verb}`) };
}

/** What is done with scanners and tips and seldom said of anything else in these words. */
const DEED =
  "(?:wiped(?: down)?|cleaned down|covered|cover(?:'s)? (?:back )?on|bagged|pouched|washed|scrubbed|rinsed|binned|sent to (?:steri|the autoclave|autoclave))";
const DEEDS = new RegExp(
  String.raw`^(?:(?:and|now|then|just|also|ok|all) )*(?<deeds>${DEED}(?:(?:,| and|,? then| &| n| \+) ${DEED})*)(?: now| too| as well)?[.! ]*$`,
  'i',
);

/** A note that is nothing but what was done: "wiped down and covered", "washed, bagged". */
function leftOut(plain: string, words: number): Pronoun | null {
  const deeds = DEEDS.exec(plain)?.groups?.deeds;
  return deeds === undefined ? null : { standing: 'left-out', words, saying: (name) => `${name} ${deeds}` };
}
