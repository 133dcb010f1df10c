import type { Finding } from './finding.ts';

/** A clock this far from the homeserver's puts times of notes in doubt, ms. */
const CLOCK_MS = 60_000;
const PATIENCE_MS = 5000;

/** The clock against the homeserver's, by the date of its answer; null where the answer bears none. */
export async function ofClock(homeserver: string): Promise<Finding | null> {
  const before = Date.now();
  const signal = AbortSignal.timeout(PATIENCE_MS);
  const answer = await fetch(`${homeserver}/_matrix/client/versions`, { signal }).catch(() => null);
  if (answer === null) return { of: 'server', good: false, line: `${homeserver} does not answer` };
  const there = Date.parse(answer.headers.get('date') ?? '');
  if (Number.isNaN(there)) return null;
  // The date has whole seconds and was written somewhere between asking and now.
  const off = Math.round((there - (before + Date.now()) / 2) / 1000);
  return {
    of: 'clock',
    good: Math.abs(off) * 1000 < CLOCK_MS,
    line: `The homeserver's clock is ${off} s from ours`,
    todo: "Whoever runs the program: set the machine's clock.",
  };
}
