import { HOUR, type Instant, MINUTE } from '../../time/instant.ts';
import { addDays, type LocalDate, localDateOf, timeOfMinutes, toLocal } from '../../time/zone.ts';
import { everyDate, rangeDates } from './day-list.ts';
import { chosenMinute, type Role, rangeMinutes } from './forward-clock.ts';
import { openMinutes } from './site-day.ts';
import { instantOf, stretchOf } from './stretch.ts';
import type { Assumption, Clock, Doubt, ForwardTime, TimeContext, TimeSpan } from './time-span.ts';

/** A clock time this little past still means today: the 10:30 is cancelled at 10:35. */
const GRACE = HOUR / 2;

/**
 * The time something is meant for, looking forward from the note: every date of a stretch, clock times by the opening
 * hours of the day, the instant it begins at. Never before today. `role` says what a clock time is where the words
 * around it do: the end of work ("finishing at 3") or its beginning ("opening at 10").
 */
export function resolveForward(span: TimeSpan, context: TimeContext, role: Role = 'time'): ForwardTime {
  const { at, zone } = context;
  const today = localDateOf(at, zone);
  if (span.shift !== undefined) return shifted(span.shift, context);
  if (span.now === true) return { days: [today], times: [], start: at, exact: false, assumed: [] };
  const said = saidDays(span, today);
  const days = said.days.length > 0 ? said.days : [dayUnsaid(span, today, role, context)];
  const assumed: Assumption[] = said.days.length > 0 || span.part !== undefined ? [] : ['day'];
  return onDays(span, days, { role, assumed, doubt: said.doubt }, context);
}

function shifted(shift: NonNullable<TimeSpan['shift']>, context: TimeContext): ForwardTime {
  const { at, zone } = context;
  const past = shift.sense !== 'ahead';
  const start = past || shift.minutes === null ? at : at + shift.minutes * MINUTE;
  const { date, time } = toLocal(start, zone);
  const exact = !past && shift.minutes !== null;
  const times = exact ? [time] : [];
  return {
    days: [date],
    times,
    start,
    exact,
    assumed: [],
    ...(past ? { doubt: 'contradiction' as const } : {}),
  };
}

function saidDays(span: TimeSpan, today: LocalDate): { days: LocalDate[]; doubt: Doubt | undefined } {
  const dates = new Set<LocalDate>();
  let doubt: Doubt | undefined;
  // A list runs forward: "the 24th, 25th and 26th" said on the 25th are all of next month.
  let from = today;
  for (const range of span.days) {
    // A week that was named counts from this one, wherever the day stands in the list.
    const named = range.first.sort === 'weekday' && range.first.inWeek;
    const found = rangeDates(range, named ? today : from, 1);
    doubt ??= found.doubt ?? (found.to < today ? 'contradiction' : undefined);
    // "Out till Friday": from today, Friday included.
    const until = span.bound === 'until' && range.last === undefined && span.clocks.length === 0;
    const first = until && found.to >= today ? today : found.from;
    for (const date of everyDate({ from: first, to: found.to })) if (date >= today) dates.add(date);
    if (found.to > from) from = found.to;
  }
  const days = [...dates].sort();
  return { days: days.length === 0 && span.days.length > 0 ? [today] : days, doubt };
}

/** With no day said: today while any of the times is still to come, else the next day the site is open. */
function dayUnsaid(span: TimeSpan, today: LocalDate, role: Role, context: TimeContext): LocalDate {
  const { at, zone } = context;
  const clocks = span.range === undefined ? span.clocks : [span.range.start];
  if (role !== 'time' || (clocks.length === 0 && (span.part === undefined || span.part === 'later')))
    return today;
  if (clocks.length === 0)
    return stretchOf(today, span.part, context).end > at ? today : nextOpenDay(today, context);
  const ahead = clocks.some((clock) => {
    const minute = chosenMinute(clock, today, { role, part: span.part }, context);
    return minute === null || instantOf(today, minute, zone) >= at - GRACE;
  });
  return ahead ? today : nextOpenDay(today, context);
}

function nextOpenDay(today: LocalDate, context: TimeContext): LocalDate {
  for (let ahead = 1; ahead <= 14; ahead++) {
    const date = addDays(today, ahead);
    if (openMinutes(date, context) !== null) return date;
  }
  return addDays(today, 1);
}

interface Filled {
  readonly role: Role;
  readonly assumed: readonly Assumption[];
  readonly doubt: Doubt | undefined;
}

function onDays(
  span: TimeSpan,
  days: readonly LocalDate[],
  filled: Filled,
  context: TimeContext,
): ForwardTime {
  const { at, zone } = context;
  const day = days[0] ?? localDateOf(at, zone);
  const hours = openAndShut(span, day, filled.role, context);
  // "Two scans from 2": a beginning is a time of the day as well; an end is not.
  const moments = hours === null || (filled.role === 'time' && hours.shut === undefined);
  const minutes = moments ? clockMinutes(span, day, filled.role, context) : [];
  const first = hours?.start ?? minutes[0];
  const assumed = span.clocks.some(isOpen) ? [...filled.assumed, 'half' as const] : filled.assumed;
  const { open, shut } = hours ?? {};
  return {
    days,
    times: minutes.map(timeOfMinutes),
    ...(open === undefined ? {} : { open: timeOfMinutes(open) }),
    ...(shut === undefined ? {} : { shut: timeOfMinutes(shut) }),
    start: first === undefined ? vagueStart(span, day, context) : startAt(span, day, first, at, zone),
    exact: first !== undefined,
    assumed,
    ...(filled.doubt === undefined ? {} : { doubt: filled.doubt }),
  };
}

function isOpen(clock: Clock): boolean {
  return clock.sort === 'time' && clock.half === 'open';
}

/** "At midnight" ends the day it is said of. With no day said, what is a little past begins now. */
function startAt(span: TimeSpan, day: LocalDate, minute: number, at: Instant, zone: string): Instant {
  const start = instantOf(day, minute, zone);
  const midnight = minute === 0 && span.days.length === 0 && start < at;
  if (midnight) return instantOf(addDays(day, 1), 0, zone);
  return span.days.length === 0 ? Math.max(start, at) : start;
}

interface OpenAndShut {
  readonly open?: number;
  readonly shut?: number;
  readonly start: number;
}

/** Opening hours as said: a stretch, or one end of it. `null` where the clock times are moments of the day. */
function openAndShut(span: TimeSpan, day: LocalDate, role: Role, context: TimeContext): OpenAndShut | null {
  const { range } = span;
  if (range !== undefined) {
    const { open, shut } = rangeMinutes(range, day, span.part, context);
    return { open, shut, start: open };
  }
  const clock = span.clocks[0];
  if (clock === undefined || span.clocks.length > 1) return null;
  // "Open till 8" tells the end, whatever the verb.
  const ends = role === 'shut' || span.bound === 'until' || (role === 'time' && span.bound === 'by');
  const begins = role === 'open' || (role === 'time' && (span.bound === 'since' || span.bound === 'after'));
  if (!ends && !begins) return null;
  const minute = chosenMinute(clock, day, { role: ends ? 'shut' : 'open', part: span.part }, context);
  if (minute === null) return null;
  return ends ? { shut: minute, start: minute } : { open: minute, start: minute };
}

function clockMinutes(span: TimeSpan, day: LocalDate, role: Role, context: TimeContext): number[] {
  const minutes = new Set<number>();
  for (const clock of span.clocks) {
    const minute = chosenMinute(clock, day, { role, part: span.part }, context);
    if (minute !== null) minutes.add(minute);
  }
  return [...minutes].sort((a, b) => a - b);
}

/** Where no clock time was said: the beginning of the part, or of the day; now, where that has passed. */
function vagueStart(span: TimeSpan, day: LocalDate, context: TimeContext): Instant {
  const { start, end } = stretchOf(day, span.part === 'later' ? undefined : span.part, context);
  const edge = span.part === 'lunch' && span.bound === 'after' ? end : start;
  return Math.max(edge, context.at);
}
