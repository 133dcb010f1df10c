import { clocksAt } from './clocks.ts';
import { type Cue, cueAt, NO_CUE } from './cue.ts';
import { daysAt } from './days.ts';
import { idBefore, temperatureBefore } from './guards.ts';
import { leadAt } from './lead.ts';
import { partAfterDay, partAt } from './part.ts';
import { digitsAt, type Scan, textAt } from './scan.ts';
import { shiftAt } from './shift.ts';
import { AFTER_CUE } from './starts.ts';
import type { Bound, Clock, DayPart, DayRange, TimeContext, TimeSpan } from './time-span.ts';

/** A time phrase while it is put together from its elements. */
interface Draft {
  bound: Bound;
  days: readonly DayRange[];
  clocks: readonly Clock[];
  range?: NonNullable<TimeSpan['range']>;
  part?: DayPart;
  shift?: NonNullable<TimeSpan['shift']>;
  next: number;
}

type Order = TimeContext['dates'];

/** The longest time phrase that begins at `i`: elements one after another, each filling what is still unsaid. */
export function phraseFrom(scan: Scan, i: number, order: Order): TimeSpan | null {
  const draft: Draft = { bound: 'at', days: [], clocks: [], next: i };
  if (!addLead(scan, i, draft) && !addShift(scan, i, draft) && !addNext(scan, i, draft, order)) return null;
  // No phrase of people has more than a handful of elements; the cap keeps the cost linear.
  for (let round = 0; round < 6; round++) if (!addMore(scan, draft, order)) break;
  return spanOf(i, draft);
}

function addLead(scan: Scan, i: number, draft: Draft): boolean {
  const found = leadAt(scan, i);
  if (found === null) return false;
  draft.clocks = [found.value];
  draft.next = found.next;
  return true;
}

function addShift(scan: Scan, i: number, draft: Draft): boolean {
  const found = shiftAt(scan, i);
  if (found === null) return false;
  if ('day' in found.value) draft.days = [{ first: found.value.day }];
  else draft.shift = found.value.shift;
  draft.next = found.next;
  return true;
}

function addMore(scan: Scan, draft: Draft, order: Order): boolean {
  if (draft.shift !== undefined) return false;
  if (draft.part === undefined && (draft.days.length > 0 || hasClock(draft))) {
    const part = partAfterDay(scan, draft.next);
    if (part !== null) {
      draft.part = part.value.part;
      draft.next = part.next;
      return true;
    }
  }
  const comma = /^[,:]$/.test(textAt(scan, draft.next));
  return addNext(scan, comma ? draft.next + 1 : draft.next, draft, order, comma);
}

/** Adds the element at `i`, its cue included. */
function addNext(scan: Scan, i: number, draft: Draft, order: Order, comma = false): boolean {
  const cue = cueAt(scan, i);
  if (cue !== null && addElement(scan, cue.next, cue.value, draft, order, comma)) return true;
  return addElement(scan, i, NO_CUE, draft, order, comma);
}

function addElement(scan: Scan, i: number, cue: Cue, draft: Draft, order: Order, comma: boolean): boolean {
  // Most words after "the", "in" or "at" begin no time; one look tells.
  if (scan.tokens[i]?.kind !== 'number' && !AFTER_CUE.has(textAt(scan, i))) return false;
  if (LENGTH_CUES.has(cue.word) && addLateShift(scan, i, cue, draft)) return true;
  return (
    addDays(scan, i, cue, draft, order, comma) ||
    addPart(scan, i, cue, draft, comma) ||
    addClocks(scan, i, cue, draft, comma)
  );
}

const LENGTH_CUES: ReadonlySet<string> = new Set(
  'since until till til by from at about around roughly approximately approx ~'.split(' '),
);

/** "Since about an hour ago". */
function addLateShift(scan: Scan, i: number, cue: Cue, draft: Draft): boolean {
  if (draft.days.length > 0 || hasClock(draft) || draft.part !== undefined) return false;
  // "Went in about ten minutes ago": the "in" is the verb's.
  if (/^(in|on|for|of|over|through|during)$/.test(textAt(scan, draft.next))) return false;
  if (!addShift(scan, i, draft)) return false;
  takeBound(draft, cue);
  return true;
}

/** Words after which a date in figures or an ordinal needs no cue: "closed 24th to 2nd Jan". */
const DATE_HEADS: ReadonlySet<string> = new Set(
  'closed close shut off out away holiday holidays leave dated date booked log record records to week open till until'.split(
    ' ',
  ),
);
const DATE_CUES: ReadonlySet<string> = new Set(
  'on in from since until till til by before after for between of over during through'.split(' '),
);

function addDays(scan: Scan, i: number, cue: Cue, draft: Draft, order: Order, comma: boolean): boolean {
  if (draft.days.length > 0 || cue.about) return false;
  const cued = DATE_CUES.has(cue.word) || (cue.word === '' && DATE_HEADS.has(textAt(scan, i - 1)));
  if (cue.word === '' && digitsAt(scan, i) !== '' && idBefore(scan, i)) return false;
  const found = daysAt(scan, i, { order, cued }, cue.word === 'between');
  if (found === null || (comma && !endsAt(scan, found.next))) return false;
  if (draft.part === 'later' && !isToday(found.value)) return false;
  draft.days = found.value;
  draft.next = found.next;
  // A stretch is "at" its days: "from Monday to Wednesday" has no open end.
  if (found.value[0]?.last === undefined) takeBound(draft, cue);
  return true;
}

function isToday(days: readonly DayRange[]): boolean {
  const first = days[0]?.first;
  return first?.sort === 'offset' && first.days === 0;
}

function addPart(scan: Scan, i: number, cue: Cue, draft: Draft, comma: boolean): boolean {
  if ((draft.part !== undefined && draft.part !== 'early') || comma) return false;
  const found = partAt(scan, i, cue.word);
  if (found === null) return false;
  const { part, day } = found.value;
  if (day !== undefined) {
    if (draft.days.length > 0) return false;
    draft.days = [{ first: day }];
  }
  draft.part ??= part;
  draft.next = found.next;
  takeBound(draft, cue);
  return true;
}

function addClocks(scan: Scan, i: number, cue: Cue, draft: Draft, comma: boolean): boolean {
  if (hasClock(draft) || (comma && cue.word !== 'at' && cue.word !== '')) return false;
  if (cue.word !== '' && temperatureBefore(scan, i - 1)) return false;
  const afterDay = draft.days.length > 0 || draft.part !== undefined;
  const found = clocksAt(scan, i, cue, afterDay) ?? theClocksAt(scan, i, cue);
  if (found === null) return false;
  const { clocks, range } = found.value;
  draft.clocks = cue.about ? clocks.map(about) : clocks;
  if (range !== undefined) draft.range = range;
  else takeBound(draft, cue);
  draft.next = found.next;
  return true;
}

/** "For the 9.30", "the 9.30 scan": after "the" a dotted pair is a time, a bare number none. */
function theClocksAt(scan: Scan, i: number, cue: Cue): ReturnType<typeof clocksAt> {
  return textAt(scan, i) === 'the' ? clocksAt(scan, i + 1, { ...cue, strength: 'evident' }, false) : null;
}

function about(clock: Clock): Clock {
  return clock.sort === 'time' ? { ...clock, about: true } : clock;
}

function hasClock(draft: Draft): boolean {
  return draft.clocks.length > 0 || draft.range !== undefined;
}

function takeBound(draft: Draft, cue: Cue): void {
  if (draft.bound === 'at') draft.bound = cue.bound;
}

function endsAt(scan: Scan, i: number): boolean {
  const token = scan.tokens[i];
  return token === undefined || token.kind === 'mark';
}

function spanOf(from: number, draft: Draft): TimeSpan {
  const { next, bound, days, clocks, range, part, shift } = draft;
  return {
    from,
    to: next,
    bound,
    days,
    clocks,
    ...(range === undefined ? {} : { range }),
    ...(part === undefined ? {} : { part }),
    ...(shift === undefined ? {} : { shift }),
  };
}
