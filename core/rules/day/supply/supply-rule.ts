import { ruleValue } from '../../../defaults/rule-value.ts';
import type { Site } from '../../../practice/practice.ts';
import type { Instant } from '../../../time/instant.ts';
import { type LocalDate, minutesOf, timeOfMinutes, toLocal } from '../../../time/zone.ts';
import { hasCome, today } from '../../clock.ts';
import { eachSite } from '../../each.ts';
import type { Matter, View } from '../../matter.ts';
import { isQuietNow, whenOpenNow } from '../../quiet.ts';
import { chatRoomFor } from '../../room-of.ts';
import { nextBrief } from '../brief/next-brief.ts';
import { daysAhead } from '../day-times.ts';
import { bookingsOn } from './bookings-on.ts';
import { type SiteSupply, supplyFor } from './supply-for.ts';
import { shortWords } from './supply-words.ts';

const RULE = 'supply';

/**
 * Today or the next open day is short of tips: said at once while the site is open, once for each site, date and shortage.
 * While it is shut the next brief says it. Before the tips have been counted, only what is short whatever they are.
 */
export const supplyRule = eachSite(siteMatters);

function siteMatters(view: View, site: Site): readonly Matter[] {
  if ((view.state.sites.get(site.id)?.bookings.size ?? 0) === 0) return [];
  const room = chatRoomFor(view, site.id);
  if (room === null) return [];
  const days = daysAhead(view, site.id).filter(({ shut }) => !hasCome(view, shut + 1));
  return days.slice(0, 2).flatMap(({ date }) => {
    const supply = supplyFor(view, site.id, date);
    if (supply?.short == null || !supply.certain) return [];
    return [matterOf(view, site, supply, supply.short.at, room)];
  });
}

function matterOf(view: View, site: Site, supply: SiteSupply, from: Instant, room: string): Matter {
  const key = keyOf(view, site, supply.date, from);
  const brief = isQuietNow(view, site.id) ? nextBrief(view, site.id) : null;
  const inBrief = brief !== null && brief.at <= whenOpenNow(view, site.id);
  return {
    key,
    rule: RULE,
    about: 'supply',
    site: site.id,
    room,
    get items() {
      return supply.outlook.send.flatMap(({ tips }) => tips.map((id): `tip:${string}` => `tip:${id}`));
    },
    stages: [
      {
        stage: 'first',
        at: view.said.saidAt(key, 'first') ?? (inBrief ? brief.at : whenOpenNow(view, site.id)),
      },
    ],
    get since() {
      return view.now;
    },
    group: inBrief ? 'brief' : `${RULE}@${site.id}|${supply.date}`,
    get line() {
      return [{ line: shortWords(view, supply) ?? [] }];
    },
    leads: [],
  };
}

/**
 * A shortage is known by the scan that it begins at. Once told, it is the same while it moves about (tips are used, time
 * goes by, a tip comes back), unless a scan was booked since then, or today's begins an hour or more before the one told.
 */
function keyOf(view: View, site: Site, date: LocalDate, from: Instant): string {
  const shortage = `${RULE}|site:${site.id}|${date}`;
  const keyAt = (minute: number) => `${shortage}|${timeOfMinutes(minute)}`;
  const begins = minutesOf(toLocal(from, site.timezone).time);
  const told = lastTold(view, shortage);
  if (told === null) return keyAt(begins);
  const booked = bookingsOn(view, site, date).some(({ noted }) => noted > told.said);
  const isToday = date === today(view, site.timezone);
  const earlier = ruleValue(view.practice, 'shortageEarlierMinutes', { site: site.id });
  const isEarlier = isToday && begins <= told.minute - earlier;
  return booked || isEarlier ? keyAt(begins) : keyAt(told.minute);
}

/** The shortage of that site and date that was told last, by the minute of the day at which it was to begin. */
function lastTold(
  { said }: View,
  shortage: string,
): { readonly minute: number; readonly said: Instant } | null {
  let last: { readonly minute: number; readonly said: Instant } | null = null;
  for (const key of said.saidUnder(shortage)) {
    const minute = minutesOf(key.slice(shortage.length + 1));
    const at = said.saidAt(key, 'first') ?? 0;
    const isLater = last === null || at > last.said || (at === last.said && minute > last.minute);
    if (isLater) last = { minute, said: at };
  }
  return last;
}
