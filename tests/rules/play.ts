import { toText } from '../../bot/show/text.ts';
import { composePost } from '../../core/rules/compose.ts';
import type { Matter, Stage, View } from '../../core/rules/matter.ts';
import { nextDue, openMatters, unsaidStages } from '../../core/rules/matters.ts';
import { type Instant, toIso } from '../../core/time/instant.ts';
import { toLocal } from '../../core/time/zone.ts';
import type { Given } from './given.ts';

/** A post as the chat room would see it, with its local time. */
export interface Played {
  readonly at: string;
  readonly room: string;
  readonly about: string;
  readonly text: string;
  readonly items: readonly string[];
  readonly mentions: readonly string[];
}

/**
 * Lets the clock run from one local time to another as the desk does: at each moment at which something falls due, what
 * belongs together is one post, and is remembered as said. Notes have to be put in between two calls.
 */
export function play(given: Given, from: string, to: string): readonly Played[] {
  const posts: Played[] = [];
  const end = given.at(to);
  let now: Instant | null = given.at(from);
  while (now !== null && now <= end) {
    posts.push(...say(given, now));
    const next = nextDue(given.view(toIso(now)));
    if (next !== null && next <= now) throw new Error('the clock stands still');
    now = next;
  }
  if (now === null || now > end) posts.push(...say(given, end));
  return posts;
}

/** Only those about one thing, as "time text". */
export function told(posts: readonly Played[], about: string): readonly string[] {
  return posts.filter((post) => post.about === about).map(({ at, text }) => `${at} ${text}`);
}

function say(given: Given, now: Instant): readonly Played[] {
  const view = given.view(toIso(now));
  const due = openMatters(view).flatMap((matter) => dueStages(view, matter));
  const groups = Map.groupBy(due, ({ matter, stage }) => `${matter.room} ${matter.group} ${stage}`);
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (first === undefined) return [];
    const matters = group.map(({ matter }) => matter);
    const { about, message, items, mentions } = composePost(matters, first.stage, view);
    for (const { matter, stages } of group)
      for (const stage of stages) given.said.said(matter.key, stage, now);
    const { date, time } = toLocal(now, given.zone);
    return [
      { at: `${date} ${time}`, room: first.matter.room, about, text: toText(message), items, mentions },
    ];
  });
}

function dueStages(view: View, matter: Matter) {
  const stages: readonly Stage[] = unsaidStages(matter, view)
    .filter(({ at }) => at <= view.now)
    .map(({ stage }) => stage);
  const stage = stages.at(-1);
  return stage === undefined ? [] : [{ matter, stage, stages }];
}
