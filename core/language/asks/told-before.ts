import type { NoteScope } from '../clause.ts';
import { opensQuestion } from '../mood/questions.ts';
import { type EntityOf, hasTag, type Part } from '../part.ts';
import type { Segment } from '../segments.ts';

/** "Load 32 failed where did those tips go": typed or dictated in one breath, the result and the question are two. */
export function cutAtQuestion(segments: readonly Segment[]): readonly Segment[] {
  if (!segments.some(({ parts }) => parts.some((p) => hasTag(p, 'wh')))) return segments;
  return segments.flatMap((segment) => {
    const at = segment.parts.findIndex((p, i) => i > 1 && p.entity === undefined && hasTag(p, 'wh'));
    const before = segment.parts.slice(0, at);
    const told =
      at > 1 &&
      before.some((p) => loadIn(p) !== null) &&
      before.some((p) => hasTag(p, 'fail') || hasTag(p, 'pass'));
    return told && !opensQuestion(before)
      ? [
          { ...segment, parts: before },
          { ...segment, parts: segment.parts.slice(at), joint: '' },
        ]
      : [segment];
  });
}

/** A load by its name, or a number that is no tip's and may be one. */
function loadIn({ entity }: Part): EntityOf<'load'> | null {
  if (entity?.is === 'load') return entity;
  if (entity?.is !== 'tips' || entity.named || entity.ids.length > 0) return null;
  const [id, more] = entity.unknown;
  const digits = id?.replace(/\D/g, '') ?? '';
  return more === undefined && digits.length >= 2 ? { is: 'load', ids: [digits], named: false } : null;
}

/** What stands before a question is what it looks back to: its load, its tips. */
export function rememberFor(segments: readonly Segment[], scope: NoteScope): void {
  for (const { parts } of segments) {
    const load = parts.map(loadIn).find((one) => one !== null) ?? null;
    if (load !== null && !load.named && parts.some((p) => hasTag(p, 'fail') || hasTag(p, 'pass')))
      scope.memory.load = load;
  }
  for (const part of segments.flatMap((s) => s.parts)) {
    if (part.entity?.is === 'load') scope.memory.load = part.entity;
    if (part.entity?.is === 'tips' && part.entity.ids.length > 0) scope.memory.tips = part.entity;
  }
}
