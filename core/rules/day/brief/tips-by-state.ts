import type { TipShown } from '../../../record/state.ts';
import type { View } from '../../matter.ts';
import { sterileStock } from '../../tips/sterile-stock.ts';

/** `too-old`: sterile, but past how long a stored tip is good, or its maker's limit. `away`: on its way from or to the site. */
export type TipsShown = Exclude<TipShown, 'retired'> | 'too-old' | 'away';

/** In the order in which they are told: the stock, then the way round, then what needs somebody. */
const ORDER: readonly TipsShown[] = [
  'sterile',
  'too-old',
  'fitted',
  'used',
  'washed',
  'bagged',
  'sent',
  'in-load',
  'away',
  'held',
  'missing',
  'unknown',
];

/** The site's tips by what they are now; retired ones left out, groups with none too. */
export function tipsByState(
  view: View,
  site: string,
): readonly { readonly state: TipsShown; readonly tips: readonly string[] }[] {
  const good = new Set(sterileStock(view, site).map(({ id }) => id));
  const groups = new Map<TipsShown, string[]>();
  for (const tip of view.state.tips.values()) {
    if (tip.state === 'retired' || (tip.site !== site && tip.departed?.to !== site)) continue;
    const old = tip.state === 'sterile' && !good.has(tip.id);
    const state = tip.departed !== null ? 'away' : old ? 'too-old' : tip.state;
    groups.set(state, [...(groups.get(state) ?? []), tip.id]);
  }
  return ORDER.flatMap((state) => {
    const tips = groups.get(state);
    return tips === undefined ? [] : [{ state, tips }];
  });
}
