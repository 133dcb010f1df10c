import { addDays, addMonths, type LocalDate } from '../time/zone.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** A stretch of dates, both included: "October 2026", "2026", "3 November 2026", "2 to 8 November 2026". */
export function spanWords(from: LocalDate, to: LocalDate): string {
  const first = partsOf(from);
  const last = partsOf(to);
  if (from === to) return dateWords(first);
  if (from.endsWith('-01') && to === addDays(addMonths(from, 1), -1)) return `${first.month} ${first.year}`;
  if (from.endsWith('-01-01') && to === addDays(addMonths(from, 12), -1)) return first.year;
  if (first.year !== last.year) return `${dateWords(first)} to ${dateWords(last)}`;
  const start = first.month === last.month ? first.day : `${first.day} ${first.month}`;
  return `${start} to ${dateWords(last)}`;
}

function dateWords({ day, month, year }: ReturnType<typeof partsOf>): string {
  return `${day} ${month} ${year}`;
}

function partsOf(date: LocalDate) {
  const [year = '', month = '', day = ''] = date.split('-');
  return { year, month: MONTHS[Number(month) - 1] ?? '', day: String(Number(day)) };
}
