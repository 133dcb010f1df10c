import { toIso } from '../time/instant.ts';
import { Clause } from './clause.ts';
import type { Part } from './part.ts';
import { timeContext, timeOf } from './roles/time.ts';
import { resolveBack } from './times/back.ts';
import { resolveForward } from './times/forward.ts';
import type { Clock, TimeSpan } from './times/time-span.ts';

export interface When {
  readonly slots: { readonly when: string; readonly earliest?: string };
  readonly said: readonly number[] | string;
  /** The time lies ahead of the note or cannot be told. */
  readonly doubt: boolean;
}

/** When a fact happened: the time its clause says, else the one at the head of the note, else the note's own. */
export function whenOf(c: Clause, site: string | null, direction: 'back' | 'forward'): When {
  const own = timeOf(direction === 'back' ? withoutPurpose(c) : c);
  const span: TimeSpan | null = withHour(own?.span ?? c.scope.headTime, c.scope.memory.clock);
  const at = c.scope.time.at;
  if (span === null) return { slots: { when: toIso(at) }, said: "the note's own time", doubt: false };
  const said = own?.said ?? 'the time at the head of the note';
  const context = timeContext(c, site);
  if (direction === 'forward') {
    const time = resolveForward(span, context);
    return {
      slots: { when: toIso(time.exact || time.times.length > 0 ? time.start : time.start) },
      said,
      doubt: false,
    };
  }
  const time = resolveBack(span, context);
  const earliest = time.earliest === undefined ? {} : { earliest: toIso(time.earliest) };
  return {
    slots: { when: toIso(time.when), ...earliest },
    said,
    doubt: own?.several === true || time.doubt !== undefined,
  };
}

/** "Popped 7 on Heron for the 2 o'clock": whom it was done for is no time of its own. */
function withoutPurpose(c: Clause): Clause {
  const isFor = (part: Part) =>
    part.entity?.is === 'time' && part.text === 'for' && part.entity.span.clocks.length > 0;
  return c.parts.some(isFor)
    ? new Clause(
        c.parts.filter((part) => !isFor(part)),
        c.scope,
      )
    : c;
}

/** "Used 4 at 9 and sent it down at half past": the hour was said before. */
function withHour(span: TimeSpan | null, said: Clock | undefined): TimeSpan | null {
  const [clock, more] = span?.clocks ?? [];
  if (span === null || clock?.sort !== 'time' || clock.hour !== null || more !== undefined) return span;
  if (said?.sort !== 'time' || said.hour === null || clock.minute <= said.minute || clock.minute > 30)
    return span;
  return { ...span, clocks: [{ ...clock, hour: said.hour, half: said.half }] };
}

/** "Blue goes back at half four" tells of what is to come. */
const GOES = new Set(['go', 'leave', 'travel', 'come', 'move']);

/** "I'm bringing Wren back after lunch": what is being done at a part of the day is meant, but for the part that is over. */
function isStillToCome({ part, bound }: TimeSpan): boolean {
  return part !== undefined && bound === 'after';
}

/** True where the clause's time can only lie ahead: "tomorrow", "in 20 minutes", "later"; of what is being done, any time to come. */
export function liesAhead(c: Clause, verb: number): boolean {
  const own = timeOf(c);
  if (own === null) return false;
  const { span } = own;
  if (span.now === true || span.bound === 'since') return false;
  if (span.shift !== undefined) return span.shift.sense === 'ahead';
  if (span.part === 'later') return true;
  for (const { first } of span.days) {
    if (first.sort === 'offset') return first.days > 0;
    if (first.sort === 'weekday' && first.which === 'next') return true;
    if ((first.sort === 'week' || first.sort === 'month') && first.offset > 0) return true;
  }
  return isUnderWay(c, verb) && (span.clocks.length > 0 || span.days.length > 0 || isStillToCome(span));
}

/** "Goes back at four", "bringing it at four"; "finished wiping at ten to 3" is over. */
function isUnderWay(c: Clause, verb: number): boolean {
  const senses = c.parts[verb]?.senses ?? [];
  if (/^(finished|done|completed|after)$/.test(c.parts[verb - 1]?.text ?? '')) return false;
  if (senses.some((s) => s.form === 'd')) return false;
  return senses.some((s) => s.form === 'g' || (s.form === 's' && GOES.has(s.tag)));
}
