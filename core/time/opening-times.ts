import type { OpenSpan, Site } from '../practice/practice.ts';
import { addDays, type LocalDate, weekdayOf } from './local-date.ts';
import type { LocalTime } from './local-time.ts';

/**
 * What notes changed of a site's hours. The record's maps fit as they are. Where a date is in both, the hours hold: the
 * record keeps whichever of the two was noted later.
 */
export interface NotedChanges {
  /** Local dates that a note closed. */
  readonly closed: { has(date: LocalDate): boolean };
  /** Opening or closing time of one date as a note gave it; what it left out is absent or `null`. */
  readonly hours: { get(date: LocalDate): NotedHours | undefined };
}

export interface NotedHours {
  readonly open?: LocalTime | null;
  readonly shut?: LocalTime | null;
}

export const NO_CHANGES: NotedChanges = {
  closed: new Set<LocalDate>(),
  hours: new Map<LocalDate, NotedHours>(),
};

/** Local opening and closing times of a date, breaks left out, in order; empty where the site is closed. */
export function openTimes(
  site: Site,
  date: LocalDate,
  changes: NotedChanges = NO_CHANGES,
): readonly OpenSpan[] {
  const noted = changes.hours.get(date);
  const closed = site.closed.includes(date) || changes.closed.has(date);
  if (noted !== undefined)
    return shifted(closed ? [] : site.hours[weekdayOf(date)], noted, () => usual(site, date));
  return closed ? [] : site.hours[weekdayOf(date)];
}

/**
 * Both ends said: that is the day. One end said: the day begins or ends then instead, breaks kept; a closed day takes
 * its other end from the hours that are usual there.
 */
function shifted(
  spans: readonly OpenSpan[],
  { open, shut }: NotedHours,
  usualDay: () => OpenSpan | null,
): readonly OpenSpan[] {
  if (open && shut) return open < shut ? [{ open, shut }] : [];
  const day = spans.length > 0 ? spans : [usualDay()].filter((span) => span !== null);
  if (open) {
    const [first, ...rest] = day.filter((span) => span.shut > open);
    return first === undefined ? [] : [{ open, shut: first.shut }, ...rest];
  }
  if (shut) {
    const kept = day.filter((span) => span.open < shut);
    const last = kept.at(-1);
    return last === undefined ? [] : [...kept.slice(0, -1), { open: last.open, shut }];
  }
  return spans;
}

/** First opening to last closing of that weekday, else of the nearest weekday before it that has hours. */
function usual(site: Site, date: LocalDate): OpenSpan | null {
  for (let back = 0; back < 7; back++) {
    const spans = site.hours[weekdayOf(addDays(date, -back))];
    const first = spans[0];
    const last = spans.at(-1);
    if (first !== undefined && last !== undefined) return { open: first.open, shut: last.shut };
  }
  return null;
}
