import type { View } from '../../matter.ts';
import { TIP_STANDINGS, type TipStanding, tipStanding } from '../../tips/tip-standing.ts';

export type TipsShown = Exclude<TipStanding, 'retired'>;

/** The site's tips by what they are now; retired ones left out, groups with none too. One used and still on counts as used. */
export function tipsByState(
  view: View,
  site: string,
): readonly { readonly state: TipsShown; readonly tips: readonly string[] }[] {
  const groups = new Map<TipStanding, string[]>();
  for (const tip of view.state.tips.values()) {
    if (tip.site !== site && tip.departed?.to !== site) continue;
    const standing = tipStanding(view, tip);
    const state = standing === 'fitted' && tip.state === 'used' ? 'used' : standing;
    groups.set(state, [...(groups.get(state) ?? []), tip.id]);
  }
  return TIP_STANDINGS.flatMap((state) => {
    const tips = groups.get(state);
    return tips === undefined || state === 'retired' ? [] : [{ state, tips }];
  });
}
