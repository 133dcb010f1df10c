import { ruleValue } from '../defaults/rule-value.ts';
import type { Practice } from '../practice/practice.ts';

/**
 * How far a chat vouches for whoever typed something. A chat that cannot know, such as the terminal, says nothing of it:
 * whoever sits there has the folder anyway.
 */
export interface Vouched {
  /**
   * `signed`: locked by a device that its owner has signed (Matrix cross-signing). `unsigned`: by any other. `in-clear`:
   * not locked at all, so the homeserver's word is all there is.
   */
  readonly device: 'signed' | 'unsigned' | 'in-clear';
  /** The writer's power in that chat room, 0 to 100; 50 is a moderator's. */
  readonly power: number;
}

/** From here on a person looks after the chat room. */
const MODERATOR = 50;

/** Whether what loosens something may be taken from where it was typed. */
export function isProven(practice: Practice, vouched: Vouched | undefined): boolean {
  if (vouched === undefined || vouched.device === 'signed') return true;
  const wanted = ruleValue(practice, 'signedDevices');
  return wanted === 'never' || (wanted === 'encrypted' && vouched.device === 'in-clear');
}

/** Whether somebody looks after the chat room; whoever types where that is not known does. */
export function isModerator(vouched: Vouched | undefined): boolean {
  return vouched === undefined || vouched.power >= MODERATOR;
}
