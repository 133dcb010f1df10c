import type { Clause } from '../clause.ts';
import { placeOf } from '../roles/place.ts';
import { timeOf } from '../roles/time.ts';
import { countBefore } from './booking-count.ts';
import { bookingTime, dayMissing, siteSlot } from './booking-time.ts';
import { type Frame, made, result } from './frame.ts';

/** The part that speaks of a planned scan, and whether of several; `null` where none does. */
export function booking(c: Clause): { at: number; plural: boolean } | null {
  const scan = c.form('scan', 'n');
  const noun = c.at('booking');
  const named = noun >= 0 && /scan/.test(c.parts[noun]?.text ?? '');
  // "Bookings tomorrow: 3 scans": what is counted is the scans.
  const at = named || (noun > scan && scan >= 0) ? noun : scan;
  if (at < 0) return null;
  return { at, plural: /s$/.test(c.parts[at]?.text ?? '') };
}

/** True where a scan is told to be coming, and not one that is under way, called off or somebody's own. */
function isBooking(c: Clause, plural: boolean, counted: boolean, timed: boolean): boolean {
  if (CALLED_OFF.test(c.scope.note) || (c.form('scan', 'dg') >= 0 && c.form('scan', 'n') < 0)) return false;
  if (plural) return true;
  if (c.parts[0]?.text === 'scan' && timed && (timeOf(c)?.span.days.length ?? 0) > 0) return true;
  if (c.word(/^(my|his|her|baby|your)$/) >= 0) return false;
  const added =
    counted || c.has('book', 'add', 'have') || c.word(/^(another|extra|new|one more|a|an|in)$/) >= 0;
  const expected =
    c.has('book', 'have', 'get', 'be', 'add', 'come', 'put') ||
    c.word(/^(got|have|'ve|has|booked|in|extra|more|today|down|on|there's|got in)$/) >= 0;
  return added && (expected || timed);
}

const CALLED_OFF =
  /\bcanc|called off|\boff\b|\bdna\b|\bfta\b|dropped out|pulled out|dropped off|go(ing)? ahead|no[- ]go\b|fewer|stood us up/i;

export const booked: Frame = {
  name: 'booked',
  on: ['scan', 'booking'],
  read(c) {
    const said = booking(c);
    if (
      said === null ||
      c.has('cancel', 'start', 'finish', 'use', 'trace', 'move', 'cold') ||
      /^(to|can't|cannot|couldn't|not|never)$/.test(c.parts[said.at - 1]?.text ?? '') ||
      c.entities('scanner').length > 0
    )
      return null;
    const count = countBefore(c, said.at);
    const place = placeOf(c);
    const when = bookingTime(c, place?.site ?? null, count?.at ?? -1);
    const [day] = when?.time.days ?? [];
    if (when === null || day === undefined) return null;
    const { times } = when.time;
    const number = count?.value ?? (times.length > 0 ? times.length : null);
    if (number === null || !isBooking(c, said.plural, count !== null, times.length > 0)) return null;
    c.use(said.at, count?.at ?? -1);
    c.useTags(
      'book',
      'scan',
      'booking',
      'have',
      'get',
      'be',
      'patient',
      'come',
      'intend',
      'do',
      'add',
      'send',
      'put',
    );
    const slots = { count: number, day, ...(times.length > 0 ? { times } : {}), ...siteSlot(place) };
    const fact = made('booked', slots, {
      day: when.said,
      count: count === null ? 'one for each time' : [count.at],
    });
    return { ...result([fact], said.at, place?.missing ?? dayMissing(when), 1), anyMood: true };
  },
};
