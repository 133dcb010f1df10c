import type { Clause } from '../clause.ts';
import { wordsNumber } from '../lexicon/count.ts';
import type { Entity, Part } from '../part.ts';
import type { Missing } from '../result.ts';
import { type PlaceSaid, placeOf } from '../roles/place.ts';
import { timeContext, timeOf } from '../roles/time.ts';
import { resolveForward } from '../times/forward.ts';
import type { Clock, ForwardTime, TimeSpan } from '../times/time-span.ts';
import { type Frame, made, result } from './frame.ts';

const TODAY: TimeSpan = {
  from: 0,
  to: 0,
  bound: 'at',
  days: [{ first: { sort: 'offset', days: 0 } }],
  clocks: [],
};

/** "6 scans", "six scans", "a scan": how many, before the word for them; `null` where none is said. */
function countBefore(c: Clause, at: number): Count | null {
  for (let i = at - 1; i >= 0 && i >= at - 5; i--) {
    const part = c.parts[i];
    if (part === undefined || isPackedTime(part, i === at - 1)) return null;
    if (isTimeLike(part)) continue;
    const count = countAt(c, part, i);
    if (count !== undefined) return count;
    if (part.entity !== undefined) return null;
  }
  return null;
}

interface Count {
  readonly value: number;
  readonly at: number;
}

/** "330 scan cancelled" tells when it was to be. */
function isPackedTime(part: Part, beside: boolean): boolean {
  if (part.entity?.is === 'number') return beside && /^\d{3,}$/.test(part.entity.text);
  if (part.entity?.is !== 'tips' || !beside) return false;
  return /^\d{3,}$/.test([...part.entity.ids, ...part.entity.unknown].join('').replace(/\D/g, ''));
}

function isTimeLike(part: Part): boolean {
  const { entity } = part;
  return entity?.is === 'time' || (entity?.is === 'number' && !Number.isInteger(entity.value));
}

/** The count that a part is; `null` where its number belongs to a time ("half 3", "two thirty"), `undefined` where it is none. */
function countAt(c: Clause, part: Part, i: number): Count | null | undefined {
  const value = wordsNumber(part);
  const before = c.parts[i - 1];
  if (value !== null) {
    const ofTime =
      /^(half|half past)$/.test(before?.text ?? '') ||
      (value >= 10 && before?.senses.some((s) => s.tag === 'number') === true);
    return ofTime ? null : { value, at: i };
  }
  if (/^(a|an|one more|another|an extra)$/.test(part.text)) return { value: 1, at: i };
  if (/^(a dozen|dozen)$/.test(part.text))
    return { value: before?.text === 'half' || before?.text === 'half a' ? 6 : 12, at: i };
  if (/^(the|all) two$/.test(part.text)) return { value: 2, at: i };
  if (/^(the|all) three$/.test(part.text)) return { value: 3, at: i };
  return /^(both|a couple|couple|a couple of|couple of)$/.test(part.text) ? { value: 2, at: i } : undefined;
}

/** Numbers that can only be clock times where bookings are told: "9, 12 and 3:30", "the 4.30 scan", "330". */
function looseClocks(c: Clause, count: number): { clocks: Clock[]; at: number[] } {
  const clocks: Clock[] = [];
  const at: number[] = [];
  // "9.15 and 10.45": two phrases of clock times are a list.
  const several = c.entities('time').filter(({ entity }) => entity.span.clocks.length > 0).length > 1;
  for (const [i, part] of c.parts.entries()) {
    const { entity } = part;
    const spoken = spokenClock(c, i);
    if (spoken !== null) {
      clocks.push(spoken);
      at.push(i, i + 1);
    }
    if (i === count || entity === undefined) continue;
    if (entity.is === 'time') {
      if (several && entity.span.shift === undefined) clocks.push(...entity.span.clocks);
      continue;
    }
    const texts = looseTexts(entity);
    const half = /^(half|half past)$/.test(c.parts[i - 1]?.text ?? '');
    const found = texts.map((text) => (half ? clockOf(`${text}.30`) : clockOf(text)));
    if (found.length === 0 || found.some((clock) => clock === null)) continue;
    clocks.push(...found.filter((clock) => clock !== null));
    at.push(i);
  }
  return { clocks, at };
}

function looseTexts(entity: Entity): readonly string[] {
  if (entity.is === 'number') return [entity.text];
  if (entity.is !== 'tips' || entity.named) return [];
  return [...entity.ids, ...entity.unknown].map((id) => id.replace(/\\D/g, ''));
}

/** "Two thirty" before the scan that it is the time of. */
function spokenClock(c: Clause, i: number): Clock | null {
  const said =
    c.parts[i]?.entity === undefined ? c.parts[i]?.senses.find((s) => s.tag === 'number')?.ref : undefined;
  if (said !== undefined && Number(said) <= 12 && /^(half|half past)$/.test(c.parts[i - 1]?.text ?? ''))
    return clockOf(`${said}.30`);
  const [hour, minute] = [c.parts[i], c.parts[i + 1]].map((part) =>
    part?.entity === undefined ? part?.senses.find((s) => s.tag === 'number')?.ref : undefined,
  );
  if (hour === undefined || minute === undefined) return null;
  return Number(hour) <= 12 && Number(minute) >= 10 ? clockOf(`${hour}.${minute}`) : null;
}

function clockOf(text: string): Clock | null {
  const [, hour = '', minute = '0'] =
    /^(\d{1,2})(?:[.:](\d\d))?$/.exec(text) ?? /^(\d{1,2})(\d\d)$/.exec(text) ?? [];
  const [h, m] = [Number(hour), Number(minute)];
  if (hour === '' || h < 1 || h > 23 || m > 59) return null;
  return { sort: 'time', hour: h, minute: m, half: h > 12 ? 'known' : 'open', about: false };
}

/** What a booking or its cancelling says of the time, loose clock times taken in. */
function bookingTime(
  c: Clause,
  site: string | null,
  count: number,
): { time: ForwardTime; said: readonly number[] } | null {
  const loose = looseClocks(c, count);
  const time = timeOf(c);
  if (loose.clocks.length === 0) return forward(c, site);
  const base = time === null || time.span.now === true ? TODAY : time.span;
  if (base.shift !== undefined || base.range !== undefined) return forward(c, site);
  c.use(...loose.at, ...(time?.said ?? []));
  const days = time === null ? [] : withDays(c, base).days;
  const span = { ...base, days, bound: 'at' as const, clocks: [...base.clocks, ...loose.clocks] };
  return { time: resolveForward(span, timeContext(c, site)), said: [...(time?.said ?? []), ...loose.at] };
}

/** "Late start Wednesday, opening at 9:30": the day was said before. */
function withDays(c: Clause, span: TimeSpan): TimeSpan {
  const silent = span.days.length === 0 && span.shift === undefined && span.part === undefined;
  return silent ? { ...span, days: c.scope.headTime?.days ?? c.scope.memory.days } : span;
}

function forward(
  c: Clause,
  site: string | null,
  role: 'time' | 'open' | 'shut' = 'time',
): { time: ForwardTime; said: readonly number[] } | null {
  const time = timeOf(c);
  if (time === null) return null;
  const span = time.span.now === true ? TODAY : withDays(c, time.span);
  c.use(...time.said);
  return { time: resolveForward(span, timeContext(c, site), role), said: time.said };
}

function booking(c: Clause): { at: number; plural: boolean } | null {
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
      c.has('cancel', 'start', 'finish', 'use', 'trace') ||
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

/** "31 November": a day that there is not, or one that its weekday contradicts, is asked about. */
function dayMissing(when: { time: ForwardTime } | null): Missing | undefined {
  return when?.time.doubt === 'contradiction' ? { about: 'time', slot: 'day', form: 'confirm' } : undefined;
}

function siteSlot(place: PlaceSaid | null): { site?: string } {
  return place?.site === undefined ? {} : { site: place.site };
}

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

export const cancelled: Frame = {
  name: 'cancelled',
  on: ['cancel', 'scan', 'booking'],
  read(c) {
    const said = booking(c);
    const verb = c.form('cancel', 'dgn') >= 0 ? c.form('cancel', 'dgn') : c.form('cancel', 'bs');
    const lost =
      c.form('lose', 'd') >= 0
        ? c.form('lose', 'd')
        : c.exactly('drop', 'd') >= 0 && c.word(/off/) >= 0
          ? c.exactly('drop', 'd')
          : -1;
    const off = lost >= 0 ? lost : c.word(/^(off|is off|called off|not happening|not coming|no longer)$/);
    if (said === null || (verb < 0 && off < 0)) return null;
    const count = countBefore(c, said.at);
    const place = placeOf(c);
    const when = bookingTime(c, place?.site ?? null, count?.at ?? -1);
    c.use(verb, off, said.at, count?.at ?? -1);
    c.useTags('cancel', 'scan', 'booking', 'have', 'be', 'patient', 'do', 'neg', 'come');
    const time = whenStoodUp(c, when?.time ?? null, place?.site ?? null, count?.at ?? -1);
    if (when === null && count === null && verb < 0) return null;
    const slots = {
      ...(count === null || (count.value === 1 && time.times.length === 1) ? {} : { count: count.value }),
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

/** "We", a site of ours, "the practice": only these open and shut. */
function whoShuts(c: Clause): boolean {
  return (
    c.entities('site').length > 0 ||
    c.word(/^(clinic|practice|the practice)$/) >= 0 ||
    c.has('clinic') ||
    c.word(/^(we|we're|were|we are|we'll|we will|practice|surgery|clinic|us|everyone)$/) >= 0
  );
}

/** "Closed Friday" with nobody named: the writer's own site, where the note says little else. */
function closesAlone(c: Clause): boolean {
  const first = c.parts[0]?.text ?? '';
  if (/^(closed|shut)$/.test(first)) return c.parts.length <= 8 && c.scope.strange <= 1;
  return /^(all|everywhere|everything|both|not)$/.test(first) && c.parts.length <= 6 && c.scope.strange === 0;
}

/** True where what is said is of a day, not of an hour. */
function saysDays(c: Clause): boolean {
  const span = timeOf(c)?.span;
  if (span === undefined || span.shift !== undefined || span.now === true) return false;
  return span.clocks.length === 0 && span.range === undefined;
}

export const closed: Frame = {
  name: 'closed',
  on: ['shut', 'open'],
  read(c) {
    const verb = [c.form('shut', 'd'), c.form('shut', 'g'), c.has('neg') ? c.at('open') : -1].find(
      (i) => i >= 0,
    );
    if (verb === undefined || c.word(/^(door|window)$/) >= 0 || !saysDays(c)) return null;
    if ((!whoShuts(c) && !closesAlone(c)) || speaksOfThings(c)) return null;
    const place = placeOf(c);
    const when = forward(c, place?.site ?? null, 'shut');
    if (when === null) return null;
    c.use(verb, c.word(/^(clinic|practice)$/));
    c.useTags('shut', 'be', 'intend', 'roomword');
    const slots = { ...siteSlot(place), days: when.time.days };
    return {
      ...result([made('closed', slots, { days: when.said })], verb, place?.missing ?? dayMissing(when), 1.5),
      anyMood: true,
    };
  },
};

function speaksOfThings(c: Clause): boolean {
  return c.entities('scanner').length + c.entities('tips').length + c.entities('load').length > 0;
}

/** The local times a site opens and shuts at, from what was said and which of the two it was said of. */
function openAndShut(time: ForwardTime, opens: boolean): { open?: string; shut?: string } {
  if (time.open !== undefined && time.shut !== undefined) return { open: time.open, shut: time.shut };
  const [first] = time.times;
  const open = opens ? (time.open ?? first) : undefined;
  const shut = opens ? time.shut : (time.shut ?? first);
  return { ...(open === undefined ? {} : { open }), ...(shut === undefined ? {} : { shut }) };
}

export const hours: Frame = {
  name: 'hours',
  on: ['shut', 'open', 'finish', 'start', 'time', 'drop'],
  read(c) {
    const shut =
      [c.form('shut', 'dgbs'), c.form('finish', 'gbs'), c.word(/^knock(ing|ed)? off$/)].find((i) => i >= 0) ??
      -1;
    const open = [c.at('open'), c.form('start', 'g')].find((i) => i >= 0) ?? -1;
    if (
      (shut < 0 && open < 0) ||
      c.has('neg', 'scan', 'calibrate', 'load', 'pouch', 'wipe') ||
      speaksOfThings(c)
    )
      return null;
    const span = timeOf(c)?.span;
    if (span === undefined || (span.clocks.length === 0 && span.range === undefined)) return null;
    if (
      !whoShuts(c) &&
      !(
        c.parts.length <= 7 &&
        c.scope.strange <= (/^(shut|shutting|closing)$/.test(c.parts[0]?.text ?? '') ? 2 : 0)
      )
    )
      return null;
    const place = placeOf(c);
    const when = forward(c, place?.site ?? null, open >= 0 ? 'open' : 'shut');
    const [day] = when?.time.days ?? [];
    if (when === null || day === undefined) return null;
    c.use(shut, open);
    c.useTags('shut', 'open', 'finish', 'start', 'clinic', 'be', 'intend', 'roomword', 'work');
    const times = openAndShut(when.time, open >= 0);
    if (times.open === undefined && times.shut === undefined) return null;
    const fact = made('hours', { ...siteSlot(place), day, ...times }, { day: when.said });
    return { ...result([fact], shut >= 0 ? shut : open, place?.missing, 1.5), anyMood: true };
  },
};
