import type { Clause } from '../clause.ts';
import { costOf } from './cost.ts';
import { strengthOf } from './strength.ts';

export interface Evidence {
  readonly strength: number;
  readonly cost: number;
}

/** What speaks for and against a frame's reading of a clause. */
export function weigh(c: Clause): Evidence {
  let strength = 0;
  let cost = 0;
  const used = [...c.used];
  const first = Math.min(...used);
  const last = Math.max(...used);
  for (const [i, part] of c.parts.entries()) {
    if (c.used.has(i)) strength += strengthOf(part);
    else {
      // Beyond the words that are explained, a strange word tells less than one among them.
      const outside = i < first || i > last;
      cost += costOf(part) * (outside ? 0.75 : 1);
    }
  }
  return { strength, cost };
}

/** The leftover test: how much unexplained there may be beside how much is explained. */
export function holds({ strength, cost }: Evidence): boolean {
  if (strength < 1.6) return false;
  if (strength < 1.9) return cost <= 0.05;
  if (strength < 2.6) return cost <= 0.3;
  if (strength < 3.4) return cost <= 1.15;
  if (strength < 5) return cost <= 2.3;
  return cost <= 3.4;
}
