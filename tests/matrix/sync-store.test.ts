import { DatabaseSync } from 'node:sqlite';
import type { ISyncResponse } from 'matrix-js-sdk/lib/matrix.js';
import { expect, test } from 'vitest';
import { SyncStore } from '../../bot/chat/matrix/sync/sync-store.ts';

const ROOM = '!quay:example.org';

/** A sync that tells of a room just joined. */
const joined = (): ISyncResponse =>
  JSON.parse(
    JSON.stringify({
      next_batch: 's2',
      rooms: {
        join: {
          [ROOM]: {
            state: { events: [{ type: 'm.room.create', state_key: '', event_id: '$1', content: {} }] },
            timeline: { events: [], prev_batch: 'p', limited: false },
            ephemeral: { events: [] },
            account_data: { events: [] },
            unread_notifications: {},
          },
        },
      },
    }),
  );

test.each([
  ['before its position was kept', 's1'],
  ['after its position was kept', 's2'],
])(
  'given a kill while a sync that brings a room is kept, %s, then the room is known afterwards',
  async (_, kept) => {
    const db = new DatabaseSync(':memory:');
    db.exec('CREATE TABLE fact (name TEXT PRIMARY KEY, value TEXT NOT NULL)');
    let position = 's1';
    let gone = false;
    const begin = () =>
      new SyncStore(db, {
        position: () => position,
        keep: async () => {
          position = kept;
          throw new Error('killed');
        },
        failed: () => {
          gone = true;
        },
      });
    await begin().setSyncData(joined());
    expect(gone).toBe(true);
    const saved = await begin().getSavedSync();
    expect(saved?.nextBatch).toBe(kept);
    expect(Object.keys(saved?.roomsData.join ?? {})).toEqual([ROOM]);
  },
);
