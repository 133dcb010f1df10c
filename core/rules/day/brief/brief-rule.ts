import type { Item } from '../../../reading/slots.ts';
import { lines, type Message } from '../../../words/message.ts';
import type { Matter, Rule, View } from '../../matter.ts';
import { chatRoomFor } from '../../room-of.ts';
import { buildBrief } from './brief.ts';
import { briefItems, briefMessage } from './brief-words.ts';
import { briefKey, nextBrief } from './next-brief.ts';

/** A quarter of an hour before a site opens: how the day begins there. Never on closed days. */
export const briefRule: Rule = (view) => view.practice.sites.flatMap(({ id }) => matterOf(view, id));

function matterOf(view: View, site: string): readonly Matter[] {
  const next = nextBrief(view, site);
  const room = chatRoomFor(view, site);
  if (next === null || room === null) return [];
  const { message, items } = next.at <= view.now ? written(view, site, next.date) : toCome();
  return [
    {
      key: briefKey(site, next.date),
      rule: 'brief',
      about: 'brief',
      site,
      room,
      items,
      stages: [{ stage: 'first', at: next.at }],
      since: next.at,
      group: 'brief',
      line: message,
      leads: [],
    },
  ];
}

function written(view: View, site: string, date: string): { message: Message; items: readonly Item[] } {
  const brief = buildBrief(view, site, date);
  return { message: briefMessage(view, brief), items: briefItems(brief) };
}

/** What it says is looked up when it is due: till then it would only be wrong. */
function toCome(): { message: Message; items: readonly Item[] } {
  return { message: lines('The brief of the day.'), items: [] };
}
