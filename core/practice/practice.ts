/** The practice as its file says it, checked and filled in: every list in the file's order, every id unique. */
export interface Practice {
  readonly name: string;
  /** IANA zone of every site that names none of its own. */
  readonly timezone: string;
  /** How 3/11 is read. */
  readonly dates: 'day-first' | 'month-first';
  readonly sites: readonly Site[];
  readonly scanners: readonly Scanner[];
  readonly autoclaves: readonly Autoclave[];
  /** One entry a tip; "1-12" is expanded. */
  readonly tips: readonly Tip[];
  readonly people: readonly Person[];
  readonly chat: readonly ChatRoom[];
  /** Homeservers whose people may ask the program into a chat room, beside the people listed. */
  readonly servers?: readonly string[];
  readonly rules: RuleOverrides;
}

export interface Site {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
  readonly timezone: string;
  readonly rooms: readonly Room[];
  readonly hours: Readonly<Record<Weekday, readonly OpenSpan[]>>;
  /** Local dates on which the site is closed, `2026-12-25`. */
  readonly closed: readonly string[];
  /** Set where the file gives no hours and the common working week was taken. */
  readonly hoursAssumed?: true;
}

export type Weekday = 'mon' | 'tue' | 'wed' | 'thu' | 'fri' | 'sat' | 'sun';

/** Local times, `08:30` to `17:30`, in order and apart within a day. */
export interface OpenSpan {
  readonly open: string;
  readonly shut: string;
}

export interface Room {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
}

export interface Scanner {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
  /** Site id where it stands until a note says otherwise. */
  readonly home: string;
  /** What the maker or the practice wants said of this one. */
  readonly notes: Readonly<Record<ScannerNote, readonly string[]>>;
}

export type ScannerNote = 'set-up' | 'pack' | 'clean' | 'calibrate';

export interface Autoclave {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
  readonly site: string;
  /** Its own validated cycles; where there are any, loads of it are judged by these alone. */
  readonly cycles: readonly { readonly celsius: number; readonly minutes: number }[];
}

export interface Tip {
  readonly id: string;
  readonly home: string;
  /** The maker's limit; `null` when the file gives none. */
  readonly cycles: number | null;
  readonly cyclesSoFar: number;
}

export type Part = 'lead' | 'deputy' | 'manager' | 'staff';

export interface Person {
  readonly name: string;
  readonly also: readonly string[];
  /** Chat identity such as `@rosa:example.org`; `null` for someone who does not write. */
  readonly id: string | null;
  readonly part: Part;
}

export interface ChatRoom {
  readonly room: string;
  readonly sites: readonly string[];
}

/** Settings of this practice's own, for everywhere, for one site or for one scanner; the table of rules says which exist. */
export interface RuleOverrides {
  readonly practice: Readonly<Record<string, RuleValue>>;
  readonly bySite: Readonly<Record<string, Readonly<Record<string, RuleValue>>>>;
  readonly byScanner: Readonly<Record<string, Readonly<Record<string, RuleValue>>>>;
}

export type RuleValue = number | string | boolean;
