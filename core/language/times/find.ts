import type { Token } from '../token.ts';
import { phraseFrom } from './compose.ts';
import { nowAt } from './now.ts';
import type { Scan } from './scan.ts';
import { TIME_STARTS } from './starts.ts';
import type { TimeContext, TimeSpan } from './time-span.ts';

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
    if (token === undefined || blocked[i] === true || !mayStart(token)) {
      i++;
      continue;
    }
    const span = nowAt(scan, i) ?? phraseFrom(scan, i, context.dates);
    if (span !== null) spans.push(span);
    i = span === null ? i + 1 : span.to;
  }
  return spans;
}

function mayStart(token: Token): boolean {
  return token.kind === 'number' || TIME_STARTS.has(token.text);
}
