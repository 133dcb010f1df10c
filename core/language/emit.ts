import type { NoteScope } from './clause.ts';
import type { Draft } from './clauses.ts';
import { strangeIn } from './evidence.ts';
import type { Interpretation } from './interpret.ts';
import { moodOf } from './mood.ts';
import type { Output } from './output.ts';
import { byOf, hasOwnSubject } from './people.ts';
import { reasonAfter, reasonBefore } from './reasons.ts';
import { liesAhead, whenOf } from './when.ts';

/** Puts what a clause says where its mood lets it go; how many drafts after it were taken for its reason. */
export function emit(
  found: Interpretation,
  drafts: readonly Draft[],
  at: number,
  scope: NoteScope,
  out: Output,
): number {
  const { clause, result } = found;
  out.weighIn(found.evidence.strength, found.evidence.cost, strangeIn(clause.parts));
  const ahead = liesAhead(clause, result.verb);
  const verb = Math.max(result.verb, 0);
  let mood = moodOf(clause, verb, ahead);
  if (result.anyMood && (mood === 'void' || mood === 'planned')) mood = 'stated';
  if (mood === 'void' || mood === 'asked') return 0;
  if (mood === 'doubted') {
    if (clause.scope.strange <= 2 || found.evidence.strength >= 3.4) out.doubted(found);
    return 0;
  }
  let taken = 0;
  const first = result.made[0];
  const more: Record<string, unknown> = {};
  if (first !== undefined && (first.entry.kind === 'held' || first.entry.kind === 'retired')) {
    const after = reasonAfter(drafts, at, clause, scope);
    const reason = after?.text ?? reasonBefore(out, first.entry);
    if (reason !== null) more.reason = reason;
    taken = after?.taken ?? 0;
  }
  const by = byOf(clause, verb);
  if (by !== null) clause.use(by.at);
  const inherited =
    by === null && scope.memory.by !== null && !hasOwnSubject(clause) && drafts[at]?.joint !== ''
      ? scope.memory.by
      : null;
  scope.memory.by = by?.name ?? inherited;
  const who = scope.memory.by ?? scope.signature;
  if (who !== null) more.by = who;
  if (clause.has('samept')) more.samePatient = true;
  out.clause(found, mood === 'planned', more, (site) =>
    whenOf(clause, site, mood === 'planned' ? 'forward' : 'back'),
  );
  return taken;
}
