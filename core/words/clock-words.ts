import type { Instant } from '../time/instant.ts';
import { daysBetween, type LocalDate, toInstant, toLocal } from '../time/zone.ts';

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
  return Math.abs(days) <= 6 ? DAYS[there.weekday] : dateWords(there.date, here.date);
}

/** A date read back so that a slip is seen: "today", "tomorrow", else with its weekday, "Fri 27 Nov". */
export function dateReadBack(date: LocalDate, now: Instant, zone: string): string {
  const noon = toInstant(date, '12:00', zone);
  const words = dayWords(noon, now, zone);
  if (words === 'today' || words === 'tomorrow' || words === 'yesterday') return words;
  return `${DAYS[toLocal(noon, zone).weekday]} ${dateWords(date, toLocal(now, zone).date)}`;
}

/** "3 Nov"; with its year where that is another than today's. */
function dateWords(date: LocalDate, today: LocalDate): string {
  const [year = '', month = '', day = ''] = date.split('-');
  const short = `${Number(day)} ${MONTHS[Number(month) - 1]}`;
  return today.startsWith(`${year}-`) ? short : `${short} ${year}`;
}
