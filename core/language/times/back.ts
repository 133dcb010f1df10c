import { HOUR, type Instant, MINUTE } from '../../time/instant.ts';
import { addDays, type LocalDate, localDateOf } from '../../time/zone.ts';
import { vagueBack } from './back-vague.ts';
import { minutesOn } from './candidates.ts';
import { datesOf } from './day-dates.ts';
import { openMinutes, rankOf } from './site-day.ts';
import { instantOf } from './stretch.ts';
import type { Assumption, BackTime, Clock, Day, Doubt, TimeContext, TimeSpan } from './time-span.ts';

/** A time said this little after the note is the note's own: clocks differ and people round. */
const SLACK = 10 * MINUTE;
/** The same where the hour went unsaid: "half past" at 16:20 is rather 15:30. */
const HOURLESS_SLACK = 5 * MINUTE;
/** Further back than this with no day said, another day or a slip is as likely. */
const FAR = 18 * HOUR;

/** The time a fact happened at, looking back from the note. Never after it; a time that cannot lie before it has a `doubt`. */
export function resolveBack(span: TimeSpan, context: TimeContext): BackTime {
  const { at } = context;
  if (span.now === true) return { when: at, assumed: [] };
  if (span.shift !== undefined) return shiftedBack(span.shift, context);
  if (span.range !== undefined) return rangeBack(span, span.range, context);
  const clock = span.clocks.at(-1);
  if (clock === undefined) return vagueBack(span, context);
  const point = pointBack(clock, span, context);
  const several = span.clocks.length > 1 ? 'several' : undefined;
  return bounded(span, point, several, context);
}

function shiftedBack(shift: NonNullable<TimeSpan['shift']>, context: TimeContext): BackTime {
  const { at } = context;
  if (shift.sense === 'ahead') return { when: at, assumed: [], doubt: 'future' };
  if (shift.minutes === null) return vagueBack({ part: 'earlier', days: [], bound: 'at' }, context);
  const then = at + shift.minutes * MINUTE;
  return shift.sense === 'within' ? { when: at, earliest: then, assumed: [] } : { when: then, assumed: [] };
}

/** "Between 10 and 11": a stretch, so the note's own time stands. */
function rangeBack(span: TimeSpan, range: NonNullable<TimeSpan['range']>, context: TimeContext): BackTime {
  const { at } = context;
  const start = pointBack(range.start, span, context);
  const end = pointBack(range.end, span, context);
  const latest = end.when >= start.when ? end.when : at;
  const doubt = start.doubt ?? end.doubt;
  return {
    when: at,
    earliest: start.when,
    latest,
    assumed: start.assumed,
    ...(doubt === undefined ? {} : { doubt }),
  };
}

interface Point {
  readonly when: Instant;
  readonly assumed: readonly Assumption[];
  readonly doubt?: Doubt;
}

function bounded(span: TimeSpan, point: Point, several: Doubt | undefined, context: TimeContext): BackTime {
  const doubt = point.doubt ?? several;
  const rest = { assumed: point.assumed, ...(doubt === undefined ? {} : { doubt }) };
  if (span.bound === 'after') return { when: context.at, earliest: point.when, ...rest };
  if (span.bound === 'before' || span.bound === 'by') {
    const date = localDateOf(point.when, context.zone);
    const opening = instantOf(date, openMinutes(date, context)?.from ?? 0, context.zone);
    const earliest = opening < point.when ? opening : instantOf(date, 0, context.zone);
    const when = span.bound === 'by' ? point.when : context.at;
    return { when, earliest, latest: point.when, ...rest };
  }
  return { when: point.when, ...rest };
}

/** One clock time: on the day said, else today, else on the last working day before. */
function pointBack(clock: Clock, span: TimeSpan, context: TimeContext): Point {
  const day = span.days[0]?.first;
  if (clock.sort === 'time' && clock.never) return { when: context.at, assumed: [], doubt: 'contradiction' };
  if (clock.sort === 'time' && clock.hour === null)
    return hourlessBack(clock.minute, day !== undefined, context.at, context.zone);
  return day === undefined ? onDayUnsaid(clock, span, context) : onDaySaid(clock, day, span, context);
}

function halfOf(clock: Clock): Assumption[] {
  if (clock.sort !== 'time') return [clock.sort];
  return clock.half === 'open' ? ['half'] : [];
}

function onDaySaid(clock: Clock, day: Day, span: TimeSpan, context: TimeContext): Point {
  const today = localDateOf(context.at, context.zone);
  const dates = datesOf(day, today, -1);
  // "Thursday at 4" said on a Thursday morning is last week's.
  const again = day.sort === 'weekday' && day.which === 'plain' && dates.from === today;
  const own = bestBack(clock, span, dates.from, context);
  const unlikely = own === null || own.outdone;
  const best = again && unlikely ? bestBack(clock, span, addDays(today, -7), context) : own;
  const assumed = halfOf(clock);
  if (best?.outdone === true) return { when: best.when, assumed, doubt: dates.doubt ?? 'future' };
  if (best === null) return { when: context.at, assumed, doubt: dates.doubt ?? 'future' };
  const doubt = dates.doubt ?? (dates.from === dates.to ? undefined : 'contradiction');
  return { when: best.when, assumed, ...(doubt === undefined ? {} : { doubt }) };
}

function onDayUnsaid(clock: Clock, span: TimeSpan, context: TimeContext): Point {
  const { at, zone } = context;
  const today = localDateOf(at, zone);
  const half = halfOf(clock);
  const own = bestBack(clock, span, today, context);
  if (own !== null && own.rank < 3) return { when: own.when, assumed: half };
  const before = bestBack(clock, span, workingDayBefore(today, context), context);
  const chosen = before !== null && (own === null || before.rank < own.rank) ? before : own;
  if (chosen === null) return { when: at, assumed: half, doubt: 'future' };
  const assumed: Assumption[] = chosen === own ? half : [...half, 'day'];
  return at - chosen.when > FAR
    ? { when: chosen.when, assumed, doubt: 'far' }
    : { when: chosen.when, assumed };
}

/** "Quarter past": of the hour that runs, else of the one before. */
function hourlessBack(minute: number, daySaid: boolean, at: Instant, zone: string): Point {
  const local = minuteOfHour(at, zone);
  const ahead = minute - local;
  const back = ahead * MINUTE <= HOURLESS_SLACK ? ahead : ahead - 60;
  const when = Math.min(at, floorMinute(at) + back * MINUTE);
  return daySaid ? { when, assumed: ['hour'], doubt: 'contradiction' } : { when, assumed: ['hour'] };
}

function floorMinute(at: Instant): Instant {
  return Math.floor(at / MINUTE) * MINUTE;
}

function minuteOfHour(at: Instant, zone: string): number {
  const start = instantOf(localDateOf(at, zone), 0, zone);
  return Math.floor((at - start) / MINUTE) % 60;
}

interface Ranked {
  readonly when: Instant;
  readonly rank: number;
  /** The other half of the day is likelier, but yet to come. */
  readonly outdone: boolean;
}

/** Of the times a clock may mean on a date, those not after the note: the likeliest, and of those the latest. */
function bestBack(clock: Clock, span: TimeSpan, date: LocalDate, context: TimeContext): Ranked | null {
  const { at, zone } = context;
  let best: Omit<Ranked, 'outdone'> | null = null;
  let ahead = 9;
  for (const minute of minutesOn(clock, span.part, date, context)) {
    const said = instantOf(date, minute, zone);
    if (said > at + SLACK) {
      ahead = Math.min(ahead, rankOf(date, minute, context));
      continue;
    }
    const when = Math.min(said, at);
    // Whoever writes now was there within the hour, whatever the hours say.
    const rank =
      at - when <= HOUR ? Math.min(1, rankOf(date, minute, context)) : rankOf(date, minute, context);
    if (best === null || rank <= best.rank) best = { when, rank };
  }
  return best === null ? null : { ...best, outdone: best.rank === 3 && ahead < 3 };
}

/** The last day before that the site worked, at most four days back; the day before where none is known. */
function workingDayBefore(today: LocalDate, context: TimeContext): LocalDate {
  for (let back = 1; back <= 4; back++) {
    const date = addDays(today, -back);
    if (openMinutes(date, context) !== null) return date;
  }
  return addDays(today, -1);
}
