import type { OpenSpan, Weekday } from '../../practice/practice.ts';
import type { Instant } from '../../time/instant.ts';

/** What times are read against. The host's own zone is never consulted. */
export interface TimeContext {
  /** The note's own instant. */
  readonly at: Instant;
  /** IANA zone of the note's site, else of the practice. */
  readonly zone: string;
  /** How 3/11 is read. */
  readonly dates: 'day-first' | 'month-first';
  /** Opening hours of the note's site; `null` where the site is not known. */
  readonly hours: SiteHours | null;
}

/** When a site is open; `Site` of the practice file fits this shape. */
export interface SiteHours {
  readonly hours: Readonly<Record<Weekday, readonly OpenSpan[]>>;
  /** Local dates on which it is closed. */
  readonly closed: readonly string[];
}

/**
 * Words of a note that tell a time: only what was said, nothing filled in. `resolveBack` (facts) and
 * `resolveForward` (bookings, plans, closures, hours) fill in the rest, `resolveDays` gives a stretch of dates.
 */
export interface TimeSpan {
  /** First token, its cue word ("at", "on", "since") included. */
  readonly from: number;
  /** One past the last token. */
  readonly to: number;
  /** How the cue relates what happens to the time: "since Monday", "by 4", "before lunch", else `at`. */
  readonly bound: Bound;
  /** Days in the order said; a stretch ("24th to 2nd Jan") has its `last`. Empty where no day was said. */
  readonly days: readonly DayRange[];
  /** Clock times in the order said ("at 9, 10:30 and 2"). */
  readonly clocks: readonly Clock[];
  /** "9 to 1", "between 10 and 11". */
  readonly range?: { readonly start: Clock; readonly end: Clock };
  /** A part of the day: vague by itself. */
  readonly part?: DayPart;
  /** "20 min ago" is −20, "in half an hour" 30. `null` size: "a while ago", "in a bit". */
  readonly shift?: { readonly minutes: number | null; readonly sense: 'ago' | 'ahead' | 'within' };
  /** "now", "just now", "just": the note's own instant; gives way to any other time of the clause. */
  readonly now?: true;
}

export type Bound = 'at' | 'since' | 'until' | 'by' | 'before' | 'after';

export interface DayRange {
  readonly first: Day;
  /** Included. */
  readonly last?: Day;
}

/** A day, or a longer stretch of the calendar, as said. Weekdays: 1 Monday to 7 Sunday. */
export type Day =
  | { readonly sort: 'offset'; readonly days: number }
  | {
      readonly sort: 'weekday';
      readonly weekday: number;
      readonly which: 'plain' | 'last' | 'this' | 'next';
      /** "Thursday week" 1, "Thursday last week" −1 with `inWeek`. */
      readonly weeks: number;
      /** True where the week itself was said ("Thursday next week"): `weeks` then counts from this week. */
      readonly inWeek: boolean;
    }
  | {
      readonly sort: 'date';
      readonly day: number;
      readonly month?: number;
      readonly year?: number;
      /** "The 24th of last month" −1. */
      readonly monthOffset?: number;
      /** Said beside it ("Mon 14th"): picks the month where none was said. */
      readonly weekday?: number;
    }
  | { readonly sort: 'week' | 'month' | 'year' | 'weekend'; readonly offset: number }
  | {
      readonly sort: 'month-named';
      readonly month: number;
      readonly year?: number;
      readonly which: 'plain' | 'last' | 'this' | 'next';
    }
  | { readonly sort: 'year-named'; readonly year: number }
  /** "Week commencing 3 Nov": the Monday-to-Sunday week that holds the date. */
  | { readonly sort: 'week-of'; readonly of: Day }
  /** "The last 7 days", "next 3 days": today included. */
  | { readonly sort: 'run'; readonly days: number };

/** A clock time as said. */
export type Clock =
  | {
      readonly sort: 'time';
      /** 0 to 23 where `half` is `known`, 1 to 12 else; `null` for "quarter past", "ten to": the hour goes unsaid. */
      readonly hour: number | null;
      /** 0 to 59. */
      readonly minute: number;
      /** Whether morning or afternoon is certain ("2pm", "14:05", "09:30") or left to the opening hours ("at 2"). */
      readonly half: 'known' | 'open';
      /** "About 5", "5ish". */
      readonly about: boolean;
      /** "27.15": written as a time, but there is none such. */
      readonly never?: true;
    }
  /** "At opening", "end of play": of the day meant, by the opening hours; "an hour before close" has a `lead` of −60 minutes. */
  | { readonly sort: 'opening' | 'closing'; readonly lead?: number };

export type DayPart =
  | 'day'
  | 'early'
  | 'morning'
  | 'lunch'
  | 'afternoon'
  | 'evening'
  | 'night'
  /** "Earlier": from opening to now. */
  | 'earlier'
  /** "Later": from now on. */
  | 'later';

/** What had to be filled in, so that the reply can show it. */
export type Assumption = 'day' | 'half' | 'hour' | 'month' | 'year' | 'opening' | 'closing' | 'lunch';

/**
 * Why a resolved time should rather be asked about: it would lie in the future of a fact (`future`), the words
 * contradict each other (`contradiction`: "Mon 14th" where the 14th is no Monday, 31/11), or it lies so far back
 * that another day may be meant (`far`), or several times were said of one thing (`several`).
 */
export type Doubt = 'future' | 'contradiction' | 'far' | 'several';

/** A time a fact happened at. */
export interface BackTime {
  /** Never after the note's own instant. The note's own where the time said is only a stretch. */
  readonly when: Instant;
  /** Start of the stretch, where the time said is one; never after `when`. */
  readonly earliest?: Instant;
  /** End of that stretch where it is known to have ended before the note. */
  readonly latest?: Instant;
  readonly assumed: readonly Assumption[];
  readonly doubt?: Doubt;
}

/** A time something is meant for. */
export interface ForwardTime {
  /** Local dates, in order; a stretch has every one. Never empty. */
  readonly days: readonly string[];
  /** Local `HH:MM`, in order of the clock; empty where none was said. */
  readonly times: readonly string[];
  /** "9 to 1", "finishing at 3" (`until`, `by`), "from 10" (`since`, `after`): local `HH:MM`. */
  readonly open?: string;
  readonly shut?: string;
  /** The instant it begins at: the first time said, else the opening of the first day (now, where that has passed). */
  readonly start: Instant;
  /** True where a clock time or a length ("in 20 min") was said. */
  readonly exact: boolean;
  readonly assumed: readonly Assumption[];
  readonly doubt?: Doubt;
}

/** A stretch of local dates, both included. */
export interface DayStretch {
  readonly from: string;
  readonly to: string;
  readonly doubt?: Doubt;
}
