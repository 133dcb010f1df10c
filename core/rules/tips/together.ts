import type { Finding, FindingKind, FindingOf } from '../../record/finding.ts';
import type { View } from '../matter.ts';

/**
 * The findings of one kind on one entry ("tips 1 to 8 are sterile" may be refused of each): the first speaks for all of
 * them in one post. Empty for the others, which then say nothing.
 */
export function spokenTogether<K extends FindingKind>(
  view: Pick<View, 'state'>,
  finding: FindingOf<K>,
): readonly FindingOf<K>[] {
  const all = onSameEntry(view, finding).filter((each) => isOfKind(each, finding.kind));
  return all[0]?.key === finding.key ? all : [];
}

/** Findings of another kind on the same entry, for leaving out what they already say. */
export function foundWith<K extends FindingKind>(
  view: Pick<View, 'state'>,
  finding: Finding,
  kind: K,
): readonly FindingOf<K>[] {
  return onSameEntry(view, finding).filter((each) => isOfKind(each, kind));
}

function onSameEntry({ state }: Pick<View, 'state'>, { key, mark }: Finding): readonly Finding[] {
  const { findings } = state.history;
  // Findings of one entry stand side by side; what is spoken of is nearly always at the end.
  const here = findings.findLastIndex((each) => each.key === key);
  let first = here;
  while (first > 0 && findings[first - 1]?.mark.entry === mark.entry) first -= 1;
  let end = here;
  while (findings[end]?.mark.entry === mark.entry) end += 1;
  return findings.slice(first, end);
}

function isOfKind<K extends FindingKind>(finding: Finding, kind: K): finding is FindingOf<K> {
  return finding.kind === kind;
}
