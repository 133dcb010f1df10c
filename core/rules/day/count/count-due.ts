import { ruleValue } from '../../../defaults/rule-value.ts';
import type { State } from '../../../record/state.ts';
import { zoneOf } from '../../../record/where.ts';
import { addMonths } from '../../../time/local-date.ts';
import { type LocalDate, localDateOf } from '../../../time/zone.ts';
import type { View } from '../../matter.ts';

/** Whether a site's tips want counting: none noted yet, or the last one a quarter ago. */
export interface CountDue {
  readonly why: 'never' | 'quarter';
  /** Local date from which it is due; `null`: from the start. */
  readonly from: LocalDate | null;
}

/** `null` where the site has no tips, or its count is not due on that date. */
export function countDue(view: View, site: string, date: LocalDate): CountDue | null {
  if (tipsOf(view.state, site).length === 0) return null;
  const next = nextCount(view, site);
  if (next === null) return { why: 'never', from: null };
  return next <= date ? { why: 'quarter', from: next } : null;
}

/** Local date of the next count; `null`: there has been none. */
export function nextCount({ practice, state }: View, site: string): LocalDate | null {
  const stocktake = state.sites.get(site)?.stocktake ?? null;
  if (stocktake === null) return null;
  const counted = localDateOf(stocktake.at, zoneOf(practice, site));
  return addMonths(counted, ruleValue(practice, 'stocktakeEveryMonths', { site }));
}

/** The site's tips that are in use, in the file's order. */
export function tipsOf(state: State, site: string): readonly string[] {
  return [...state.tips.values()]
    .filter((tip) => tip.site === site && tip.retired === null)
    .map(({ id }) => id);
}

/** Those of which no state is known. */
export function unknownTips(state: State, site: string): readonly string[] {
  return [...state.tips.values()]
    .filter((tip) => tip.site === site && tip.state === 'unknown')
    .map(({ id }) => id);
}
