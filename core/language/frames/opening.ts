import type { Clause } from '../clause.ts';
import { placeOf } from '../roles/place.ts';
import { timeOf } from '../roles/time.ts';
import type { ForwardTime } from '../times/time-span.ts';
import { dayMissing, forward, siteSlot } from './booking-time.ts';
import { type Frame, made, result } from './frame.ts';

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
  if (/^(closed|shut|might be|may be|could be|probably|maybe|possibly|we're)$/.test(first))
    return c.parts.length <= 8 && c.scope.strange <= 1;
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
    const why = c.word(/^(for|because|as|due to|owing to)$/, verb);
    if (why >= 0) for (let i = why; i < c.parts.length; i++) c.use(i);
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

/** "Shut at 2 today" with nobody named: the writer's own site, where the note says little else. */
function shutsAlone(c: Clause): boolean {
  const most = /^(shut|shutting|closing)$/.test(c.parts[0]?.text ?? '') ? 2 : 0;
  return c.parts.length <= 7 && c.scope.strange <= most;
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
    if (!whoShuts(c) && !shutsAlone(c)) return null;
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
