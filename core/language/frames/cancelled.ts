import type { Clause } from '../clause.ts';
import { placeOf } from '../roles/place.ts';
import { timeContext, timeOf } from '../roles/time.ts';
import { resolveForward } from '../times/forward.ts';
import type { ForwardTime } from '../times/time-span.ts';
import { booking } from './booked.ts';
import { countBefore } from './booking-count.ts';
import { bookingTime, TODAY } from './booking-time.ts';
import { type Frame, made, result } from './frame.ts';

/** "The 11 o'clock didn't turn up": nobody stays away before the time, so that it was today's. */
function whenStoodUp(c: Clause, time: ForwardTime | null, site: string | null, count: number): ForwardTime {
  const context = timeContext(c, site);
  const today = resolveForward(TODAY, context);
  if (time === null) return today;
  const span = timeOf(c)?.span;
  const dayless = span === undefined || span.days.length === 0;
  return dayless && count < 0 && STOOD_UP.test(c.scope.note) ? { ...time, days: today.days } : time;
}

const STOOD_UP =
  /\b(dna|fta)|no[- ]show|(didn't|didnt|did not|never|hasn't|not) (turn|show|came|come|arriv|attend)|failed to attend/i;

/** "Off", "lost two of tomorrow's", "dropped off the list": called off without a word for it. */
function offAt(c: Clause): number {
  const dropped = c.word(/off/) >= 0 ? c.exactly('drop', 'd') : -1;
  const off = c.word(/^(off|is off|called off|not happening|not coming|no longer)$/);
  return [c.form('lose', 'd'), dropped, off].find((i) => i >= 0) ?? -1;
}

/** "No more scans on Thursday, all three cancelled". */
function allOfThem(c: Clause): { value: number; at: number } | null {
  const all = c.word(/^all$/);
  const said = all < 0 ? undefined : c.parts[all + 1]?.senses.find((s) => s.tag === 'number')?.ref;
  return said === undefined ? null : { value: Number(said), at: all + 1 };
}

/** "The 10:30 scan" counts nothing; "one scan, the 10:30" does. */
function countSlot(
  c: Clause,
  count: { value: number; at: number } | null,
  times: number,
): { count?: number } {
  if (count === null) return {};
  const article = count.value === 1 && times === 1 && c.parts[count.at]?.text !== 'one';
  return article ? {} : { count: count.value };
}

export const cancelled: Frame = {
  name: 'cancelled',
  on: ['cancel', 'scan', 'booking'],
  read(c) {
    const said = booking(c);
    const verb = c.form('cancel', 'dgn') >= 0 ? c.form('cancel', 'dgn') : c.form('cancel', 'bs');
    const off = offAt(c);
    if (said === null || (verb < 0 && off < 0)) return null;
    const count = countBefore(c, said.at) ?? allOfThem(c);
    const place = placeOf(c);
    const when = bookingTime(c, place?.site ?? null, count?.at ?? -1);
    c.use(verb, off, said.at, count?.at ?? -1);
    c.useTags('cancel', 'scan', 'booking', 'have', 'be', 'patient', 'do', 'neg', 'come');
    const time = whenStoodUp(c, when?.time ?? null, place?.site ?? null, count?.at ?? -1);
    if (when === null && count === null && verb < 0) return null;
    const slots = {
      ...countSlot(c, count, time.times.length),
      ...(time.times.length > 0 ? { times: time.times } : {}),
      day: time.days[0] ?? '',
      ...(place?.site === undefined ? {} : { site: place.site }),
    };
    return {
      ...result(
        [made('cancelled', slots, { day: when?.said ?? 'today' })],
        verb >= 0 ? verb : off,
        place?.missing,
        1,
      ),
      anyMood: true,
    };
  },
};
