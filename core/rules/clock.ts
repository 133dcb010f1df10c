import { DAY, type Instant } from '../time/instant.ts';
import { offsetAt } from '../time/offsets.ts';
import { addDays, type LocalDate, localDateOf, startOfDay } from '../time/zone.ts';
import type { Moment } from './moment.ts';
import { watchAt } from './watch/shared.ts';

// Rules look at the clock through these two: so it is known until when what they say holds, and they need not be asked at
// every look. A rule that takes `view.now` itself is right too, and asked anew at every instant.

type Clock = Pick<Moment, 'now'>;

/** Whether that instant has come. */
export function hasCome(moment: Clock, at: Instant): boolean {
  const watch = watchAt(moment);
  if (watch === null) return moment.now >= at;
  const come = watch.now >= at;
  if (come) watch.grounds?.within(at, Number.POSITIVE_INFINITY);
  else watch.grounds?.within(Number.NEGATIVE_INFINITY, at);
  return come;
}

/** The date on that zone's calendar. */
export function today(moment: Clock, zone: string): LocalDate {
  const watch = watchAt(moment);
  if (watch === null) return localDateOf(moment.now, zone);
  const date = localDateOf(watch.now, zone);
  if (watch.grounds !== null) {
    const [from, until] = stretchOf(date, zone) ?? [watch.now, watch.now + 1];
    watch.grounds.within(from, until);
  }
  return date;
}

type Stretch = readonly [from: Instant, until: Instant];

/** The last day that was asked for in each zone. */
const stretches = new Map<string, { readonly date: LocalDate; readonly stretch: Stretch | null }>();

/** From when until when it is that date there; `null` where the clocks change on it: then each instant is by itself. */
function stretchOf(date: LocalDate, zone: string): Stretch | null {
  const known = stretches.get(zone);
  if (known?.date === date) return known.stretch;
  const from = startOfDay(date, zone);
  const until = startOfDay(addDays(date, 1), zone);
  const isPlain = until - from === DAY && offsetAt(from, zone) === offsetAt(until, zone);
  const stretch: Stretch | null = isPlain ? [from, until] : null;
  stretches.set(zone, { date, stretch });
  return stretch;
}
