import type { Site } from '../../../practice/practice.ts';
import type { Instant } from '../../../time/instant.ts';
import { type LocalDate, toLocal } from '../../../time/zone.ts';
import type { Matter, Rule, View } from '../../matter.ts';
import { whenOpen } from '../../quiet.ts';
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
export const supplyRule: Rule = (view) => view.practice.sites.flatMap((site) => siteMatters(view, site));

function siteMatters(view: View, site: Site): readonly Matter[] {
  if ((view.state.sites.get(site.id)?.bookings.size ?? 0) === 0) return [];
  const room = chatRoomFor(view, site.id);
  if (room === null) return [];
  const days = daysAhead(view, site.id).filter(({ shut }) => shut >= view.now);
  return days.slice(0, 2).flatMap(({ date }) => {
    const supply = supplyFor(view, site.id, date);
    if (supply?.short == null || !supply.certain) return [];
    return [matterOf(view, site, supply, supply.short.at, room)];
  });
}

function matterOf(view: View, site: Site, supply: SiteSupply, from: Instant, room: string): Matter {
  const key = keyOf(view, site, supply.date, from);
  const open = whenOpen(view.practice, view.state, site.id, view.now);
  const brief = open > view.now ? nextBrief(view, site.id) : null;
  const inBrief = brief !== null && brief.at <= open;
  return {
    key,
    rule: RULE,
    about: 'supply',
    site: site.id,
    room,
    items: supply.outlook.send.flatMap(({ tips }) => tips.map((id): `tip:${string}` => `tip:${id}`)),
    stages: [{ stage: 'first', at: view.said.saidAt(key, 'first') ?? (inBrief ? brief.at : open) }],
    since: view.now,
    group: inBrief ? 'brief' : `${RULE}@${site.id}|${supply.date}`,
    line: [{ line: shortWords(view, supply) ?? [] }],
    leads: [],
  };
}

/**
 * A shortage is known by the scan that it begins at. One that has only moved later (time went by, a tip came back) is the
 * one already told, unless a scan booked since then is the cause.
 */
function keyOf(view: View, site: Site, date: LocalDate, from: Instant): string {
  const scans = bookingsOn(view, site, date);
  const keyAt = (at: Instant) => `${RULE}|site:${site.id}|${date}|${toLocal(at, site.timezone).time}`;
  const told = scans
    .filter(({ at }) => at <= from)
    .map(({ at }) => ({ key: keyAt(at), said: view.said.saidAt(keyAt(at), 'first') }))
    .findLast(({ said }) => said !== null);
  if (told?.said == null) return keyAt(from);
  const { said } = told;
  return scans.some(({ at, noted }) => at === from && noted > said) ? keyAt(from) : told.key;
}
