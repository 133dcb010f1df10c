/** One thing about how the program does. */
export interface Finding {
  readonly of: 'record' | 'unsent' | 'aside' | 'heard' | 'locked' | 'backup' | 'ledger' | 'clock' | 'server';
  readonly line: string;
  /** False where a person should look. */
  readonly good: boolean;
  /** What a person can do about it. */
  readonly todo?: string;
}

/** How an instant (ISO) is shown: as it is for a machine's owner, as a local time in a chat room. */
export type ShowTime = (iso: string) => string;
