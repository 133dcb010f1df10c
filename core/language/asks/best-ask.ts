import { Clause, type NoteScope } from '../clause.ts';
import { holds, weigh } from '../evidence/evidence.ts';
import { bearsOutside } from '../evidence/patience.ts';
import { strangeIn } from '../evidence/strange.ts';
import { LONGEST_CLAUSE } from '../interpret.ts';
import type { Part } from '../part.ts';
import { type Ask, type AskResult, useBeside } from './ask.ts';
import { asks } from './asks.ts';

/** A number of who knows what, that is no id of ours, is asked nothing about: "the good old days of 419". */
function isOfAnother({ missing }: AskResult, c: Clause): boolean {
  if (missing?.about !== 'tip' || missing.words === undefined) return false;
  return !c.entities('tips').some(({ entity }) => entity.named);
}

/** A kind of question with how well it explains the words. */
export interface BestAsk {
  readonly ask: Ask;
  readonly result: AskResult;
  readonly clause: Clause;
  readonly score: number;
  readonly strength: number;
  readonly cost: number;
}

/** The question that explains these words best; `null` where none does well enough. */
export function bestAsk(parts: readonly Part[], question: boolean, scope: NoteScope): BestAsk | null {
  if (parts.length === 0 || parts.length > LONGEST_CLAUSE) return null;
  let best: BestAsk | null = null;
  const shared = {};
  for (const ask of asks) {
    const clause = new Clause(parts, scope, shared);
    const result = ask.read(clause, question);
    if (result === null || isOfAnother(result, clause)) continue;
    for (const { at } of clause.entities('time')) clause.use(at);
    useBeside(clause);
    const raw = weigh(clause);
    const evidence = { strength: raw.strength + result.bonus, cost: raw.cost };
    if (!holds(evidence) || !bearsOutside(clause, scope.strange - strangeIn(parts), scope.listing)) continue;
    if (
      result.whole &&
      (scope.strange - strangeIn(parts) > 0.5 ||
        weigh(clause).cost > 0.7 ||
        parts.length > 16 ||
        scope.sentences > 2)
    )
      continue;
    const score = evidence.strength - 2 * evidence.cost;
    if (best === null || score > best.score + 1.5)
      best = { ask, result, clause, score, strength: evidence.strength, cost: evidence.cost };
  }
  return best;
}
