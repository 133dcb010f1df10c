import type { DatabaseSync } from 'node:sqlite';
import type { Effect } from '../../../../core/desk/effect.ts';
import type { Practice } from '../../../../core/practice/practice.ts';
import { clockWords } from '../../../../core/words/clock-words.ts';
import { lines } from '../../../../core/words/message.ts';
import type { Heard } from '../../../keeper/heard.ts';
import type { Store } from '../../../store/store.ts';
import { factOf } from '../matrix-db.ts';
import type { ReadBack } from '../sync/read-back.ts';

/**
 * Where to read the chat rooms from at the first start of a folder that came back from the ledger room; null where the
 * folder did not.
 */
export function recordCameBack({
  db,
  store,
}: {
  readonly db: DatabaseSync;
  readonly store: Store;
}): ReadBack | null {
  if (factOf(db, 'reread') === null) return null;
  const last = Date.parse(store.line(store.head.n)?.at ?? '');
  return Number.isNaN(last) ? null : { known: (event) => store.lineOfEvent(event) !== null, last };
}

/** Tells each chat room that another machine goes on, and what of it was read a second time: its answers may come twice. */
export function sayRebuilt(
  { practice, store }: { readonly practice: Practice; readonly store: Store },
  heard: readonly Heard[],
  now: number,
): void {
  const { head, transport } = store;
  const last = Date.parse(store.line(head.n)?.at ?? '') || now;
  for (const { room } of practice.chat) {
    const notes = heard.filter((one) => one.room === room && one.sort === 'note').length;
    const upTo = `I am on a new machine. The record came back whole, up to ${clockWords(last, now, practice.timezone)}.`;
    const again =
      notes === 0
        ? 'Nothing was typed here since.'
        : `${notes === 1 ? 'One message typed' : `${notes} messages typed`} here since I have just read: an answer may come twice.`;
    const message = lines(`${upTo} ${again}`);
    const key = `rebuilt/${head.hash.slice(0, 12)}/${room}`;
    const post: Effect = { does: 'post', key, room, message, about: 'record', items: [], mentions: [] };
    transport.enqueue(0, [{ key, room, body: post }]);
  }
}
