import type { NoteScope } from './clause.ts';
import { draftsOf, sortOf } from './clauses.ts';
import { emit } from './emit.ts';
import type { Interpretation } from './interpret.ts';
import { merged } from './joins.ts';
import { remember, rememberFacts } from './memory.ts';
import { clauseFrom, jointOf } from './neighbours.ts';
import type { Output } from './output.ts';
import { hasSort, hasTag, type Part } from './part.ts';
import type { Sentence } from './segments.ts';
import { supposition } from './supposition.ts';

/** Reads the clauses of what is no question. */
export function readStatements(sentences: readonly Sentence[], scope: NoteScope, out: Output): void {
  const drafts = merged(draftsOf(sentences), sentences, scope, out);
  let pending: readonly Part[] = [];
  let previous: Interpretation | null = null;
  for (let i = 0; i < drafts.length; i++) {
    const draft = drafts[i];
    if (draft === undefined || draft.quoted) continue;
    const cut = supposition(draft.parts);
    if (cut === 0) {
      // "Before I forget, …", "when I got in, …": only what would have to come true takes the rest with it.
      if (
        draft.parts.some(
          (p) => p.entity === undefined && hasTag(p, 'suppose') && /^(before|when)/.test(p.text),
        ) &&
        drafts[i + 1]?.joint === ','
      )
        continue;
      return;
    }
    const own = cut > 0 ? draft.parts.slice(0, cut) : draft.parts;
    const found = clauseFrom(own, pending, drafts, i, previous, scope);
    if (found === null) {
      pending =
        waits(own) && i + 1 < drafts.length
          ? [...pending, ...(pending.length > 0 ? [jointOf(draft)] : []), ...own]
          : [];
      remember(own, scope.memory);
    } else {
      pending = [];
      i += found.taken;
      i += emit(found.read, drafts, i, scope, out);
      previous = found.read;
      remember(found.read.clause.parts, scope.memory);
      rememberFacts(found.read, scope.memory);
    }
    if (cut > 0) return;
  }
}

/** True where a draft only names things: what is said of them comes after. */
function waits(parts: readonly Part[]): boolean {
  const sort = sortOf(parts);
  return (
    sort === 'entities' ||
    (sort === 'act' && !parts.some((p) => hasSort(p, 'verb') && !hasSort(p, 'noun') && !hasSort(p, 'glue')))
  );
}
