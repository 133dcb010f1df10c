import { countedAfter } from './guards.ts';
import { lengthAt } from './length.ts';
import { phraseEnd, phraseTable } from './phrases.ts';
import { gluedAt, numberAt, type Parsed, type Scan, textAt } from './scan.ts';
import type { Day, TimeSpan } from './time-span.ts';
import { UNITS } from './words.ts';

type Shift = NonNullable<TimeSpan['shift']>;
export type Shifted = { readonly shift: Shift } | { readonly day: Day };

const VAGUE_AGO = phraseTable(
  'a while ago | a while back | a little while ago | a little while back | a bit ago | a bit back | ages ago | some time ago | ' +
    'sometime ago | a little earlier | a bit earlier | not long ago | while ago | bit ago | quite a while ago',
);
const MOMENTS = phraseTable(
  'moments ago | a moment ago | just this minute | seconds ago | secs ago | a sec ago | a second ago | this minute | this second',
);
const VAGUE_AHEAD = phraseTable(
  'in a bit | in a while | in a little while | in a little bit | in a sec | in a second | in a mo | in a moment | in a tick | shortly | soon',
);

/** "20 min ago", "an hour back", "in 20", "in half an hour", "in the last hour", "2 days ago". */
export function shiftAt(scan: Scan, i: number): Parsed<Shifted> | null {
  const vague = phraseEnd(scan, i, VAGUE_AGO);
  if (vague > 0) return { value: { shift: { minutes: null, sense: 'ago' } }, next: vague };
  const moments = phraseEnd(scan, i, MOMENTS);
  if (moments > 0) return { value: { shift: { minutes: 0, sense: 'ago' } }, next: moments };
  const ahead = phraseEnd(scan, i, VAGUE_AHEAD);
  if (ahead > 0 && !/^(after|before|gone|past|as)$/.test(textAt(scan, ahead)))
    return { value: { shift: { minutes: null, sense: 'ahead' } }, next: ahead };
  const first = textAt(scan, i);
  if (first === 'in' || first === 'within')
    return withinAt(scan, i + 1) ?? (first === 'in' ? inAt(scan, i + 1) : null);
  if (first === 'over' || first === 'during') return withinAt(scan, i + 1);
  if (first === 'before' || first === 'since') return agoInFront(scan, i + 1);
  return agoAt(scan, i);
}

/** "the last hour", "the past 20 minutes". */
function withinAt(scan: Scan, i: number): Parsed<Shifted> | null {
  const at = textAt(scan, i) === 'the' ? i + 1 : i;
  const word = textAt(scan, at);
  if (word !== 'last' && word !== 'past') return null;
  const length = lengthAt(scan, at + 1);
  if (length === null || length.value >= 1440) return null;
  return { value: { shift: { minutes: -length.value, sense: 'within' } }, next: length.next };
}

/** "Before one hour", "since ten minutes", as many say whose own language puts "ago" in front. */
function agoInFront(scan: Scan, i: number): Parsed<Shifted> | null {
  const length = lengthAt(scan, i);
  const after = length === null ? undefined : scan.tokens[length.next];
  if (length === null || length.value >= 1440 || /^(ago|back|before|since)$/.test(after?.text ?? ''))
    return null;
  const ends =
    after === undefined || after.kind === 'mark' || /^(in|on|to|with|at|the|and|from|by)$/.test(after.text);
  return ends ? made(scan, -length.value, 'ago', length.next, length.next) : null;
}

function agoAt(scan: Scan, i: number): Parsed<Shifted> | null {
  // The 2 of "1/2 hour".
  if (gluedAt(scan, i) !== '' && textAt(scan, i - 1) === '/') return null;
  const about = /^(about|around|roughly|approx|like|maybe|only|over|nearly|~)$/.test(textAt(scan, i))
    ? i + 1
    : i;
  const length = lengthAt(scan, about);
  if (length === null) return null;
  const end =
    /^(or)$/.test(textAt(scan, length.next)) && textAt(scan, length.next + 1) === 'so'
      ? length.next + 2
      : length.next;
  const word = textAt(scan, end);
  if (word === 'ago' || word === 'previous' || (word === 'back' && !placeFollows(scan, end + 1)))
    return made(scan, -length.value, 'ago', length.next, end + 1);
  // "An hour since", as many say for "ago".
  const after = scan.tokens[end + 1];
  if (word === 'since' && (after === undefined || after.kind === 'mark'))
    return made(scan, -length.value, 'ago', length.next, end + 1);
  if (word === 'from' && /^(now|today)$/.test(textAt(scan, end + 1)))
    return made(scan, length.value, 'ahead', length.next, end + 2);
  return null;
}

/** "20 min back in surgery 2": there `back` belongs to the place. */
function placeFollows(scan: Scan, i: number): boolean {
  return /^(in|at|from|on|to|with)$/.test(textAt(scan, i));
}

/** Bare minutes that "in" may stand before: smaller or odd numbers are rather rooms. */
const BARE = new Set([10, 15, 20, 25, 30, 40, 45, 50, 60, 90]);

function inAt(scan: Scan, i: number): Parsed<Shifted> | null {
  const about = /^(about|around|roughly|another|approx|like|say)$/.test(textAt(scan, i)) ? i + 1 : i;
  const length = lengthAt(scan, about);
  if (length !== null) {
    if (/^(ago|back|earlier)$/.test(textAt(scan, length.next))) return null;
    // "20 degrees in 5 min flat" is no appointment; "in an hour's time" is.
    const own =
      textAt(scan, length.next) === "'s" || textAt(scan, length.next) === "'" ? length.next + 1 : length.next;
    return made(scan, length.value, 'ahead', length.next, textAt(scan, own) === 'time' ? own + 1 : own);
  }
  const bare = numberAt(scan, about);
  if (bare === null || !bareMinutes(scan, i, bare.value) || countedAfter(scan, bare.next)) return null;
  const after = scan.tokens[bare.next];
  const ends =
    after === undefined ||
    after.kind === 'mark' ||
    /^(please|pls|plz|or|thanks|ta|then|and|cheers)$/.test(after.text);
  return ends ? { value: { shift: { minutes: bare.value, sense: 'ahead' } }, next: bare.next } : null;
}

/** "Remind me in 5" is minutes, where "scan in 5" is a room. */
function bareMinutes(scan: Scan, i: number, value: number): boolean {
  if (BARE.has(value)) return true;
  if (value < 1 || value > 90) return false;
  for (let at = i - 2; at >= Math.max(0, i - 8); at--)
    if (/^(remind|snooze|nudge|prod|later|ask|ping)$/.test(textAt(scan, at))) return true;
  return false;
}

/** Days and weeks are counted on the calendar, hours and minutes on real elapsed time. `unitEnd`: past the unit's word. */
function made(
  scan: Scan,
  minutes: number,
  sense: 'ago' | 'ahead',
  unitEnd: number,
  next: number,
): Parsed<Shifted> {
  const unit = UNITS.get(textAt(scan, unitEnd - 1)) ?? 0;
  if (unit >= 1440 && minutes % 1440 === 0)
    return { value: { day: { sort: 'offset', days: minutes / 1440 } }, next };
  return { value: { shift: { minutes: Math.round(minutes * 60) / 60, sense } }, next };
}
