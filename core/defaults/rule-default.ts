/** Where a default comes from: common practice of the trade, a default of ours, or a published source that is named. */
export type Origin = 'practice' | 'assumed' | { readonly source: string };

/** The narrowest thing for which it may be set: `scanner` means for the practice, for a site, or for one scanner. */
export type Scope = 'practice' | 'site' | 'scanner';

export type Unit =
  | 'minutes'
  | 'seconds'
  | 'hours'
  | 'days'
  | 'months'
  | '°C'
  | '°C per hour'
  | '%'
  | 'share'
  | 'count';

interface Told {
  /** One line for the person who reads the list: what it is for. */
  readonly why: string;
  readonly origin: Origin;
  readonly scope: Scope;
}

export interface NumberRule extends Told {
  readonly type: 'number';
  readonly value: number;
  readonly unit: Unit;
  /** Bounds of an override, both allowed: a practice may be stricter than the default, but looser only so far. */
  readonly min: number;
  readonly max: number;
  readonly whole?: true;
}

/** A local time of day. */
export interface TimeRule extends Told {
  readonly type: 'time';
  readonly value: string;
  readonly earliest: string;
  readonly latest: string;
}

export interface ChoiceRule<C extends string = string> extends Told {
  readonly type: 'choice';
  readonly value: C;
  readonly choices: readonly C[];
}

export interface SwitchRule extends Told {
  readonly type: 'switch';
  readonly value: boolean;
}

export type RuleDefault = NumberRule | TimeRule | ChoiceRule | SwitchRule;
