import type { Mark } from './mark.ts';

export interface Reading {
  readonly mark: Mark;
  readonly celsius: number;
  /** Room of the site; `null`: of the site. */
  readonly room: string | null;
}

/** A booked scan: a local time, or none said. */
export interface Booking {
  readonly mark: Mark;
  /** Local `HH:MM`; `null`: no time said, spread over the hours. */
  readonly time: string | null;
}

/** What a note said of one day's hours; `null` is left as the practice file has it. */
export interface DayHours {
  readonly mark: Mark;
  readonly open: string | null;
  readonly shut: string | null;
}

export interface SiteState {
  readonly id: string;
  /** The latest 72 h by `at`, at most 200, oldest first; the last of all is always kept. */
  readings: readonly Reading[];
  /** By local date; dates long past are dropped. */
  bookings: ReadonlyMap<string, readonly Booking[]>;
  /** Local dates that a note closed. */
  closedDates: ReadonlyMap<string, Mark>;
  hours: ReadonlyMap<string, DayHours>;
  /** The last count: half of the site's tips or more told by name, or the guided count. */
  stocktake: Mark | null;
  stocktakeAsked: Mark | null;
  /** Tips whose state has been told since the last count, for knowing when half of them are. */
  told: Set<string>;
  /** The same within the latest turn alone: a later count is told in one note. */
  toldNow: { turn: number; tips: Set<string> };
  /** Minutes from sent (else load start) to sterile of this site's last 20 passed loads, oldest first. */
  turnarounds: readonly number[];
  /** Passed loads counted for it in all. */
  turnaroundLoads: number;
  lastNoted: Mark | null;
}
