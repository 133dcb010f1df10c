import type { Instant } from '../time/instant.ts';
import { daysBetween, toLocal } from '../time/zone.ts';

const DAYS = { mon: 'Mon', tue: 'Tue', wed: 'Wed', thu: 'Thu', fri: 'Fri', sat: 'Sat', sun: 'Sun' } as const;
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * A time as people at that site say it: "10:30" today, "yesterday 17:00", "tomorrow 08:30", "Mon 09:15" within six days
 * either way, else "3 Nov 14:05", with the year where it is another.
 */
export function clockWords(at: Instant, now: Instant, zone: string): string {
  const { time } = toLocal(at, zone);
  const day = dayWords(at, now, zone);
  return day === 'today' ? time : `${day} ${time}`;
}

/** The day alone: "today", "yesterday", "tomorrow", "Mon", "3 Nov", "3 Nov 2025". */
export function dayWords(at: Instant, now: Instant, zone: string): string {
  const there = toLocal(at, zone);
  const here = toLocal(now, zone);
  const days = daysBetween(here.date, there.date);
  if (days === 0) return 'today';
  if (days === -1) return 'yesterday';
  if (days === 1) return 'tomorrow';
  if (Math.abs(days) <= 6) return DAYS[there.weekday];
  const [year = '', month = '', date = ''] = there.date.split('-');
  const short = `${Number(date)} ${MONTHS[Number(month) - 1]}`;
  return here.date.startsWith(`${year}-`) ? short : `${short} ${year}`;
}
