import { numberWord } from './lexicon/words.ts';
import type { Match, Table } from './table.ts';
import type { Token } from './token.ts';

/** How somebody takes back what was just said and says it again; what is surer stands first. */
const SURE =
  /^(?:(?:oh|ah) )?(?:no sorry i mean|sorry no i mean|sorry i mean|sorry i meant|no i mean|no i meant|i mean|i meant|no wait sorry|no wait|wait no|no sorry|sorry no|no hang on|hang on no|no hold on|make that|or rather|scratch that|no actually|actually no)(?: (?:it's|it was|that's|that was|yes|it is|it should be))?$/;
const LIKELY = /^(?:sorry|no)$/;
const LONGEST_TAKEN_BACK = 8;

/** Words that lead to a number and tell what it is of. */
const LEADS =
  /^(tips?|loads?|cycle|rooms?|surgery|surg|rm|op|bay|chair|scanner|number|at|in|on|to|from|with|the|it's|its)$/;
const BESIDE = /^(and|&|,|\+|n)$/;
/** What makes a length or an hour of the number before it. */
const UNIT = /^(minutes?|mins?|hours?|hrs?|late|early|seconds?|times?|patients?|scans?|x|more|left)$/;

/** "Wiped blue, sorry green is late" tells of another. */
const TELLS = /^(is|was|are|has|isn't|wasn't|'s|needs|still|will|didn't|failed|passed)$/;

interface Run {
  readonly from: number;
  /** Where the number itself begins, past the words that lead to it. */
  readonly numbers: readonly number[];
  readonly to: number;
}

/**
 * "Tip 4 no sorry 5", "room two no room three", "blue I mean green": who thinks aloud means what was said last, and what was
 * taken back is left out. `null` where nothing is taken back.
 */
export function asRestated(tokens: readonly Token[], table: Table): readonly Token[] | null {
  if (!tokens.some(({ text }) => MAY_TAKE_BACK.test(text))) return null;
  let words = tokens;
  for (let at = 1; at < words.length - 1; at++) {
    if (OPENS.test(words[at]?.text ?? '')) words = takenBackAt(words, at, table) ?? words;
  }
  return words === tokens ? null : words;
}

const MAY_TAKE_BACK = /^(sorry|mean|meant|no|make|rather|scratch|actually)$/;
const OPENS = /^(oh|ah|sorry|i|no|wait|hang|make|or|scratch|actually)$/;

function takenBackAt(tokens: readonly Token[], at: number, table: Table): readonly Token[] | null {
  const found = takesBack(tokens, at);
  if (found === null) return null;
  const before = found.from;
  const after = found.to;
  const cut = numbersAgain(tokens, before, after, found.sure) ?? nameAgain(tokens, before, after, table);
  if (cut === null || (cut === 0 && tokens.length - after < 3)) return null;
  if (!found.sure && cut > 1 && tokens.slice(after, after + 5).some(({ text }) => TELLS.test(text)))
    return null;
  return [...tokens.slice(0, cut), ...tokens.slice(after)];
}

/** The words that take back, and the marks around them. */
function takesBack(tokens: readonly Token[], at: number): { from: number; to: number; sure: boolean } | null {
  const comma = (i: number) => /^(,|-|--|\.)$/.test(tokens[i]?.text ?? '');
  if (comma(at)) return null;
  for (let to = Math.min(tokens.length - 1, at + LONGEST_TAKEN_BACK); to > at; to--) {
    const said = tokens.slice(at, to).filter((_, i) => i === 0 || !comma(at + i));
    const text = said.map((token) => token.text).join(' ');
    if (comma(to - 1) && to - 1 > at && !SURE.test(text)) continue;
    const sure = SURE.test(text);
    if (!sure && !LIKELY.test(text)) continue;
    if (!sure && text === 'no' && comma(at - 1)) return null;
    return { from: comma(at - 1) ? at - 1 : at, to, sure };
  }
  return null;
}

/** Where the numbers that are said again began; `null` where the two do not speak of the same. */
function numbersAgain(tokens: readonly Token[], before: number, after: number, sure: boolean): number | null {
  const next = runFrom(tokens, after);
  if (next === null || UNIT.test(tokens[next.to]?.text ?? '')) return null;
  const leads = (next.numbers[0] ?? after) - after;
  const own = runBefore(tokens, before, next.numbers.length, leads);
  if (own === null) return null;
  const lead = leadOf(tokens, next);
  const led = leadOf(tokens, own);
  if (lead !== '' && lead !== led) return null;
  const spelt = (run: Run) => numberWord(tokens[run.numbers[0] ?? 0]?.text ?? '') !== undefined;
  if (!sure && tokens[before]?.text === 'no' && lead === '' && !(spelt(next) && spelt(own))) return null;
  return lead === '' ? (own.numbers[0] ?? null) : own.from;
}

/** The word that tells what the numbers are of. */
function leadOf(tokens: readonly Token[], run: Run): string {
  const first = run.numbers[0] ?? run.from;
  return first === run.from ? '' : (tokens[first - 1]?.text ?? '').replace(/s$/, '');
}

function runFrom(tokens: readonly Token[], from: number): Run | null {
  let at = from;
  while (LEADS.test(tokens[at]?.text ?? '') && at < from + 3) at++;
  const numbers: number[] = [];
  let to = at;
  while (to < tokens.length) {
    const end = numberEnd(tokens, to);
    if (end < 0) break;
    numbers.push(to);
    at = end;
    to = BESIDE.test(tokens[at]?.text ?? '') && numberEnd(tokens, at + 1) > 0 ? at + 1 : at;
  }
  return numbers.length === 0 ? null : { from, numbers, to: at };
}

/** The numbers that end at `to`, as many as are said again, with as many words that lead to them. */
function runBefore(tokens: readonly Token[], to: number, again: number, leads: number): Run | null {
  let start = to;
  let best: Run | null = null;
  for (let from = to - 1; from >= 0 && from >= to - 14; from--) {
    const run = numberEnd(tokens, from) > 0 ? runFrom(tokens, from) : null;
    if (run?.to !== to) continue;
    if (best !== null && run.numbers.length > again) break;
    best = run;
    start = from;
  }
  if (best === null) return null;
  let from = start;
  while (from > 0 && LEADS.test(tokens[from - 1]?.text ?? '') && start - from < leads) from--;
  return { ...best, from };
}

/** Where a number that begins at `at` ends: figures, "twenty one", "T4"; −1 where none does. */
function numberEnd(tokens: readonly Token[], at: number): number {
  const token = tokens[at];
  if (token === undefined) return -1;
  if (token.kind === 'number') return at + 1;
  const next = tokens[at + 1];
  if (token.text.length <= 3 && next?.kind === 'number' && !next.spaced && token.kind === 'word')
    return at + 2;
  const value = numberWord(token.text);
  if (value === undefined) return -1;
  const unit = numberWord(next?.text ?? '') ?? 0;
  return value >= 20 && unit > 0 && unit < 10 ? at + 2 : at + 1;
}

/** Where the name that is said again began: a scanner for a scanner, a room for a room. */
function nameAgain(tokens: readonly Token[], before: number, after: number, table: Table): number | null {
  const texts = tokens.map((token) => token.text);
  const next = nameAt(table, texts, after);
  if (next === null) return null;
  for (let from = Math.max(0, before - 4); from < before; from++) {
    const own = nameAt(table, texts, from);
    if (own?.match.to === before && own.tag === next.tag) return from;
  }
  return null;
}

function nameAt(table: Table, texts: readonly string[], at: number): { match: Match; tag: string } | null {
  const match = table.longest(texts, at);
  const sense = match?.senses.find((one) => one.sort === 'name' && one.ref !== '');
  return match === null || sense === undefined ? null : { match, tag: sense.tag };
}
