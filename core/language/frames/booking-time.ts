import type { Clause } from '../clause.ts';
import type { Entity, Part } from '../part.ts';
import type { Missing } from '../result.ts';
import type { PlaceSaid } from '../roles/place.ts';
import { timeContext, timeOf } from '../roles/time.ts';
import { resolveForward } from '../times/forward.ts';
import type { Clock, ForwardTime, TimeSpan } from '../times/time-span.ts';

/** The local date of the note, as a time that was said. */
export const TODAY: TimeSpan = {
  from: 0,
  to: 0,
  bound: 'at',
  days: [{ first: { sort: 'offset', days: 0 } }],
  clocks: [],
};

/** Numbers that can only be clock times where bookings are told: "9, 12 and 3:30", "the 4.30 scan", "330". */
function looseClocks(c: Clause, count: number): { clocks: Clock[]; at: number[] } {
  const clocks: Clock[] = [];
  const at: number[] = [];
  // "9.15 and 10.45": two phrases of clock times are a list.
  const several = c.entities('time').filter(({ entity }) => entity.span.clocks.length > 0).length > 1;
  for (const [i, part] of c.parts.entries()) {
    const { entity } = part;
    const spoken = spokenClocks(c, i);
    if (spoken.length > 0) {
      clocks.push(...spoken);
      at.push(i, i + 1);
    }
    if (i === count || entity === undefined) continue;
    if (entity.is === 'time') {
      if (several && entity.span.shift === undefined) clocks.push(...entity.span.clocks);
      continue;
    }
    const texts = looseTexts(entity);
    const half = /^(half|half past)$/.test(c.parts[i - 1]?.text ?? '');
    const found = texts.map((text) => (half ? clockOf(`${text}.30`) : clockOf(text)));
    if (found.length === 0 || found.some((clock) => clock === null)) continue;
    clocks.push(...found.filter((clock) => clock !== null));
    at.push(i);
  }
  return { clocks, at };
}

/** "Two thirty"; behind an hour, "nine eleven" are two hours more. */
function spokenClocks(c: Clause, i: number): readonly Clock[] {
  const spoken = spokenClock(c, i);
  if (spoken === null) return [];
  const before = c.parts[i - 1]?.entity;
  const pair = [c.parts[i], c.parts[i + 1]].map((p) => p?.senses.find((s) => s.tag === 'number')?.ref ?? '');
  const row = before?.is === 'time' && before.span.clocks.length > 0 && Number(pair[1]) <= 12;
  return row ? pair.map(clockOf).filter((clock) => clock !== null) : [spoken];
}

function looseTexts(entity: Entity): readonly string[] {
  if (entity.is === 'number') return [entity.text];
  if (entity.is !== 'tips' || entity.named) return [];
  return [...entity.ids, ...entity.unknown].map((id) => id.replace(/\D/g, ''));
}

/** "The two thirty scan": the article is read with the hour. */
function theHour(part: Part | undefined): string | undefined {
  return THE_HOURS.get(part?.text ?? '');
}

const THE_HOURS: ReadonlyMap<string, string> = new Map([
  ['the two', '2'],
  ['the three', '3'],
]);

/** "Two thirty" before the scan that it is the time of. */
function spokenClock(c: Clause, i: number): Clock | null {
  const said =
    c.parts[i]?.entity === undefined ? c.parts[i]?.senses.find((s) => s.tag === 'number')?.ref : undefined;
  if (said !== undefined && Number(said) <= 12 && /^(half|half past)$/.test(c.parts[i - 1]?.text ?? ''))
    return clockOf(`${said}.30`);
  const [hour, minute] = [c.parts[i], c.parts[i + 1]].map((part) =>
    part?.entity === undefined
      ? (theHour(part) ?? part?.senses.find((s) => s.tag === 'number')?.ref)
      : undefined,
  );
  if (hour === undefined || minute === undefined) return null;
  return Number(hour) <= 12 && Number(minute) >= 10 ? clockOf(`${hour}.${minute}`) : null;
}

function clockOf(text: string): Clock | null {
  const [, hour = '', minute = '0'] =
    /^(\d{1,2})(?:[.:](\d\d))?$/.exec(text) ?? /^(\d{1,2})(\d\d)$/.exec(text) ?? [];
  const [h, m] = [Number(hour), Number(minute)];
  if (hour === '' || h < 1 || h > 23 || m > 59) return null;
  return { sort: 'time', hour: h, minute: m, half: h > 12 ? 'known' : 'open', about: false };
}

/** What a booking or its cancelling says of the time, loose clock times taken in. */
export function bookingTime(
  c: Clause,
  site: string | null,
  count: number,
): { time: ForwardTime; said: readonly number[] } | null {
  const loose = looseClocks(c, count);
  const time = timeOf(c);
  if (loose.clocks.length === 0) return forward(c, site);
  const base = time === null || time.span.now === true ? TODAY : time.span;
  if (base.shift !== undefined || base.range !== undefined) return forward(c, site);
  c.use(...loose.at, ...(time?.said ?? []));
  const days = time === null ? [] : withDays(c, base).days;
  const span = { ...base, days, bound: 'at' as const, clocks: [...base.clocks, ...loose.clocks] };
  return { time: resolveForward(span, timeContext(c, site)), said: [...(time?.said ?? []), ...loose.at] };
}

/** "Late start Wednesday, opening at 9:30": the day was said before. */
function withDays(c: Clause, span: TimeSpan): TimeSpan {
  const silent = span.days.length === 0 && span.shift === undefined && span.part === undefined;
  return silent ? { ...span, days: c.scope.headTime?.days ?? c.scope.memory.days } : span;
}

/** What a clause says of a time to come: local dates and times of the site (`null`: the note's own), and the parts that said so. */
export function forward(
  c: Clause,
  site: string | null,
  role: 'time' | 'open' | 'shut' = 'time',
): { time: ForwardTime; said: readonly number[] } | null {
  const time = timeOf(c);
  if (time === null) return null;
  const span = time.span.now === true ? TODAY : withDays(c, time.span);
  c.use(...time.said);
  return { time: resolveForward(span, timeContext(c, site), role), said: time.said };
}

/** "31 November": a day that there is not, or one that its weekday contradicts, is asked about. */
export function dayMissing(when: { time: ForwardTime } | null): Missing | undefined {
  return when?.time.doubt === 'contradiction' ? { about: 'time', slot: 'day', form: 'confirm' } : undefined;
}

/** The slot for a site, left out where none was said. */
export function siteSlot(place: PlaceSaid | null): { site?: string } {
  return place?.site === undefined ? {} : { site: place.site };
}
