import type { Practice } from '../../practice/practice.ts';
import type { TipState } from '../../record/state.ts';
import { zoneOf } from '../../record/where.ts';
import type { Instant } from '../../time/instant.ts';
import { addDays, isLocalDate, type LocalDate, localDateOf } from '../../time/zone.ts';
import { ruleValue } from '../defaults/rule-value.ts';

/**
 * The last local date on which a sterile tip is still good, by the site's own calendar; `null` where it is not on
 * record as sterile. Wrapped: the day so many months on (`wrappedGoodMonths`); not wrapped: so many days, the day of
 * its load counted (`unwrappedGoodDays`). `wrapped: noted` takes a tip that no note calls bagged as unwrapped.
 */
export function goodUntil(practice: Practice, tip: TipState): LocalDate | null {
  if (tip.sterile === null) return null;
  const site = tip.site ?? undefined;
  // Where the time said is a stretch its start counts: never longer than the storage allowed.
  const from = localDateOf(tip.sterile.mark.earliest, zoneOf(practice, tip.site));
  const wrapped = ruleValue(practice, 'wrapped', { site }) === 'always' || tip.sterile.bagged;
  if (wrapped) return monthsOn(from, ruleValue(practice, 'wrappedGoodMonths', { site }));
  return addDays(from, ruleValue(practice, 'unwrappedGoodDays', { site }) - 1);
}

/** True from the day after `goodUntil`; false where the tip is not on record as sterile. */
export function isTooOld(practice: Practice, tip: TipState, now: Instant): boolean {
  const last = goodUntil(practice, tip);
  return last !== null && localDateOf(now, zoneOf(practice, tip.site)) > last;
}

/** The same day so many months on; the month's last day where it has no such day (never longer than is allowed). */
function monthsOn(date: LocalDate, months: number): LocalDate {
  const month = Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)) - 1 + months;
  const prefix = `${String(Math.floor(month / 12)).padStart(4, '0')}-${String((month % 12) + 1).padStart(2, '0')}`;
  for (let day = Number(date.slice(8)); day > 28; day--) {
    const candidate = `${prefix}-${day}`;
    if (isLocalDate(candidate)) return candidate;
  }
  return `${prefix}-${date.slice(8) > '28' ? '28' : date.slice(8)}`;
}
