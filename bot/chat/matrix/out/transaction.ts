import { createHash } from 'node:crypto';
import type { Effect } from '../../../../core/desk/effect.ts';

/**
 * The transaction id of an effect: the same effect, sent again after a crash or a lost answer, is answered by the
 * homeserver with the same event. What it says is part of it, so that a folder put back from an archive, where turn
 * numbers come round again, does not have its new posts taken for old ones.
 */
export function transactionOf(effect: Effect): string {
  const { key } = effect;
  return `sw${createHash('sha256').update(key).update('\n').update(JSON.stringify(effect)).digest('base64url').slice(0, 40)}`;
}
