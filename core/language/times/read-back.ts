import type { Instant } from '../../time/instant.ts';
import { addDays, toLocal } from '../../time/zone.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/**
 * A time as it is read back to a person: "10:05" on the day of `at`, "yesterday 17:00", "tomorrow 09:00", else
 * "Mon 14 Nov 09:00", with the year where it is another. Both instants in milliseconds; local to `zone`.
 */
export function readBack(instant: Instant, at: Instant, zone: string): string {
  const now = toLocal(at, zone);
  const then = toLocal(instant, zone);
  if (then.date === now.date) return then.time;
  if (then.date === addDays(now.date, -1)) return `yesterday ${then.time}`;
  if (then.date === addDays(now.date, 1)) return `tomorrow ${then.time}`;
  return `${readBackDate(then.date, now.date)} ${then.time}`;
}

/** A local date as it is read back: "Mon 14 Nov", with the year where it is not the year of `today`. */
export function readBackDate(date: string, today: string): string {
  const weekday = toLocal(Date.parse(`${date}T12:00:00Z`), 'UTC').weekday;
  const name = `${weekday.charAt(0).toUpperCase()}${weekday.slice(1)}`;
  const month = MONTHS[Number(date.slice(5, 7)) - 1] ?? '';
  const plain = `${name} ${Number(date.slice(8, 10))} ${month}`;
  return date.slice(0, 4) === today.slice(0, 4) ? plain : `${plain} ${date.slice(0, 4)}`;
}
