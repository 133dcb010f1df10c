import type { Entry } from '../../record/entry.ts';
import type { Finding, FindingKind } from '../../record/finding.ts';

/** How the record took a note: what of it may be read back as done, and whether a thumb may stand under it. */
export interface Taken {
  readonly stands: readonly Entry[];
  readonly plain: boolean;
}

/** Kept as said, but it must not be gone on with: the warning tells of it, and nothing may look like leave. */
const STOPPED = new Set<FindingKind>(['unsafe-tip', 'same-tip-again', 'not-wiped', 'autoclave-held']);

/** Nothing was recorded: the post that says so is the whole answer. */
const NOT_KEPT = new Set<FindingKind>(['refused', 'sterile-refused', 'load-ambiguous', 'unknown-item']);

/** What stands of a note's entries, by what the record found on them, said now or before. */
export function takenOf(findings: readonly Finding[], entries: readonly Entry[]): Taken {
  const ids = new Set(entries.map(({ id }) => id));
  const on = Map.groupBy(
    findings.filter(({ mark }) => ids.has(mark.entry)),
    ({ mark }) => mark.entry,
  );
  const stands = entries.flatMap((entry) => standing(entry, on.get(entry.id) ?? []));
  const plain = [...on.values()].flat().every((finding) => !stops(finding) && !isNotKept(finding));
  return { stands, plain };
}

/** The entry without the items that were refused; none where it was warned of or nothing of it is kept. */
function standing(entry: Entry, found: readonly Finding[]): readonly Entry[] {
  if (found.some(stops)) return [];
  const { fact } = entry;
  if (fact.kind !== 'released') return found.some(isNotKept) ? [] : [entry];
  const refused = new Set(found.filter(isNotKept).flatMap(({ items }) => items));
  const items = fact.items.filter((item) => !refused.has(item));
  return items.length === 0 ? [] : [{ ...entry, fact: { ...fact, items } }];
}

function stops(finding: Finding): boolean {
  // What nothing is known of is warned of once, until the tips are counted: after that it is a note like any other.
  if (finding.kind === 'unsafe-tip') return !(finding.dayOne && finding.again);
  return STOPPED.has(finding.kind);
}

function isNotKept(finding: Finding): boolean {
  if (finding.kind === 'autoclave-unsaid') return finding.load === null;
  return NOT_KEPT.has(finding.kind);
}
