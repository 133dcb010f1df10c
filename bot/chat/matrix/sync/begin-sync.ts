import { ClientEvent, Filter, type MatrixClient, SyncState } from 'matrix-js-sdk/lib/matrix.js';

/**
 * How many of the newest events of a room the homeserver gives at a time (ten where nobody asks); what is left out is read by
 * itself (`readGap`).
 */
const SYNC_LIMIT = 50;

/** Begins to sync, and says when the homeserver goes away and comes back. Resolves when the first sync is through. */
export async function beginSync(client: MatrixClient, say: (line: string) => void): Promise<void> {
  client.on(ClientEvent.Sync, (state, before) => {
    if (state === SyncState.Error && before !== SyncState.Error)
      say('The homeserver does not answer; trying on.');
    if (state === SyncState.Syncing && before === SyncState.Error) say('The homeserver answers again.');
  });
  const ready = new Promise<void>((resolve) => {
    const listen = (state: SyncState) => {
      if (state !== SyncState.Syncing) return;
      client.off(ClientEvent.Sync, listen);
      resolve();
    };
    client.on(ClientEvent.Sync, listen);
  });
  // The first limit is of the first sync alone, the filter's of all that come after.
  const filter = new Filter(client.getSafeUserId());
  filter.setTimelineLimit(SYNC_LIMIT);
  await client.startClient({
    initialSyncLimit: SYNC_LIMIT,
    filter,
    lazyLoadMembers: false,
    disablePresence: true,
  });
  await ready;
}
