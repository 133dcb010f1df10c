import { apply } from '../../core/desk/apply.ts';
import { Desk } from '../../core/desk/desk.ts';
import type { Turn } from '../../core/desk/turn.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import type { Entry } from '../../core/record/entry.ts';
import { Timeline } from '../../core/record/timeline.ts';
import { mayBeCalibrated } from '../record/slow-scanner.ts';
import { mayBeSterile } from '../record/slow-tip.ts';
import { PRACTICE } from './any-day.ts';
import { type Day, READERS } from './play-day.ts';

/** How often a check had something to check: one that never does checks nothing. */
export interface Seen {
  sterile: number;
  ready: number;
  posted: number;
  warned: number;
  ticked: number;
}

/** What is wrong with a day, in words; empty where nothing is. */
export function wrongWith(day: Day, seen: Seen): readonly string[] {
  const entries = entriesOf(day.turns);
  return [
    ...wrongTips(day, entries, seen),
    ...wrongScanners(day, entries, seen),
    ...tooOften(day.turns, seen),
    ...warnedTwice(day.turns, seen),
    ...inQuietHours(day.turns, seen),
    ...notTheSame(day),
  ];
}

/** The entries that hold, worked out from the turns alone. */
export function entriesOf(turns: readonly Turn[]): readonly Entry[] {
  const parsed = parsePractice(PRACTICE);
  if ('mistakes' in parsed) throw new Error('the practice of these tests has mistakes');
  const timeline = new Timeline(parsed.practice);
  for (const { setsAside = [], entries = [] } of turns) {
    for (const place of setsAside) timeline.setAside(place);
    apply(timeline, entries);
  }
  return timeline.entries;
}

function wrongTips({ desk, now }: Day, entries: readonly Entry[], seen: Seen): string[] {
  return [...desk.view(now).state.tips.values()].flatMap((tip) => {
    if (tip.state !== 'sterile') return [];
    seen.sterile += 1;
    return mayBeSterile(entries, tip.id) ? [] : [`tip ${tip.id} is called sterile and is not`];
  });
}

function wrongScanners({ desk, now }: Day, entries: readonly Entry[], seen: Seen): string[] {
  return Object.entries(desk.exported(now).scanners).flatMap(([id, shown]) => {
    if (typeof shown !== 'object' || shown === null || !('ready' in shown) || shown.ready !== true) return [];
    seen.ready += 1;
    const wrong: string[] = [];
    if (!mayBeCalibrated(entries, id, 'quay')) wrong.push(`scanner ${id} is called ready, not calibrated`);
    if (isDirty(entries, id)) wrong.push(`scanner ${id} is called ready, not wiped`);
    if (isHeld(entries, id)) wrong.push(`scanner ${id} is called ready and is held`);
    return wrong;
  });
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

/** Taken out of service and not put back. */
function isHeld(entries: readonly Entry[], id: string): boolean {
  const item = `scanner:${id}` as const;
  const last = entries.findLast(
    ({ fact }) => (fact.kind === 'held' || fact.kind === 'released') && fact.items.includes(item),
  );
  return last?.fact.kind === 'held';
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

/** What falls due is said from 08:30 to 17:30, on the dot included; what nobody noted has no other time. */
function inQuietHours(turns: readonly Turn[], seen: Seen): string[] {
  return turns.flatMap(({ cause, at, effects }) => {
    if (cause.sort !== 'tick') return [];
    const time = at.slice(11, 16);
    return effects.flatMap((effect) => {
      if (effect.does !== 'post' || AT_ANY_HOUR.has(effect.about)) return [];
      seen.ticked += 1;
      const open = at.startsWith('2026-11-23') && time >= '08:30' && time <= '17:30';
      return open ? [] : [`a post about ${effect.about} at ${at}`];
    });
  });
}

/** Turns read back from the journal give the desk that made them. */
function notTheSame({ desk, turns, now }: Day): string[] {
  const again = new Desk(READERS);
  for (const [index, turn] of turns.entries()) again.replay(index + 1, JSON.parse(JSON.stringify(turn)));
  if (JSON.stringify(again.save()) !== JSON.stringify(desk.save()))
    return ['replayed, the desk is another one'];
  return again.next(now) === desk.next(now) ? [] : ['replayed, the desk waits for something else'];
}
