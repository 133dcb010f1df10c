import type { Token } from '../token.ts';
import type { TimeContext, TimeSpan } from './time-span.ts';

/**
 * The words of a note that tell a time, in order, never overlapping. `blocked` marks tokens that are taken already
 * (ids, names). Never throws.
 */
export function findTimes(
  _tokens: readonly Token[],
  _context: TimeContext,
  _blocked?: readonly boolean[],
): readonly TimeSpan[] {
  return [];
}
