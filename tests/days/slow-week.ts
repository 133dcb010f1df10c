import type { Entry } from '../../core/record/entry.ts';
import { DAY, type Instant } from '../../core/time/instant.ts';
import { clockAt, type SiteHours } from './scenes.ts';

/**
 * A slow second opinion on the weekly calibration: every Monday, or the next open day where the site is closed on it. From
 * that day's closing on a scanner that has not passed on that Monday or later is not ready. For sites whose hours no
 * note has changed.
 */
export function isOverdue(
  entries: readonly Entry[],
  scanner: string,
  site: SiteHours,
  now: Instant,
): boolean {
  const passes = entries.filter(({ fact }) => {
    return (
      (fact.kind === 'calibrated' && fact.scanner === scanner && fact.outcome === 'passed') ||
      (fact.kind === 'pass-confirmed' && fact.scanner === scanner)
    );
  });
  const last =
    passes
      .map(({ when }) => clockAt(site.zone, when).date)
      .toSorted()
      .at(-1) ?? '';
  const today = clockAt(site.zone, now);
  let monday: string | null = null;
  let overdue = false;
  for (let back = 21; back >= 0; back -= 1) {
    const day = dateBack(today.date, back);
    if (day.weekday === 'Mon') monday = day.date;
    if (monday === null || !isOpenDay(site, day)) continue;
    const shut = day.date < today.date || today.time >= site.shut;
    // The first open day from that Monday on.
    if (shut) overdue = last < monday;
    monday = null;
  }
  return overdue;
}

interface Day {
  readonly date: string;
  readonly weekday: string;
}

/** The calendar alone: dates of UTC have no clock changes. */
function dateBack(date: string, days: number): Day {
  const clock = clockAt('UTC', Date.parse(`${date}T12:00:00Z`) - days * DAY);
  return { date: clock.date, weekday: clock.weekday };
}

export function isOpenDay({ days, closed }: SiteHours, { date, weekday }: Day): boolean {
  const isClosed = closed.some((each) => {
    const [from = '', to = from] = each.split(' to ');
    return date >= from && date <= to;
  });
  return !isClosed && days.includes(weekday);
}
