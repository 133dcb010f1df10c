import type { Practice, Site } from '../practice/practice.ts';
import type { TimeContext } from './times/time-span.ts';

/** How times are read in a chat room: all but the note's own instant. */
export type TimeHabits = Omit<TimeContext, 'at'>;

/** For chat rooms by the sites that they serve; worked out once for each, since it takes in the sites' whole week. */
export function timeHabits(practice: Practice): (served: readonly string[]) => TimeHabits {
  const known = new Map<string, TimeHabits>();
  return (served) => {
    const key = served.join('\n');
    const habits = known.get(key) ?? habitsOf(practice, served);
    known.set(key, habits);
    return habits;
  };
}

function habitsOf({ sites, timezone, dates }: Practice, served: readonly string[]): TimeHabits {
  const only = served.length === 1 ? served[0] : sites.length === 1 ? sites[0]?.id : undefined;
  const site = sites.find((one) => one.id === only) ?? alike(sites, served);
  return { zone: site?.timezone ?? timezone, dates, hours: site };
}

/** Sites of one time zone as one: open from when the first opens until the last shuts, closed where all are. */
function openAtAll(sites: readonly Site[], first: Site) {
  const days = Object.keys(first.hours) as (keyof typeof first.hours)[];
  const hours = { ...first.hours };
  for (const day of days) {
    const spans = sites.flatMap((one) => one.hours[day]);
    const opens = spans.map((span) => span.open).sort();
    const shuts = spans.map((span) => span.shut).sort();
    const [open, shut] = [opens[0], shuts.at(-1)];
    hours[day] = open === undefined || shut === undefined ? [] : [{ open, shut }];
  }
  return {
    ...first,
    hours,
    closed: first.closed.filter((date) => sites.every((one) => one.closed.includes(date))),
  };
}

/** The first of the sites that may be meant where they all keep the same hours: "this morning" then begins alike. */
function alike(all: readonly Site[], served: readonly string[]): Site | null {
  const sites = served.length > 0 ? all.filter((one) => served.includes(one.id)) : all;
  const [first, ...rest] = sites;
  if (first === undefined) return null;
  if (rest.some((one) => one.timezone !== first.timezone)) return null;
  const key = (one: typeof first) => JSON.stringify([one.hours, one.closed]);
  return rest.every((one) => key(one) === key(first)) ? first : openAtAll(sites, first);
}
