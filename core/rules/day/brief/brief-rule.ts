import type { Item } from '../../../reading/slots.ts';
import { lines, type Message } from '../../../words/message.ts';
import { hasCome } from '../../clock.ts';
import { eachSite } from '../../each.ts';
import type { Matter, View } from '../../matter.ts';
import { chatRoomFor } from '../../room-of.ts';
import { remembered } from '../../watch/remembered.ts';
import { buildBrief } from './brief.ts';
import { briefItems, briefMessage } from './brief-words.ts';
import { briefKey, nextBrief } from './next-brief.ts';

/** A quarter of an hour before a site opens: how the day begins there. Never on closed days. */
export const briefRule = eachSite((view, { id }) => matterOf(view, id));

function matterOf(view: View, site: string): readonly Matter[] {
  const next = nextBrief(view, site);
  const room = chatRoomFor(view, site);
  if (next === null || room === null) return [];
  const told = () => (hasCome(view, next.at) ? written(view, `${site}\n${next.date}`) : TO_COME);
  return [
    {
      key: briefKey(site, next.date),
      rule: 'brief',
      about: 'brief',
      site,
      room,
      get items() {
        return told().items;
      },
      stages: [{ stage: 'first', at: next.at }],
      since: next.at,
      group: 'brief',
      get line() {
        return told().message;
      },
      leads: [],
    },
  ];
}

interface Told {
  readonly message: Message;
  readonly items: readonly Item[];
}

const written = remembered((view: View, siteAndDate: string): Told => {
  const [site = '', date = ''] = siteAndDate.split('\n');
  const brief = buildBrief(view, site, date);
  return { message: briefMessage(view, brief), items: briefItems(brief) };
});

/** What it says is looked up when it is due: till then it would only be wrong. */
const TO_COME: Told = { message: lines('The brief of the day.'), items: [] };
