import { HOUR } from '../../time/instant.ts';
import { addDays } from '../../time/local-date.ts';
import type { Booking, Reading, SiteState } from '../state.ts';
import { dateAt, siteOfRoom, sitesOfRoom } from '../where.ts';
import type { Step, Steps } from './step.ts';

/** Readings and days past that no rule looks back to. */
const READINGS_FOR = 72 * HOUR;
const READINGS_KEPT = 200;
const DAYS_KEPT = 35;
/** More scans than any site does in a day: a slip of the keyboard must not fill the record. */
const MOST_AT_ONCE = 200;

export const siteSteps = {
  booked: (step, said) => {
    const site = siteMeant(step, said.site);
    if (site === undefined) return;
    const times = [...(said.times ?? [])];
    const untimed = Math.min(MOST_AT_ONCE, Math.max(0, said.count - times.length));
    const added: Booking[] = times.map((time) => ({ mark: step.mark, time }));
    for (let n = 0; n < untimed; n += 1) added.push({ mark: step.mark, time: null });
    setBookings(step, site, said.day, [...(site.bookings.get(said.day) ?? []), ...added]);
  },
  cancelled: (step, said) => {
    const site = siteMeant(step, said.site);
    if (site === undefined) return;
    const left = [...(site.bookings.get(said.day) ?? [])];
    if (said.times !== undefined && said.times.length > 0) for (const time of said.times) takeOut(left, time);
    else if (said.count === undefined) left.length = 0;
    else for (let n = 0; n < said.count && left.length > 0; n += 1) takeOut(left, null);
    setBookings(step, site, said.day, left);
  },
  closed: (step, said) => {
    for (const site of sitesMeant(step, said.site))
      for (const day of said.days) {
        site.closedDates = withDay(site.closedDates, day, step.mark);
        site.hours = withDay(site.hours, day, null);
      }
  },
  hours: (step, said) => {
    for (const site of sitesMeant(step, said.site)) {
      const before = site.hours.get(said.day);
      const open = said.open ?? before?.open ?? null;
      const shut = said.shut ?? before?.shut ?? null;
      site.hours = withDay(site.hours, said.day, { mark: step.mark, open, shut });
      // Open after all.
      site.closedDates = withDay(site.closedDates, said.day, null);
      forget(step, site);
    }
  },
  shown: (step, said) => {
    const { person, topic } = said;
    step.state.shown.set(`${person}|${topic}`, { person, topic, mark: step.mark });
  },
} satisfies Steps;

/** Keeps the reading; `false` where the site is not the practice's. */
export function addReading(step: Step, id: string, reading: Reading): boolean {
  const site = step.state.sites.get(id);
  if (site === undefined) return false;
  site.lastNoted = step.mark;
  const since = reading.mark.at - READINGS_FOR;
  site.readings = [
    ...site.readings.filter((each) => each.mark.at >= since).slice(1 - READINGS_KEPT),
    reading,
  ];
  return true;
}

function siteMeant(step: Step, id: string | undefined): SiteState | undefined {
  const { state, entry } = step;
  const site = id ?? siteOfRoom(state.practice, entry.room) ?? sitesOfRoom(state.practice, entry.room)[0];
  const known = site === undefined ? undefined : state.sites.get(site);
  if (known !== undefined) known.lastNoted = step.mark;
  return known;
}

/** "We're closed on Friday", said with no site: every site that the chat room serves. */
function sitesMeant(step: Step, id: string | undefined): SiteState[] {
  const { state, entry } = step;
  const ids = id === undefined ? sitesOfRoom(state.practice, entry.room) : [id];
  return ids.flatMap((each) => {
    const site = state.sites.get(each);
    if (site === undefined) return [];
    site.lastNoted = step.mark;
    return [site];
  });
}

/** One booking at that time; none there, or no time said: one with no time; else the latest. */
function takeOut(bookings: Booking[], time: string | null): void {
  let index = time === null ? -1 : bookings.findIndex((each) => each.time === time);
  if (index < 0) index = bookings.findLastIndex((each) => each.time === null);
  if (index < 0 && time === null) index = bookings.length - 1;
  if (index >= 0) bookings.splice(index, 1);
}

function setBookings(step: Step, site: SiteState, day: string, bookings: Booking[]): void {
  const sorted = bookings.sort((a, b) => (a.time ?? '99').localeCompare(b.time ?? '99', 'en'));
  site.bookings = withDay(site.bookings, day, sorted.length === 0 ? null : sorted);
  forget(step, site);
}

function forget(step: Step, site: SiteState): void {
  const oldest = addDays(dateAt(step.state.practice, site.id, step.mark.at), -DAYS_KEPT);
  site.bookings = since(site.bookings, oldest);
  site.hours = since(site.hours, oldest);
  site.closedDates = since(site.closedDates, oldest);
}

/** Another map: what a field of the record holds is replaced, never changed. `null` takes the day out. */
function withDay<T>(days: ReadonlyMap<string, T>, day: string, value: T | null): ReadonlyMap<string, T> {
  const changed = new Map(days);
  if (value === null) changed.delete(day);
  else changed.set(day, value);
  return changed;
}

function since<T>(days: ReadonlyMap<string, T>, oldest: string): ReadonlyMap<string, T> {
  const kept = [...days].filter(([day]) => day >= oldest);
  return kept.length === days.size ? days : new Map(kept);
}
