import { WEEKDAYS } from '../../time/local-date.ts';
import type { OpenSpan, Weekday } from '../practice.ts';
import { leaf, type Say, shown } from './leaf.ts';
import { nearest } from './nearest.ts';
import { readSpan } from './opening-span.ts';
import { readWeekdays } from './weekdays.ts';

export type WeeklyHours = Record<Weekday, readonly OpenSpan[]>;

/** Weekly hours; `undefined` where the key is left out. Days not named are closed days. */
export const hours = leaf((value, say): WeeklyHours | undefined => {
  if (value === undefined) return undefined;
  const week: WeeklyHours = { mon: [], tue: [], wed: [], thu: [], fri: [], sat: [], sun: [] };
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    say(`${shown(value)} where the week belongs`, '{mon: 08:30-17:30, tue: 08:30-17:30}');
    return week;
  }
  const named = new Set<Weekday>();
  for (const [key, entry] of Object.entries(value)) {
    const days = readWeekdays(key);
    if (days === null) {
      const near = nearest(key, WEEKDAYS);
      say(`"${key}" is not a day of the week`, near ?? WEEKDAYS.join(', '), [key], 'key');
      continue;
    }
    const spans = readDay(entry, key, say);
    for (const day of days) {
      if (named.has(day)) say(`${day} is said twice`, 'each day once', [key], 'key');
      named.add(day);
      week[day] = spans;
    }
  }
  return week;
});

function readDay(value: unknown, key: string, say: Say): readonly OpenSpan[] {
  if (typeof value === 'string' && /^(?:closed|shut|none|-)$/i.test(value)) return [];
  if (value === undefined) say(`nothing is said of ${key}`, '08:30-17:30, or closed', [key], 'key');
  if (value === undefined) return [];
  const list = Array.isArray(value);
  const entries: readonly unknown[] = list
    ? value
    : typeof value === 'string'
      ? value.split(/\s*,\s*/)
      : [value];
  const spans: OpenSpan[] = [];
  for (const [index, entry] of entries.entries()) {
    const span = typeof entry === 'string' ? readSpan(entry) : null;
    const objection = objectionTo(span, spans.at(-1));
    if (objection !== null)
      say(`${shown(entry)} ${objection.wrong}`, objection.right, list ? [key, index] : [key]);
    else if (span !== null) add(span, spans);
  }
  return spans;
}

/** What is wrong with a span after the one before it; `null` when nothing is. */
function objectionTo(
  span: OpenSpan | null,
  last: OpenSpan | undefined,
): { wrong: string; right: string } | null {
  if (span === null) return { wrong: 'cannot be read as opening and closing time', right: '08:30-17:30' };
  if (span.shut <= span.open) {
    return { wrong: 'closes before it opens', right: `${span.shut}-${span.open}, or 23:59 for midnight` };
  }
  if (last === undefined || span.open >= last.shut) return null;
  if (span.shut > last.open) {
    return {
      wrong: `overlaps ${last.open}-${last.shut}`,
      right: 'spans with a break between them, or one span',
    };
  }
  return { wrong: `comes after ${last.open}-${last.shut}`, right: 'the earlier span first' };
}

/** Two spans that touch are one: nobody goes home at that minute. */
function add(span: OpenSpan, spans: OpenSpan[]): void {
  const last = spans.at(-1);
  if (last?.shut !== span.open) spans.push(span);
  else spans[spans.length - 1] = { open: last.open, shut: span.shut };
}
