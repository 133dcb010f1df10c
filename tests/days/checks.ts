import { apply } from '../../core/desk/apply.ts';
import { Desk } from '../../core/desk/desk.ts';
import type { Turn } from '../../core/desk/turn.ts';
import type { Practice } from '../../core/practice/practice.ts';
import type { Entry } from '../../core/record/entry.ts';
import { Timeline } from '../../core/record/timeline.ts';
import { openMatters } from '../../core/rules/matters.ts';
import { sterileStock } from '../../core/rules/tips/sterile-stock.ts';
import { mayBeCalibrated } from '../record/slow-scanner.ts';
import { mayBeSterile } from '../record/slow-tip.ts';
import type { Day } from './play-day.ts';
import { clockAt, type SiteHours } from './scenes.ts';
import { barsOf } from './slow-bars.ts';
import { isOpenDay, isOverdue } from './slow-week.ts';

/** How often a check had something to check: one that never does checks nothing. */
export interface Seen {
  sterile: number;
  ready: number;
  posted: number;
  warned: number;
  ticked: number;
  matters: number;
}

/** What is wrong with a day, in words; empty where nothing is. */
export function wrongWith(day: Day, seen: Seen): readonly string[] {
  const entries = entriesOf(day.turns, day.scene.practice);
  return [
    ...wrongTips(day, entries, seen),
    ...wrongScanners(day, entries, seen),
    ...tooOften(day.turns, seen),
    ...warnedTwice(day.turns, seen),
    ...inQuietHours(day, seen),
    ...notAnew(day, seen),
    ...notTheSame(day),
  ];
}

/** The entries that hold, worked out from the turns alone. */
export function entriesOf(turns: readonly Turn[], practice: Practice): readonly Entry[] {
  const timeline = new Timeline(practice);
  for (const { setsAside = [], entries = [] } of turns) {
    for (const place of setsAside) timeline.setAside(place);
    apply(timeline, entries);
  }
  return timeline.entries;
}

function wrongTips({ desk, now }: Day, entries: readonly Entry[], seen: Seen): string[] {
  const view = desk.view(now);
  const offered = new Set(sterileStock(view, null).map(({ id }) => id));
  return [...view.state.tips.values()].flatMap((tip) => {
    if (tip.state !== 'sterile') return [];
    seen.sterile += 1;
    const wrong = mayBeSterile(entries, tip.id) ? [] : [`tip ${tip.id} is called sterile and is not`];
    // A tip in doubt keeps its state and is offered to nobody.
    for (const bar of barsOf(entries, `tip:${tip.id}`))
      if (offered.has(tip.id) || !MAY_STAY.has(bar))
        wrong.push(`tip ${tip.id} is called sterile and is ${bar}`);
    return wrong;
  });
}

function wrongScanners({ desk, now, scene }: Day, entries: readonly Entry[], seen: Seen): string[] {
  return Object.entries(desk.exported(now).scanners).flatMap(([id, shown]) => {
    if (typeof shown !== 'object' || shown === null || !('ready' in shown) || shown.ready !== true) return [];
    seen.ready += 1;
    const wrong: string[] = [];
    if (!mayBeCalibrated(entries, id, 'quay')) wrong.push(`scanner ${id} is called ready, not calibrated`);
    if (isDirty(entries, id)) wrong.push(`scanner ${id} is called ready, not wiped`);
    for (const bar of barsOf(entries, `scanner:${id}`))
      wrong.push(`scanner ${id} is called ready and is ${bar}`);
    const site = siteOf(entries, id);
    if (site !== null && isOverdue(entries, id, scene.sites[site], now)) {
      wrong.push(`scanner ${id} is called ready and its week is over`);
    }
    return wrong;
  });
}

const MAY_STAY = new Set(['in doubt', 'departed']);

/** Where it stands; `null` where notes have changed the hours, or it was found somewhere. */
function siteOf(entries: readonly Entry[], scanner: string): 'quay' | 'north' | null {
  let site: 'quay' | 'north' = 'quay';
  for (const { fact } of entries) {
    if (fact.kind === 'closed' || fact.kind === 'hours' || fact.kind === 'found') return null;
    if (fact.kind === 'moved' && fact.items.includes(`scanner:${scanner}`))
      site = fact.site === 'north' ? 'north' : 'quay';
  }
  return site;
}

/** A scan of it was finished, and no wipe-down was noted since. */
function isDirty(entries: readonly Entry[], id: string): boolean {
  const scan = entries.findLastIndex(({ fact }) => fact.kind === 'scan-finished' && fact.scanner === id);
  return (
    scan >= 0 &&
    !entries
      .slice(scan)
      .some(({ fact }) => fact.kind === 'wiped' && fact.scanner === id && fact.part === 'all')
  );
}

/** A matter is posted three times at most, and once more each time that somebody put it off. */
function tooOften(turns: readonly Turn[], seen: Seen): string[] {
  const posts = Map.groupBy(
    turns.flatMap((turn) => turn.said ?? []),
    ({ matter }) => matter,
  );
  const asked = turns.flatMap((turn) => turn.putOff ?? []).map(({ matter }) => matter);
  seen.posted += posts.size;
  return [...posts].flatMap(([matter, said]) => {
    // Each sums up other notes: they come in one after another here, together after a real gap.
    if (matter.startsWith('caught-up|')) return [];
    const times = new Set(said.map(({ post }) => post)).size;
    const most = 3 + asked.filter((one) => one === matter).length;
    return times > most ? [`${matter} was posted ${times} times`] : [];
  });
}

/** One cause is warned of in one turn. */
function warnedTwice(turns: readonly Turn[], seen: Seen): string[] {
  const warned = new Map<string, number>();
  return turns.flatMap((turn, number) =>
    (turn.warned ?? []).flatMap(({ finding, post }) => {
      if (post === null) return [];
      seen.warned += 1;
      const before = warned.get(finding) ?? number;
      warned.set(finding, number);
      return before === number ? [] : [`${finding} was warned of twice`];
    }),
  );
}

const AT_ANY_HOUR = new Set(['brief', 'incident', 'warning', 'look-back']);

/** What falls due is said while the site is open, on the dot included, by its own clock; what nobody noted has no other time. */
function inQuietHours({ turns, scene }: Day, seen: Seen): string[] {
  // Hours that notes changed, if only until they were taken back, have tests of their own.
  const told = turns.flatMap(({ entries = [] }) => entries);
  const changed = told.some(({ what }) => what.kind === 'closed' || what.kind === 'hours');
  if (changed) return [];
  return turns.flatMap(({ cause, at, effects, said = [] }) => {
    if (cause.sort !== 'tick') return [];
    // What waited without a signal is summed up as an answer is given: once it is heard.
    const answers = new Set(
      said.filter(({ matter }) => matter.startsWith('caught-up|')).map(({ post }) => post),
    );
    return effects.flatMap((effect) => {
      if (effect.does !== 'post' || AT_ANY_HOUR.has(effect.about) || answers.has(effect.key)) return [];
      seen.ticked += 1;
      const site = effect.room.includes('north') ? scene.sites.north : scene.sites.quay;
      return isOpen(site, at) ? [] : [`a post about ${effect.about} at ${at}`];
    });
  });
}

function isOpen(site: SiteHours, at: string): boolean {
  const { date, weekday, time } = clockAt(site.zone, Date.parse(at));
  return isOpenDay(site, { date, weekday }) && time >= site.open && time <= site.shut;
}

/** What a day's looks share is what every rule says when it is asked anew: a copy of a view shares nothing. */
function notAnew({ desk, now }: Day, seen: Seen): string[] {
  const view = desk.view(now);
  const shared = openMatters(view);
  seen.matters += shared.length;
  const anew = openMatters({ ...view });
  return JSON.stringify(shared) === JSON.stringify(anew) ? [] : ['asked anew, the rules say something else'];
}

/** Turns read back from the journal give the desk that made them. */
function notTheSame({ desk, turns, now, scene }: Day): string[] {
  const again = new Desk(scene.readers);
  for (const [index, turn] of turns.entries()) again.replay(index + 1, JSON.parse(JSON.stringify(turn)));
  if (JSON.stringify(again.save()) !== JSON.stringify(desk.save()))
    return ['replayed, the desk is another one'];
  return again.next(now) === desk.next(now) ? [] : ['replayed, the desk waits for something else'];
}
