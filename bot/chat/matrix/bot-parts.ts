import type { DatabaseSync } from 'node:sqlite';
import type { Practice } from '../../../core/practice/practice.ts';
import type { Keeper } from '../../keeper/keeper.ts';
import type { Store } from '../../store/store.ts';
import type { Vault } from './keys/key-backup.ts';
import type { Session } from './sign-in/session.ts';

/** What the bot works with: made once by the command that starts it. */
export interface BotParts {
  readonly db: DatabaseSync;
  readonly session: Session;
  readonly password: string | null;
  readonly vault: Vault;
  /** Makes a new recovery key and shows it, once, by this; null where none is asked for. */
  readonly showRecoveryKey: ((key: string) => void) | null;
  readonly practice: Practice;
  readonly keeper: Keeper;
  readonly store: Store;
  readonly say: (line: string) => void;
  readonly now: () => number;
  /** Told once when it cannot go on: the process must end. */
  readonly failed: (error: unknown) => void;
}
