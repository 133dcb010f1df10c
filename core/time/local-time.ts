/** A time on a site's own clock, `08:30`. Sorts as text. */
export type LocalTime = string;

/** True for `00:00` to `23:59`. */
export function isLocalTime(text: string): boolean {
  return /^(?:[01]\d|2[0-3]):[0-5]\d$/.test(text);
}

/** Minutes after midnight on the wall clock, 0 to 1439. Throws RangeError on a text that is not a time. */
export function minutesOf(time: LocalTime): number {
  if (!isLocalTime(time)) throw new RangeError(`not a time of day: ${time}`);
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
}

/** The time that many whole minutes after midnight; counts on past midnight, so 1500 is `01:00`. */
export function timeOfMinutes(minutes: number): LocalTime {
  const within = ((Math.floor(minutes) % 1440) + 1440) % 1440;
  const hours = Math.floor(within / 60);
  return `${String(hours).padStart(2, '0')}:${String(within % 60).padStart(2, '0')}`;
}
