import type { Instant } from '../../time/instant.ts';
import { addDays, type LocalDate, startOfDay, timeOfMinutes, toInstant } from '../../time/zone.ts';
import { lunchMinutes, type Minutes, openMinutes } from './site-day.ts';
import type { DayPart, TimeContext } from './time-span.ts';

/** Beginning and end of a vague time. */
export interface Stretch {
  readonly start: Instant;
  readonly end: Instant;
}

const NOON = 720;
const EVENING = 1020;
const NIGHT = 1080;
const MIDNIGHT = 1440;

/** The instant of a minute of a local day; 1440 is the start of the next one. */
export function instantOf(date: LocalDate, minute: number, zone: string): Instant {
  if (minute >= MIDNIGHT) return startOfDay(addDays(date, 1), zone);
  if (minute <= 0) return startOfDay(date, zone);
  return toInstant(date, timeOfMinutes(minute), zone);
}

/** A part of one day, from opening where it begins the day ("this morning", "today", "earlier"). */
export function stretchOf(date: LocalDate, part: DayPart | undefined, context: TimeContext): Stretch {
  const { from, to } = minutesOfPart(date, part, context);
  return { start: instantOf(date, from, context.zone), end: instantOf(date, to, context.zone) };
}

function minutesOfPart(date: LocalDate, part: DayPart | undefined, context: TimeContext): Minutes {
  const open = openMinutes(date, context);
  const from = open?.from ?? 0;
  switch (part) {
    case 'lunch':
      return lunchMinutes(date, context);
    case 'early':
      // First thing is the first hour.
      return { from, to: open === null ? 600 : open.from + 60 };
    case 'morning':
      return { from: from < NOON ? from : 0, to: NOON };
    case 'afternoon':
      return { from: NOON, to: Math.max(open?.to ?? NIGHT, NIGHT) };
    case 'evening':
      return { from: EVENING, to: MIDNIGHT };
    case 'night':
      return { from: Math.min(open?.to ?? NIGHT, NIGHT), to: MIDNIGHT };
    default:
      return { from, to: open?.to ?? MIDNIGHT };
  }
}
