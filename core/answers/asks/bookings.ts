import { siteOf } from '../../practice/look-up.ts';
import type { Site } from '../../practice/practice.ts';
import type { AskOf } from '../../reading/ask.ts';
import { bookingsOn } from '../../rules/day/supply/bookings-on.ts';
import { bookingsToCome } from '../../rules/day/supply/bookings-to-come.ts';
import { type LocalDate, localDateOf, startOfDay, toLocal } from '../../time/zone.ts';
import { dateReadBack } from '../../words/clock-words.ts';
import type { Line, Message } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { siteOfEntry } from '../record-rows.ts';
import { sitesOfAsk } from '../site-of-ask.ts';

/** "What's booked tomorrow?": how many scans are booked and at what times; today also how many are still to come, and how many were done. */
export function answerBookings(ask: AskOf<'bookings'>, view: AskView): Answer {
  const sites = sitesOfAsk(view.practice, ask.site, view.room).flatMap(
    (id) => siteOf(view.practice, id) ?? [],
  );
  const points = sites.map((site) => bookedLine(site, ask.day, view));
  const message: Message = points.length === 1 ? points.map((line) => ({ line })) : [{ points }];
  return { about: 'answer', message, items: [] };
}

function bookedLine(site: Site, day: LocalDate | undefined, view: AskView): Line {
  const today = localDateOf(view.now, site.timezone);
  const date = day ?? today;
  const booked = bookingsOn(view, site, date);
  const at = view.practice.sites.length > 1 ? ` at ${site.name}` : '';
  const words = dateReadBack(date, view.now, site.timezone);
  const when = words.includes(' ') ? `on ${words}` : words;
  const done = date === today ? doneWords(site, date, view) : '';
  if (booked.length === 0) return [{ strong: 'No scan booked' }, `${at} ${when}.${done}`];
  const timed = booked.filter(({ spread }) => !spread).map((each) => toLocal(each.at, site.timezone).time);
  const untimed = booked.length - timed.length;
  const rest = untimed === 0 ? '' : timed.length === 0 ? ', no times noted' : ` and ${untimed} with no time`;
  const times = timed.length === 0 ? rest : `: ${timed.join(', ')}${rest}`;
  const toCome = date === today ? `${toComeWords(site, date, booked.length, view)}.` : '.';
  return [{ strong: `${scans(booked.length)} booked` }, `${at} ${when}${times}${toCome}${done}`];
}

/** "; 2 still to come, next 14:00" of today's. */
function toComeWords(site: Site, date: LocalDate, count: number, view: AskView): string {
  const left = bookingsToCome(view, site, date);
  if (left.length === 0) return '; none still to come';
  const next = left.find(({ spread }) => !spread);
  const at = next === undefined ? '' : `, next ${toLocal(next.at, site.timezone).time}`;
  return left.length === count ? '' : `; ${left.length} still to come${at}`;
}

/** " 3 scans done so far.": those that a note ended. */
function doneWords(site: Site, date: LocalDate, { practice, entries, now }: AskView): string {
  let done = 0;
  for (const entry of entries.between(startOfDay(date, site.timezone), now + 1))
    if (entry.fact.kind === 'scan-finished' && siteOfEntry(practice, entry) === site.id) done += 1;
  return done === 0 ? '' : ` ${scans(done)} done so far.`;
}

function scans(count: number): string {
  return count === 1 ? '1 scan' : `${count} scans`;
}
