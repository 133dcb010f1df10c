import type { Item } from '../../reading/slots.ts';
import type { Decision } from '../../record/decision.ts';
import type { LoadFailed, SameTipAgain, SporePositive, UnsafeTip } from '../../record/finding.ts';
import { toIso } from '../../time/instant.ts';
import type { View } from '../matter.ts';

/** The incident that an unsafe tip, a failed load with scans concerned, or a positive spore test opens: for a senior to close. */
export function openedBy(
  { key, kind, mark }: UnsafeTip | SameTipAgain | LoadFailed | SporePositive,
  items: readonly Item[],
  { now }: View,
): Decision {
  return {
    kind: 'incident-opened',
    when: toIso(now),
    incident: key,
    of: mark.entry,
    items: [...items],
    sort: kind,
  };
}
