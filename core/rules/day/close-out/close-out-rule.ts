import { MINUTE } from '../../../time/instant.ts';
import { lines } from '../../../words/message.ts';
import { hasCome } from '../../clock.ts';
import { eachSite } from '../../each.ts';
import type { Matter, View } from '../../matter.ts';
import { chatRoomFor } from '../../room-of.ts';
import { type DayTimes, daysAhead } from '../day-times.ts';
import { closeOut, wasOpenBy } from './close-out.ts';
import { type CloseOutPart, closeOutParts } from './close-out-parts.ts';
import { closeOutItems, closeOutMessage } from './close-out-words.ts';

const RULE = 'close-out';

/**
 * A quarter of an hour before a site closes: what is still open there; nothing open, no post. One that could not be said
 * by closing is not said at all: nobody is there, and the next brief names what stands open.
 */
export const closeOutRule = eachSite((view, { id }) => siteMatters(view, id));

function siteMatters(view: View, site: string): readonly Matter[] {
  const room = chatRoomFor(view, site);
  // The closing minute is still open.
  const [next] = daysAhead(view, site).filter((day) => {
    const said = view.said.saidAt(keyOf(site, day), 'first') !== null;
    if (said || hasCome(view, day.shut + MINUTE)) return false;
    return !hasCome(view, day.closeOut) || isOpenSince(view, site, day);
  });
  if (room === null) return [];
  const said = saidParts(view, site, room);
  if (next === undefined) return said;
  const due = hasCome(view, next.closeOut) ? closeOut(view, site) : null;
  const parts = due === null ? [] : closeOutParts(due).map((part) => partMatter(site, room, next, part));
  return [
    ...said,
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
      get line() {
        return due === null ? lines('The close-out of the day.') : closeOutMessage(view, due);
      },
      leads: [],
    },
    ...parts,
  ];
}

/** What today's close-out named and is still open: it can be ticked off until the day is over. */
function saidParts(view: View, site: string, room: string): readonly Matter[] {
  const [day] = daysAhead(view, site);
  if (day === undefined || view.said.saidAt(keyOf(site, day), 'first') === null) return [];
  return closeOutParts(closeOut(view, site))
    .filter((part) => view.said.saidAt(partKey(site, day, part), 'first') !== null)
    .map((part) => ({
      ...partMatter(site, room, day, part),
      // Asked for once more ("later") it has to speak for itself.
      get line() {
        return closeOutMessage(view, part.alone);
      },
    }));
}

/** It has no words of its own in the list that it stands in. */
function partMatter(site: string, room: string, day: DayTimes, part: CloseOutPart): Matter {
  const { items, tick } = part;
  return {
    key: partKey(site, day, part),
    rule: RULE,
    about: RULE,
    site,
    room,
    items,
    stages: [{ stage: 'first', at: day.closeOut }],
    since: day.closeOut,
    group: RULE,
    line: [],
    leads: [],
    ...(tick === undefined ? {} : { tick }),
  };
}

function partKey(site: string, day: DayTimes, { what }: CloseOutPart): string {
  return `${keyOf(site, day)}|${what}`;
}

function isOpenSince(view: View, site: string, { closeOut: at }: DayTimes): boolean {
  return wasOpenBy(closeOut(view, site), at);
}

function keyOf(site: string, { date }: DayTimes): string {
  return `${RULE}|site:${site}|${date}`;
}
