import { type LocalDate, localDateOf, minutesOf, toLocal } from '../../time/zone.ts';
import { minutesOn } from './candidates.ts';
import { openMinutes, rankOf } from './site-day.ts';
import type { Clock, DayPart, TimeContext, TimeSpan } from './time-span.ts';

/** What a clock time is of: a moment of the day, the beginning of work, or its end. */
export type Role = 'time' | 'open' | 'shut';

interface Meant {
  readonly role: Role;
  readonly part: DayPart | undefined;
}

/** The minute of a date that a clock time means: the likeliest by the opening hours, of equals the one still to come. */
export function chosenMinute(
  clock: Clock,
  date: LocalDate,
  meant: Meant,
  context: TimeContext,
): number | null {
  if (clock.sort === 'time' && clock.hour === null) return hourless(clock.minute, date, context);
  const options = minutesOn(clock, meant.part, date, context);
  if (options.length < 2) return options[0] ?? null;
  if (meant.role === 'shut') return ending(options, date, context);
  const now =
    date === localDateOf(context.at, context.zone) ? minutesOf(toLocal(context.at, context.zone).time) : 0;
  let best: number | null = null;
  let bestRank = 9;
  for (const minute of options) {
    const rank = rankOf(date, minute, context);
    const past = best !== null && best < now && minute >= now && rank <= 1;
    if (best === null || rank < bestRank || (rank === bestRank && past)) {
      best = minute;
      bestRank = rank;
    }
  }
  return best;
}

/** The next time the clock shows that minute of an hour; of another day's hours nothing is known. */
function hourless(minute: number, date: LocalDate, context: TimeContext): number | null {
  const local = toLocal(context.at, context.zone);
  if (date !== local.date) return null;
  const now = minutesOf(local.time);
  const ahead = (minute - (now % 60) + 60) % 60;
  return now + ahead < 1440 ? now + ahead : null;
}

/** "Finishing at 3", "open till 8": after that day's opening. */
function ending(options: readonly number[], date: LocalDate, context: TimeContext): number {
  const from = openMinutes(date, context)?.from ?? 540;
  return options.find((minute) => minute > from) ?? options.at(-1) ?? 0;
}

/** "9 to 1": each by the hours, the end after the beginning. */
export function rangeMinutes(
  range: NonNullable<TimeSpan['range']>,
  date: LocalDate,
  part: DayPart | undefined,
  context: TimeContext,
): { open: number; shut: number } {
  const ends = minutesOn(range.end, undefined, date, context);
  const half = range.start.sort === 'time' && range.start.half === 'open' ? bothKnown(range) : range.start;
  const open = chosenMinute(half, date, { role: 'open', part }, context) ?? 0;
  const shut = ends.find((minute) => minute > open) ?? ends.at(-1) ?? open;
  return { open, shut };
}

/** "2-4pm": the half that is said of the end goes for the beginning, where that leaves it the earlier of the two. */
function bothKnown({ start, end }: NonNullable<TimeSpan['range']>): Clock {
  if (start.sort !== 'time' || end.sort !== 'time' || start.hour === null || end.hour === null) return start;
  if (end.half !== 'known' || end.hour < 12) return start;
  const afternoon = (start.hour % 12) + 12;
  const earlier = afternoon * 60 + start.minute < end.hour * 60 + end.minute;
  return earlier ? { ...start, hour: afternoon, half: 'known' } : start;
}
