import { normalQuantile } from './normal.ts';

/** Two ends of an interval for a proportion, fractions from 0 to 1. */
export interface Interval {
  readonly lower: number;
  readonly upper: number;
}

/**
 * Wilson's score interval, no continuity correction (Newcombe, Stat Med 1998;17:857-872, method 3).
 * With no trials it is 0 to 1. RangeError unless 0 ≤ hits ≤ trials and 0 < confidence < 1.
 */
export function wilsonInterval(hits: number, trials: number, confidence = 0.95): Interval {
  if (!(hits >= 0 && hits <= trials)) throw new RangeError(`${hits} of ${trials} is not a proportion`);
  if (!(confidence > 0 && confidence < 1)) throw new RangeError(`not a confidence: ${confidence}`);
  if (trials === 0) return { lower: 0, upper: 1 };
  const z = normalQuantile(0.5 + confidence / 2);
  const square = z * z;
  const middle = 2 * hits + square;
  const reach = z * Math.sqrt(square + (4 * hits * (trials - hits)) / trials);
  const scale = 2 * (trials + square);
  return {
    lower: (middle - reach) / scale,
    upper: hits === trials ? 1 : (middle + reach) / scale,
  };
}
