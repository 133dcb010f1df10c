import type { Hold } from './hold.ts';
import type { Mark } from './mark.ts';
import type { FaultNote } from './scanner-state.ts';

/** The way round, as the notes say it. */
export type TipStage = 'unknown' | 'sterile' | 'fitted' | 'used' | 'washed' | 'bagged' | 'sent' | 'in-load';
/** What is shown: retired before missing before held before the stage beneath. */
export type TipShown = TipStage | 'held' | 'missing' | 'retired';

/**
 * Why a tip is not to be used until it has been through a load (or has come back from the autoclave).
 * `load-open` and the like: its last load has no good result.
 */
export type NeedWhy =
  | 'used'
  | 'removed'
  | 'fitted-elsewhere'
  | 'dropped'
  | 'pack'
  | 'indicator'
  | 'failed-inspection'
  | 'was-missing'
  | 'load-failed'
  | 'load-wet'
  | 'recalled'
  | 'reprocessing';

export interface Need {
  readonly why: NeedWhy;
  readonly mark: Mark;
  /** Key of the load, where one is the cause. */
  readonly load: string | null;
}

/** How the record came to call it sterile. `said`: taken as said, with no load named, and shown so. */
export interface SterileSince {
  readonly mark: Mark;
  readonly how: 'load' | 'released' | 'said';
  readonly load: string | null;
  /** Noted as bagged since it was last used or washed, before this. `rules.wrapped` says what that means. */
  readonly bagged: boolean;
}

/** A contact (the entry that fitted it) and what was found against it then. */
export interface WarnedFor {
  readonly contact: string;
  readonly reasons: readonly string[];
}

export interface TipState {
  readonly id: string;
  /** Shown state, with when it began. */
  state: TipShown;
  since: Mark | null;
  /** State beneath a hold, a loss or retirement: what releasing gives back. */
  stage: TipStage;
  holds: readonly Hold[];
  missing: Mark | null;
  retired: { readonly mark: Mark; readonly reason: string | null } | null;
  /** "not sure tip 4 is sterile": treated as not sterile until answered. */
  doubt: Mark | null;
  site: string | null;
  room: string | null;
  placed: Mark | null;
  /** On its way, with the site it is for where that was said. */
  departed: { readonly mark: Mark; readonly to: string | null } | null;
  /** Scanner that it is on. */
  scanner: string | null;
  fitted: Mark | null;
  /** Scanned with (or said used) since it was fitted last. */
  usedSinceFitted: boolean;
  /** A note "used" has told its last contact, or summed up that scan: another one is of another patient. */
  useSaid: boolean;
  /** Everything that stands between it and a patient until its next passed load; latest of each cause. */
  needs: readonly Need[];
  /** `null`: not on record as sterile since its last contact. */
  sterile: SterileSince | null;
  /** Key of the last load it was in. */
  load: string | null;
  /** Keys of loads with no result yet that it is part of: more than one is said at once. */
  openLoads: readonly string[];
  /** Loads it has been part of since its last use or fitting, newest last (2 or more: never used between). */
  loadsSinceUse: readonly string[];
  lastUse: Mark | null;
  /** Last use or fitting or coming off: contact with a patient's surroundings. */
  lastContact: Mark | null;
  washed: Mark | null;
  /** Bagged since last used or washed. */
  bagged: Mark | null;
  /** Sent to the autoclave and not yet counted as back. */
  sent: Mark | null;
  cycles: number;
  /** The maker's limit; `null`: none given, count only. */
  limit: number | null;
  /** Last time any note spoke of it; `null`: none has. */
  spoken: Mark | null;
  added: Mark | null;
  uses: number;
  /** The latest 60, oldest first. */
  faults: readonly FaultNote[];
  faultCount: number;
  /** The last unsafe contact found: fitting and then scanning with it have one cause. */
  warnedFor: WarnedFor | null;
  /** It has been warned of as unknown before its site's tips were counted: once is enough. */
  warnedDayOne: boolean;
}
