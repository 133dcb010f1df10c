import type { LocalDate } from '../../time/zone.ts';
import { openMinutes } from './site-day.ts';
import type { Clock, DayPart, TimeContext } from './time-span.ts';

/** Opening and closing where the hours are not known or the site is shut, 09:00 and 17:00 (assumed). */
const OPENING = 540;
const CLOSING = 1020;

/**
 * The minutes after midnight that a clock time may mean on a date: one where the half of the day is known or the part
 * of the day tells it, else both. An hour left unsaid ("quarter past") gives none.
 */
export function minutesOn(
  clock: Clock,
  part: DayPart | undefined,
  date: LocalDate,
  context: TimeContext,
): number[] {
  if (clock.sort !== 'time') {
    const open = openMinutes(date, context);
    const edge = clock.sort === 'opening' ? (open?.from ?? OPENING) : (open?.to ?? CLOSING);
    return [Math.min(1439, Math.max(0, edge + (clock.lead ?? 0)))];
  }
  if (clock.hour === null) return [];
  if (clock.half === 'known') return [clock.hour * 60 + clock.minute];
  const morning = (clock.hour % 12) * 60 + clock.minute;
  const half = part === undefined ? undefined : HALVES[part];
  if (half === 'am' && clock.hour !== 12) return [morning];
  if (half === 'pm') return part === 'night' && clock.hour === 12 ? [morning] : [morning + 720];
  return [morning, morning + 720];
}

const HALVES: Readonly<Record<DayPart, 'am' | 'pm' | undefined>> = {
  day: undefined,
  early: 'am',
  morning: 'am',
  lunch: undefined,
  afternoon: 'pm',
  evening: 'pm',
  night: 'pm',
  earlier: undefined,
  later: undefined,
};
