import { logFactorial } from './log-factorial.ts';

/** P(X = count) at `mean`. RangeError when the mean is negative or not finite. */
export function poissonPmf(count: number, mean: number): number {
  if (!(mean >= 0 && Number.isFinite(mean))) throw new RangeError(`not a mean: ${mean}`);
  if (!Number.isInteger(count) || count < 0) return 0;
  if (mean === 0) return count === 0 ? 1 : 0;
  return Math.exp(count * Math.log(mean) - mean - logFactorial(count));
}

/** P(X ≤ count) summed term by term; relative error under 1e-10 for means up to 10,000. */
export function poissonCdf(count: number, mean: number): number {
  let total = poissonPmf(0, mean);
  for (let i = 1; i <= Math.floor(count); i++) total += poissonPmf(i, mean);
  return count < 0 ? 0 : Math.min(1, total);
}

/** P(X ≥ count), the terms themselves summed when count is above the mean, so that a far tail keeps its digits. */
export function poissonUpperTail(count: number, mean: number): number {
  const from = Math.ceil(count);
  if (from <= 0) return 1;
  if (from <= mean) return 1 - poissonCdf(from - 1, mean);
  let total = 0;
  for (let i = from; ; i++) {
    const term = poissonPmf(i, mean);
    total += term;
    if (term <= total * 1e-17) return total;
  }
}

/**
 * Least count whose P(X ≤ count) reaches `probability`; Infinity at 1. RangeError outside 0 to 1.
 * A probability within 1e-12 of a step counts as reaching it.
 */
export function poissonQuantile(probability: number, mean: number): number {
  if (!(probability >= 0 && probability <= 1)) throw new RangeError(`not a probability: ${probability}`);
  if (mean === 0) return 0;
  if (probability === 1) return Number.POSITIVE_INFINITY;
  let total = poissonPmf(0, mean);
  let count = 0;
  while (total < probability - 1e-12) total += poissonPmf(++count, mean);
  return count;
}
