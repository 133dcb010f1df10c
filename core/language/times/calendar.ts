import { Chrono, configuration, type ParsedResult } from 'chrono-node/en';

/** Longest text that is handed to the date library: its expressions take 80 ms on 64 kB, microseconds on this. */
const LONGEST_DATE = 32;

export interface CalendarParts {
  readonly day: number;
  readonly month: number;
  readonly year?: number;
}

type Order = 'day-first' | 'month-first';

/** Made on first use: compiling its expressions takes 20 ms, and most notes hold no date. */
const readers: { [order in Order]?: Chrono } = {};

/** The library reads parts of a date only, so the moment it reads against must not matter; this one is fixed. */
const NO_MOMENT = { instant: new Date('2026-01-01T12:00:00Z'), timezone: 0 };

/**
 * Day, month and, where it was said, year of a calendar date ("3 November", "3/11", "Nov 14th, 2027"). `null` where
 * the text is not one date from end to end. What was only implied is left out: the year is filled in by whoever
 * knows the direction. The parts may contradict the calendar (31/11).
 */
export function calendarParts(text: string, order: Order): CalendarParts | null {
  if (text.length > LONGEST_DATE) return null;
  const reader = readers[order] ?? makeReader(order);
  for (const result of reader.parse(text, NO_MOMENT)) {
    const parts = partsOf(result, text);
    if (parts !== null) return parts;
  }
  return null;
}

function makeReader(order: Order): Chrono {
  const { parsers } = configuration.createConfiguration(true, order === 'day-first');
  // No refiners: they fill in and drop; only what was said is wanted here.
  const reader = new Chrono({ parsers, refiners: [] });
  readers[order] = reader;
  return reader;
}

function partsOf(result: ParsedResult, text: string): CalendarParts | null {
  const { start } = result;
  if (result.text.length !== text.length || result.end) return null;
  if (!start.isCertain('day') || !start.isCertain('month')) return null;
  const day = start.get('day');
  const month = start.get('month');
  if (day === null || month === null) return null;
  const year = start.isCertain('year') ? start.get('year') : null;
  return year === null ? { day, month } : { day, month, year };
}
