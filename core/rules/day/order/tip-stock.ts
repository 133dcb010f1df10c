import { ruleValue } from '../../../defaults/rule-value.ts';
import { median } from '../../../science/median.ts';
import { type Reorder, reorder } from '../../../supply/reorder.ts';
import { isOpenDay } from '../../../time/opening.ts';
import { addDays, type LocalDate, localDateOf } from '../../../time/zone.ts';
import { today as todayIn } from '../../clock.ts';
import type { View } from '../../matter.ts';
import { changesOf } from '../../quiet.ts';

/** When to order and how many, with the figures behind it. */
export interface OrderNow extends Reorder {
  readonly leadDays: number;
}

/** The practice's tips where they have to be ordered now; `null` while there is more than the reorder point, or none is known. */
export function orderNow(view: View): OrderNow | null {
  const stock = tipStock(view);
  return stock === null || stock.cyclesLeft > stock.reorderPoint ? null : stock;
}

/**
 * The practice's tips as a stock of usable cycles: `null` while no limit is known to count against, or with under 5 open
 * days of use on record. Tips move between sites, so it is one stock.
 */
export function tipStock(view: View): OrderNow | null {
  const limited = [...view.state.tips.values()].filter(({ limit }) => limit !== null);
  const cyclesPerTip = median(limited.map(({ limit }) => limit ?? 0)) ?? 0;
  if (!(cyclesPerTip > 0)) return null;
  const leadDays = openDaysAhead(view, ruleValue(view.practice, 'reorderLeadDays'));
  const needed = reorder({
    cyclesLeft: limited
      .filter(({ retired, missing }) => retired === null && missing === null)
      .map(({ cycles, limit }) => (limit ?? 0) - cycles),
    usesPerDay: usesPerOpenDay(view),
    leadDays,
    cyclesPerTip,
    coverDays: ruleValue(view.practice, 'reorderCoverDays'),
    leastDays: ruleValue(view.practice, 'reorderLeastDays'),
    serviceLevel: ruleValue(view.practice, 'reorderServicePercent') / 100,
  });
  return needed === undefined ? null : { ...needed, leadDays };
}

/** Tips with a limit used on each open day before today, from the first use on record in that time. */
function usesPerOpenDay(view: View): readonly number[] {
  const zone = view.practice.timezone;
  const today = todayIn(view, zone);
  const from = addDays(today, -ruleValue(view.practice, 'reorderUseDays'));
  const uses = new Map<LocalDate, number>();
  let first = today;
  for (const [tip, list] of view.state.history.uses) {
    if ((view.state.tips.get(tip)?.limit ?? null) === null) continue;
    for (const { mark } of list.newestFirst()) {
      const date = localDateOf(mark.at, zone);
      if (date < from) break;
      uses.set(date, (uses.get(date) ?? 0) + 1);
      if (date < first) first = date;
    }
  }
  const days: number[] = [];
  for (let date = first; date < today; date = addDays(date, 1))
    if (uses.has(date) || isWorkday(view, date)) days.push(uses.get(date) ?? 0);
  return days;
}

function openDaysAhead(view: View, days: number): number {
  const today = todayIn(view, view.practice.timezone);
  let open = 0;
  for (let ahead = 1; ahead <= Math.ceil(days); ahead++) if (isWorkday(view, addDays(today, ahead))) open++;
  return open;
}

function isWorkday({ practice, state }: View, date: LocalDate): boolean {
  return practice.sites.some((site) => isOpenDay(site, date, changesOf(state, site.id)));
}
