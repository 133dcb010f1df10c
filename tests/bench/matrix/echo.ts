// The bare bot to compare with: the SDK as it is, its own store in memory, the same key store as ours; says every note again.
// node echo.ts FOLDER, with the account in the environment as Scanward has it.
import { ClientEvent, MemoryStore, MsgType, RoomEvent, SyncState } from 'matrix-js-sdk/lib/matrix.js';
import { openClient } from '../../../bot/chat/matrix/client.ts';
import { Vault } from '../../../bot/chat/matrix/keys/key-backup.ts';
import { openMatrixDb } from '../../../bot/chat/matrix/matrix-db.ts';
import { readCredentials } from '../../../bot/chat/matrix/sign-in/credentials.ts';
import { signIn } from '../../../bot/chat/matrix/sign-in/sign-in.ts';

const failed = (error: unknown) => {
  console.error(error);
  process.exit(1);
};
process.once('SIGTERM', () => process.exit(0));
const db = openMatrixDb(process.argv[2] ?? '');
const session = await signIn(db, readCredentials(process.env), false);
const client = await openClient(db, session, new MemoryStore(), new Vault(), failed);

client.on(RoomEvent.Timeline, (event, room, _start, _removed, { liveEvent }) => {
  if (liveEvent !== true || room === undefined || event.getSender() === client.getUserId()) return;
  void (async () => {
    await client.decryptEventIfNeeded(event);
    if (event.getType() !== 'm.room.message') return;
    await client.sendMessage(room.roomId, {
      msgtype: MsgType.Notice,
      body: `You said: ${String(event.getContent().body)}`,
      'm.relates_to': { 'm.in_reply_to': { event_id: event.getId() ?? '' } },
    });
  })().catch(failed);
});
client.on(RoomEvent.MyMembership, (room, membership) => {
  if (membership === 'invite') void client.joinRoom(room.roomId).catch(failed);
});
client.on(ClientEvent.Sync, (state, before) => {
  if (state !== SyncState.Syncing || before === SyncState.Syncing) return;
  for (const room of client.getRooms())
    if (room.getMyMembership() === 'invite') void client.joinRoom(room.roomId).catch(failed);
  console.log('is listening');
});
await client.startClient({ initialSyncLimit: 1, disablePresence: true });
