import { lines } from '../../../answers/message.ts';
import { MINUTE } from '../../../time/instant.ts';
import type { Matter, Rule, View } from '../../matter.ts';
import { chatRoomFor } from '../../room-of.ts';
import { type DayTimes, daysAhead } from '../day-times.ts';
import { closeOut, wasOpenBy } from './close-out.ts';
import { closeOutItems, closeOutMessage } from './close-out-words.ts';

const RULE = 'close-out';

/**
 * A quarter of an hour before a site closes: what is still open there; nothing open, no post. One that could not be said
 * by closing is not said at all: nobody is there, and the next brief names what stands open.
 */
export const closeOutRule: Rule = (view) => view.practice.sites.flatMap(({ id }) => siteMatters(view, id));

function siteMatters(view: View, site: string): readonly Matter[] {
  const room = chatRoomFor(view, site);
  // The closing minute is still open.
  const [next] = daysAhead(view, site).filter((day) => {
    const said = view.said.saidAt(keyOf(site, day), 'first') !== null;
    return !said && view.now < day.shut + MINUTE && (day.closeOut > view.now || isOpenSince(view, site, day));
  });
  if (next === undefined || room === null) return [];
  const due = next.closeOut <= view.now ? closeOut(view, site) : null;
  return [
    {
      key: keyOf(site, next),
      rule: RULE,
      about: 'close-out',
      site,
      room,
      items: due === null ? [] : closeOutItems(due),
      stages: [{ stage: 'first', at: next.closeOut }],
      since: next.closeOut,
      group: RULE,
      line: due === null ? lines('The close-out of the day.') : closeOutMessage(view, due),
      leads: [],
    },
  ];
}

function isOpenSince(view: View, site: string, { closeOut: at }: DayTimes): boolean {
  return wasOpenBy(closeOut(view, site), at);
}

function keyOf(site: string, { date }: DayTimes): string {
  return `${RULE}|site:${site}|${date}`;
}
