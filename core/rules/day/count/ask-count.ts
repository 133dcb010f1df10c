import type { Site } from '../../../practice/practice.ts';
import type { Instant } from '../../../time/instant.ts';
import { startOfDay } from '../../../time/zone.ts';
import type { Message } from '../../../words/message.ts';
import { eachSite } from '../../each.ts';
import type { Matter, Rule, View } from '../../matter.ts';
import { whenOpen, whenOpenNow } from '../../quiet.ts';
import { chatRoomFor } from '../../room-of.ts';
import { scannerWords } from '../../tips/tip-words.ts';
import { nextCount, tipsOf } from './count-due.ts';
import { countEvery, countExample, unknownLine } from './count-words.ts';

const RULE = 'count';

/** Until a site's tips have been counted: what is unknown is asked for in one question per chat room, once it is open there. */
export const askCountRule: Rule = (view) => {
  const uncounted = view.practice.sites.filter(({ id }) => {
    return nextCount(view, id) === null && tipsOf(view.state, id).length > 0;
  });
  const rooms = Map.groupBy(uncounted, ({ id }) => chatRoomFor(view, id));
  return [...rooms].flatMap(([room, sites]) => (room === null ? [] : [firstCount(view, room, sites)]));
};

function firstCount(view: View, room: string, sites: readonly Site[]): Matter {
  const key = `${RULE}|${room}`;
  const opens = () => Math.min(...sites.map(({ id }) => whenOpenNow(view, id)));
  const at = view.said.saidAt(key, 'first') ?? opens();
  return question(view, { key, room, sites, at, message: () => firstWords(view, sites) });
}

function firstWords(view: View, sites: readonly Site[]): Message {
  const example = sites[0] === undefined ? '' : countExample(view, sites[0].id);
  const idle = [...view.state.scanners.values()].filter((scanner) => {
    return scanner.lastPass === null && sites.some(({ id }) => id === scanner.site);
  });
  const [scanner] = idle;
  const calibrated =
    scanner === undefined
      ? []
      : [
          `Calibrated lately? Say when: “calibrated ${scannerWords(view.practice, scanner.id)} yesterday at 11”.`,
        ];
  return [
    { line: [{ strong: 'What have we got?' }, ' I know nothing yet of these tips:'] },
    { points: sites.map(({ id }) => unknownLine(view, id)) },
    {
      line: [
        `Type what is sterile, used, on a scanner or lost, in one note or several. Such as: ${example}.`,
      ],
    },
    ...calibrated.map((text) => ({ line: [text] })),
  ];
}

/** A count each quarter, asked for when the site opens that day. */
export const quarterCountRule = eachSite((view, site) => {
  const from = nextCount(view, site.id);
  const counted = view.state.sites.get(site.id)?.stocktake ?? null;
  const room = chatRoomFor(view, site.id);
  if (from === null || counted === null || room === null || tipsOf(view.state, site.id).length === 0)
    return [];
  const key = `${RULE}|site:${site.id}|${counted.entry}`;
  const due = () => whenOpen(view.practice, view.state, site.id, startOfDay(from, site.timezone));
  const at = view.said.saidAt(key, 'first') ?? due();
  const message = (): Message => [
    {
      line: [{ strong: `Count the tips at ${site.name}` }, `: a count is due ${countEvery(view, site.id)}.`],
    },
    { line: [`Type what you find, such as ${countExample(view, site.id)}.`] },
  ];
  return [question(view, { key, room, sites: [site], at, message })];
});

interface Asked {
  readonly key: string;
  readonly room: string;
  readonly sites: readonly Site[];
  readonly at: Instant;
  readonly message: () => Message;
}

function question(view: View, { key, room, sites, at, message }: Asked): Matter {
  return {
    key,
    rule: RULE,
    about: 'question',
    site: sites[0]?.id ?? '',
    room,
    get items() {
      return sites.flatMap(({ id }) => tipsOf(view.state, id).map((tip): `tip:${string}` => `tip:${tip}`));
    },
    stages: [{ stage: 'first', at }],
    since: at,
    group: RULE,
    get line() {
      return message();
    },
    leads: [],
  };
}
