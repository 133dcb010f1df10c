import { addDays, localDateOf } from '../../time/zone.ts';
import { datesOf } from './day-dates.ts';
import { instantOf, type Stretch, stretchOf } from './stretch.ts';
import type { Assumption, BackTime, TimeContext, TimeSpan } from './time-span.ts';

/**
 * A time with no clock in it ("this morning", "yesterday", "before lunch", "since Monday"): the note's own instant
 * stands, `earliest` is where the stretch begins, `latest` where it ended if it has.
 */
export function vagueBack(span: Pick<TimeSpan, 'part' | 'days' | 'bound'>, context: TimeContext): BackTime {
  const { at } = context;
  if (span.part === 'later') return { when: at, assumed: [], doubt: 'future' };
  const { stretch, doubt } = saidStretch(span, context);
  const { start, end } = byBound(span, stretch, context);
  if (doubt !== undefined || start > at) return { when: at, assumed: [], doubt: doubt ?? 'future' };
  const assumed: Assumption[] = span.part === 'lunch' ? ['lunch'] : ['opening'];
  return end < at
    ? { when: at, earliest: start, latest: end, assumed }
    : { when: at, earliest: start, assumed };
}

function saidStretch(
  span: Pick<TimeSpan, 'part' | 'days' | 'bound'>,
  context: TimeContext,
): { stretch: Stretch; doubt?: BackTime['doubt'] } {
  const { at, zone } = context;
  const today = localDateOf(at, zone);
  const first = span.days[0];
  const last = span.days.at(-1);
  const from = first === undefined ? { from: today, to: today } : datesOf(first.first, today, -1);
  const ended =
    last === undefined ? undefined : (last.last ?? (span.days.length > 1 ? last.first : undefined));
  const to = ended === undefined ? from : datesOf(ended, today, -1);
  // "Tuesday to Thursday" said on a Wednesday: the Tuesday before that Thursday.
  const begun = from.from > to.to && first !== undefined ? datesOf(first.first, to.to, -1) : from;
  const morning = stretchOf(begun.from, span.part, context);
  const evening = stretchOf(to.to, span.part, context);
  // Before opening the day has begun all the same.
  const early =
    morning.start > at && span.part !== 'lunch' && beginsDay(span.part)
      ? instantOf(begun.from, 0, zone)
      : morning.start;
  const doubt = begun.doubt ?? to.doubt;
  const stretch = { start: early, end: evening.end };
  return doubt === undefined ? { stretch } : { stretch, doubt };
}

function beginsDay(part: TimeSpan['part']): boolean {
  return part === undefined || part === 'day' || part === 'early' || part === 'morning' || part === 'earlier';
}

/** "Before lunch" begins with the day, "after lunch" when it is over, "since Monday" runs on. */
function byBound(span: Pick<TimeSpan, 'part' | 'bound'>, stretch: Stretch, context: TimeContext): Stretch {
  const { at, zone } = context;
  const date = localDateOf(stretch.start, zone);
  switch (span.bound) {
    case 'before':
    case 'until':
    case 'by': {
      const opening = stretchOf(date, undefined, context).start;
      const edge = span.bound === 'before' || span.part === 'lunch' ? stretch.start : stretch.end;
      if (span.part === undefined && span.bound === 'before')
        return { start: stretchOf(addDays(date, -1), undefined, context).start, end: stretch.start };
      return { start: Math.min(opening, edge), end: edge };
    }
    case 'after':
      return { start: stretch.end, end: at };
    case 'since':
      return { start: span.part === 'lunch' ? stretch.end : stretch.start, end: at };
    case 'at':
      return stretch;
  }
}
