import { resolveBack } from '../../../core/language/times/back.ts';
import { findTimes } from '../../../core/language/times/find.ts';
import { resolveForward } from '../../../core/language/times/forward.ts';
import type { Role } from '../../../core/language/times/forward-clock.ts';
import { resolveDays } from '../../../core/language/times/resolve-days.ts';
import type { SiteHours, TimeContext, TimeSpan } from '../../../core/language/times/time-span.ts';
import { tokenize } from '../../../core/language/tokens.ts';
import { toInstant, toLocal } from '../../../core/time/zone.ts';

/** An invented site: a break on Wednesdays, an early end on Fridays, shut at weekends and on Christmas Day. */
export const HOURS: SiteHours = {
  hours: {
    mon: [{ open: '08:30', shut: '17:30' }],
    tue: [{ open: '08:30', shut: '17:30' }],
    wed: [
      { open: '08:30', shut: '12:30' },
      { open: '13:30', shut: '17:30' },
    ],
    thu: [{ open: '08:30', shut: '17:30' }],
    fri: [{ open: '08:30', shut: '16:00' }],
    sat: [],
    sun: [],
  },
  closed: ['2026-12-25'],
};

/** Wednesday afternoon. */
const NOW = '2026-11-25 16:20';

export function contextAt(
  local: string = NOW,
  zone = 'Europe/London',
  hours: SiteHours | null = HOURS,
): TimeContext {
  return { at: toInstant(local.slice(0, 10), local.slice(11, 16), zone), zone, dates: 'day-first', hours };
}

/** The one time phrase of a note; throws where there is none or more than one, for a test must not pass on nothing. */
export function onlySpan(note: string, context: TimeContext): TimeSpan {
  const spans = findTimes(tokenize(note), context).filter((span) => span.now !== true);
  const [span] = spans;
  if (span === undefined || spans.length > 1) throw new Error(`${spans.length} times in: ${note}`);
  return span;
}

/** The words of the note that each time phrase covers. */
export function spanTexts(note: string, context: TimeContext): string[] {
  const tokens = tokenize(note);
  return findTimes(tokens, context).map((span) =>
    note.slice(tokens[span.from]?.start ?? 0, tokens[span.to - 1]?.end ?? 0),
  );
}

function shown(instant: number, context: TimeContext): string {
  if (instant === context.at) return 'now';
  const { date, time } = toLocal(instant, context.zone);
  return date === toLocal(context.at, context.zone).date ? time : `${date} ${time}`;
}

/** "16:00", "2026-11-24 17:00", "now since 08:30", "now since 08:30 till 12:00", each with "?doubt" at the end. */
export function back(note: string, context: TimeContext): string {
  const { when, earliest, latest, doubt } = resolveBack(onlySpan(note, context), context);
  const since = earliest === undefined ? '' : ` since ${shown(earliest, context)}`;
  const till = latest === undefined ? '' : ` till ${shown(latest, context)}`;
  return `${shown(when, context)}${since}${till}${doubt === undefined ? '' : ` ?${doubt}`}`;
}

/** "2026-11-26 09:00 10:30 14:00", "2026-11-28 open 09:00 shut 13:00", stretches as "2026-12-24..2027-01-02". */
export function forward(note: string, context: TimeContext, role: Role = 'time'): string {
  const { days, times, open, shut, doubt } = resolveForward(onlySpan(note, context), context, role);
  const said = [daysShown(days), ...times];
  if (open !== undefined) said.push(`open ${open}`);
  if (shut !== undefined) said.push(`shut ${shut}`);
  if (doubt !== undefined) said.push(`?${doubt}`);
  return said.join(' ');
}

/** The instant that a plan or a "later" begins at, as `back` shows it. */
export function starts(note: string, context: TimeContext): string {
  return shown(resolveForward(onlySpan(note, context), context).start, context);
}

/** "2026-10-01..2026-10-31". */
export function dates(note: string, context: TimeContext, direction: 'back' | 'forward'): string {
  const found = resolveDays(onlySpan(note, context), context, direction);
  if (found === null) return 'none';
  return `${found.from}..${found.to}${found.doubt === undefined ? '' : ` ?${found.doubt}`}`;
}

function daysShown(days: readonly string[]): string {
  const runs: string[][] = [];
  for (const day of days) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    const follows = last !== undefined && Date.parse(day) - Date.parse(last) === 86_400_000;
    if (run !== undefined && follows) run.push(day);
    else runs.push([day]);
  }
  return runs.map((run) => (run.length > 1 ? `${run[0]}..${run.at(-1)}` : run[0])).join(',');
}
