import type { Finding, FindingKind, FindingOf } from '../../record/finding.ts';
import { findingsOn } from '../../record/findings.ts';
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

function onSameEntry({ state }: Pick<View, 'state'>, { mark }: Finding): readonly Finding[] {
  return findingsOn(state, mark.entry);
}

function isOfKind<K extends FindingKind>(finding: Finding, kind: K): finding is FindingOf<K> {
  return finding.kind === kind;
}
