import type { Clause, NoteScope } from './clause.ts';
import type { Draft } from './clauses.ts';
import { strangeIn } from './evidence/strange.ts';
import type { Interpretation } from './interpret.ts';
import { moodOf } from './mood/mood.ts';
import type { Output } from './output.ts';
import { hasTag } from './part.ts';
import { byOf, hasOwnSubject } from './people.ts';
import { reasonAfter, reasonBefore } from './reasons.ts';
import { mayBeDenied } from './stray.ts';
import { liesAhead, whenOf } from './when.ts';

/** Puts what a clause says where its mood lets it go; how many drafts after it were taken for its reason. */
export function emit(
  found: Interpretation,
  drafts: readonly Draft[],
  at: number,
  scope: NoteScope,
  out: Output,
): number {
  const { clause } = found;
  out.weighIn(found.evidence.strength, found.evidence.cost, strangeIn(clause.parts));
  const mood = moodIn(found);
  const asked = goesOnAsking(found, drafts[at], scope);
  if (mood === 'void' || asked || isLongAgo(clause)) return 0;
  if (mood === 'doubted') {
    if (
      scope.strange <= 2 ||
      (scope.strange <= 4 && strangeIn(clause.parts) <= 1) ||
      found.evidence.strength >= 3.4
    )
      out.doubted(found);
    return 0;
  }
  const cause = causeOf(found, drafts, at, scope, out);
  const who = whoDid(found, drafts[at]?.joint ?? '', scope);
  const more: Record<string, unknown> = {
    ...(cause === null ? {} : { reason: cause.text }),
    ...(who === null ? {} : { by: who }),
    ...(clause.has('samept') ? { samePatient: true } : {}),
  };
  const planned = mood === 'planned';
  out.clause(found, planned, more, (site) => whenOf(clause, site, planned ? 'forward' : 'back'));
  return cause?.taken ?? 0;
}

/** "Last year we lost tip 9" is a story. */
function isLongAgo(clause: Clause): boolean {
  return clause
    .entities('time')
    .some(({ entity }) => entity.span.days.some(({ first }) => first.sort === 'year'));
}

/** "All scanners must be wiped, covered": what was asked for goes on with what is said of nothing else. */
function goesOnAsking(
  { clause, result }: Interpretation,
  draft: Draft | undefined,
  scope: NoteScope,
): boolean {
  const asks = clause.parts
    .slice(0, Math.max(result.verb, 0))
    .some((p) => p.entity === undefined && (hasTag(p, 'oblige') || hasTag(p, 'request')));
  const { asked } = scope.memory;
  scope.memory.asked = asks ? draft?.sentence : asked;
  const own = clause.parts.some(
    (p) => p.entity !== undefined && p.entity.is !== 'time' && p.entity.is !== 'person',
  );
  return (
    result.anyMood !== true &&
    asked !== undefined &&
    asked === draft?.sentence &&
    !own &&
    /^(,|and|&|then)$/.test(draft.joint) &&
    !hasOwnSubject(clause)
  );
}

function moodIn({ clause, result }: Interpretation): 'void' | 'doubted' | 'stated' | 'planned' {
  const mood = moodOf(clause, Math.max(result.verb, 0), liesAhead(clause, result.verb));
  if (mood === 'asked') return 'void';
  if (mood === 'stated' && (result.doubtful || mayBeDenied(clause, result))) return 'doubted';
  // "Don't use tip 4", "118 didn't pass", "closed on Friday": the denial or the time ahead is part of what is said.
  return result.anyMood && (mood === 'void' || mood === 'planned') ? 'stated' : mood;
}

/** The cause of a hold or a retirement, and how many drafts told it. */
function causeOf(
  { clause, result }: Interpretation,
  drafts: readonly Draft[],
  at: number,
  scope: NoteScope,
  out: Output,
): { text: string; taken: number } | null {
  const first = result.made[0];
  if (first === undefined || (first.entry.kind !== 'held' && first.entry.kind !== 'retired')) return null;
  const after = reasonAfter(drafts, at, clause, scope);
  if (after !== null) return after;
  const before = reasonBefore(out, first.entry);
  return before === null ? null : { text: before, taken: 0 };
}

/** Who did it: named in the clause, the subject of the clause it goes on from, or who signed. */
function whoDid({ clause, result }: Interpretation, joint: string, scope: NoteScope): string | null {
  const by = byOf(clause, Math.max(result.verb, 0));
  if (by !== null) clause.use(by.at);
  const goesOn = by === null && joint !== '' && !hasOwnSubject(clause);
  scope.memory.by = by?.name ?? (goesOn ? scope.memory.by : null);
  return scope.memory.by ?? scope.signature;
}
