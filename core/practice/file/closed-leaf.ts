import { addDays, daysBetween, isLocalDate } from '../../time/local-date.ts';
import { leaf, type Say, shown } from './leaf.ts';

/** A stretch longer than a year is a slip in the year. */
const MOST_DAYS = 366;
const EXAMPLE = '2026-12-25, or 2026-12-24 to 2027-01-02';

/** Closed dates: one, a list, or stretches ("2026-12-24 to 2027-01-02", both days closed). In order, each once. */
export const closed = leaf((value, say): readonly string[] => {
  if (value === undefined) return [];
  const list = Array.isArray(value);
  const entries: readonly unknown[] = list
    ? value
    : typeof value === 'string'
      ? value.split(/\s*,\s*/)
      : [value];
  const dates = entries.flatMap((entry, index) => readEntry(entry, list ? [index] : [], say));
  return [...new Set(dates)].sort();
});

function readEntry(entry: unknown, inside: readonly number[], say: Say): readonly string[] {
  const ends = endsOf(entry);
  if (ends === null) {
    say(`${shown(entry)} is not a date written year-month-day`, EXAMPLE, inside);
    return [];
  }
  const unreal = ends.find((date) => !isLocalDate(date));
  if (unreal !== undefined) {
    say(`"${unreal}" is not a date of the calendar`, EXAMPLE, inside);
    return [];
  }
  const [from, to] = ends;
  const days = daysBetween(from, to);
  if (days < 0) {
    say(`${shown(entry)} ends before it begins`, `${to} to ${from}`, inside);
    return [];
  }
  if (days > MOST_DAYS) {
    say(`${shown(entry)} is longer than a year`, EXAMPLE, inside);
    return [];
  }
  return Array.from({ length: days + 1 }, (_, step) => addDays(from, step));
}

function endsOf(entry: unknown): readonly [string, string] | null {
  if (typeof entry === 'object' && entry !== null && 'from' in entry && 'to' in entry) {
    const { from, to } = entry;
    return typeof from === 'string' && typeof to === 'string' ? [from, to] : null;
  }
  if (typeof entry !== 'string') return null;
  const match = /^(\d{4}-\d{1,2}-\d{1,2})(?:\s*(?:to|\/|\.\.|–|until)\s*(\d{4}-\d{1,2}-\d{1,2}))?$/.exec(
    entry,
  );
  if (match === null) return null;
  const from = padded(match[1] ?? '');
  return [from, match[2] === undefined ? from : padded(match[2])];
}

/** `2026-1-5` is `2026-01-05`. */
function padded(date: string): string {
  return date
    .split('-')
    .map((part) => part.padStart(2, '0'))
    .join('-');
}
