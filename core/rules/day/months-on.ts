import { addDays, addYears, isLocalDate, type LocalDate } from '../../time/local-date.ts';

/** The date that many months on, on the same day; the month's last where it has none (30 November is three months before the end of February). */
export function monthsOn(date: LocalDate, months: number): LocalDate {
  const month = Number(date.slice(5, 7)) - 1 + months;
  const year = addYears(`${date.slice(0, 4)}-01-01`, Math.floor(month / 12)).slice(0, 4);
  const first = `${year}-${String((month % 12) + 1).padStart(2, '0')}-01`;
  const same = `${first.slice(0, 8)}${date.slice(8)}`;
  return isLocalDate(same) ? same : addDays(`${addDays(first, 31).slice(0, 8)}01`, -1);
}
