import type { Token } from '../token.ts';
import { phraseFrom } from './compose.ts';
import { nowAt } from './now.ts';
import type { Scan } from './scan.ts';
import { NEEDS_MORE, TIME_STARTS } from './starts.ts';
import type { TimeContext, TimeSpan } from './time-span.ts';
import { TIME_WORDS } from './vocabulary.ts';

const NONE: readonly boolean[] = [];

/**
 * The words of a note that tell a time, in order, never overlapping. `blocked` marks tokens that are taken already
 * (ids, names). Never throws; the cost is linear in the number of tokens.
 */
export function findTimes(
  tokens: readonly Token[],
  context: TimeContext,
  blocked: readonly boolean[] = NONE,
): readonly TimeSpan[] {
  const scan: Scan = { tokens, blocked };
  const spans: TimeSpan[] = [];
  let i = 0;
  while (i < tokens.length) {
    const token = tokens[i];
    if (token === undefined || blocked[i] === true || !mayStart(token, tokens[i + 1])) {
      i++;
      continue;
    }
    const span = nowAt(scan, i) ?? phraseFrom(scan, i, context.dates);
    if (span !== null) spans.push(span);
    i = span === null ? i + 1 : span.to;
  }
  return spans;
}

/** Most words begin no time, and most of those that may ("at", "the") only with another word of time behind them. */
function mayStart(token: Token, next: Token | undefined): boolean {
  if (token.kind === 'number') return true;
  if (!TIME_STARTS.has(token.text)) return false;
  return !NEEDS_MORE.has(token.text) || (next !== undefined && mayGoOn(next));
}

function mayGoOn(next: Token): boolean {
  return next.kind === 'number' || TIME_WORDS.has(next.text) || COUNTS.has(next.text);
}

/** "In another 20", "a little while ago": words between a cue and what it counts. */
const COUNTS: ReadonlySet<string> = new Set([
  'another',
  'say',
  'little',
  'good',
  'instant',
  'wee',
  'dinner',
  'months',
  'years',
]);
