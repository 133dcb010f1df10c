import type { TimeSpan } from './time-span.ts';

/**
 * Two time phrases of one clause that stand apart ("at 9 and 2 … on Thursday") as one; `null` where both say the
 * same thing (two days, two clock times) or one of them is complete in itself. Token range: from the first to the
 * end of the last, what stands between included.
 */
export function combineTimes(a: TimeSpan, b: TimeSpan): TimeSpan | null {
  if (a.now === true) return { ...b, from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) };
  if (b.now === true) return { ...a, from: Math.min(a.from, b.from), to: Math.max(a.to, b.to) };
  if (a.shift !== undefined || b.shift !== undefined) return null;
  if (a.days.length > 0 && b.days.length > 0) return null;
  if (hasClock(a) && hasClock(b)) return null;
  if (a.part !== undefined && b.part !== undefined) return null;
  const range = a.range ?? b.range;
  const part = a.part ?? b.part;
  return {
    from: Math.min(a.from, b.from),
    to: Math.max(a.to, b.to),
    bound: a.bound === 'at' ? b.bound : a.bound,
    days: a.days.length > 0 ? a.days : b.days,
    clocks: a.clocks.length > 0 ? a.clocks : b.clocks,
    ...(range === undefined ? {} : { range }),
    ...(part === undefined ? {} : { part }),
  };
}

function hasClock(span: TimeSpan): boolean {
  return span.clocks.length > 0 || span.range !== undefined;
}
