import type { Archive } from './archive.ts';
import type { Finding } from './finding.ts';
import type { History, TipFitting, TipUse } from './history.ts';
import { Lists, type PackedLists } from './lists.ts';
import { LongList, type PackedList } from './long-list.ts';

/** Names in the archive. */
export const LOADS = 'loads';
export const NUMBERS = 'numbers';
export const INCIDENTS = 'incidents';

/** The lists of history, from a snapshot or empty. */
export function historyIn(archive: Archive, packed?: PackedHistory): History {
  return {
    uses: new Lists(archive, 'uses', packed?.uses),
    fittings: new Lists(archive, 'fittings', packed?.fittings),
    tipLoads: new Lists(archive, 'tipLoads', packed?.tipLoads),
    findings: new LongList<Finding>(archive, 'findings', ({ key }) => key, packed?.findings),
  };
}

/** As it is in a snapshot. */
export interface PackedHistory {
  readonly uses: PackedLists<TipUse>;
  readonly fittings: PackedLists<TipFitting>;
  readonly tipLoads: PackedLists<string>;
  readonly findings: PackedList<Finding>;
}

export function packHistory({ uses, fittings, tipLoads, findings }: History): PackedHistory {
  return {
    uses: uses.pack(),
    fittings: fittings.pack(),
    tipLoads: tipLoads.pack(),
    findings: findings.pack(),
  };
}
