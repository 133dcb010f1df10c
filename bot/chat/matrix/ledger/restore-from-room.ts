import { ClientEvent, type MatrixClient, MemoryStore, SyncState } from 'matrix-js-sdk/lib/matrix.js';
import { PlainError } from '../../../plain-error.ts';
import { openStore } from '../../../store/store.ts';
import { openClient, signDevice } from '../client.ts';
import { useBackup, Vault } from '../keys/key-backup.ts';
import { openMatrixDb, setFact } from '../matrix-db.ts';
import type { Credentials } from '../sign-in/credentials.ts';
import { signIn } from '../sign-in/sign-in.ts';
import { type FoldedLedger, foldLedger } from './fold-ledger.ts';
import { claim, claimOf, findLedgerRoom } from './ledger-room.ts';
import { type LedgerRead, readLedger } from './read-ledger.ts';
import { keepOwnLedger } from './take-up.ts';
import { writeFolder } from './write-folder.ts';

/** What a folder is made from. */
export interface Restoring {
  /** An empty folder. */
  readonly draft: string;
  readonly credentials: Credentials;
  readonly recoveryKey: string;
  readonly say: (line: string) => void;
}

/**
 * Signs a new device in, brings the keys back, reads the ledger room and writes the folder: journal, what stands beside
 * it, device with its keys, and what was said already. The machine that wrote before is told to stop. Gives lines for
 * whoever asked. Throws PlainError, with the way out, where the record cannot be had from the room.
 */
export async function restoreFromRoom(parts: Restoring): Promise<readonly string[]> {
  const { draft, credentials, recoveryKey, say } = parts;
  const vault = new Vault();
  vault.open(recoveryKey);
  const db = openMatrixDb(draft);
  let client: MatrixClient | null = null;
  try {
    const session = await signIn(db, credentials, true);
    const failure = Promise.withResolvers<never>();
    client = await openClient(db, session, new MemoryStore(), vault, failure.reject);
    await Promise.race([firstSync(client), failure.promise]);
    const unsigned = await signDevice(client, credentials.password);
    if (unsigned !== null) say(unsigned);
    const { restored } = await useBackup(client, vault);
    say(`${restored} keys came back from the backup.`);
    const room = await findLedgerRoom(client);
    if (room === null)
      throw new PlainError(`${session.user} has no ledger room: there is nothing to rebuild from.`);
    // Read once to see that it can be had, and again once the machine before was told to stop.
    foldWhole(await readLedger(client, room));
    const { epoch } = await claimOf(client, room);
    await claim(client, room, { epoch: epoch + 1, device: session.device });
    const read = await readLedger(client, room);
    const folded = foldWhole(read);
    writeFolder(draft, folded);
    keepOwnLedger(db, { room, epoch: Math.max(epoch, folded.epoch) + 1 }, read.pieces, folded.lines.length);
    setFact(db, 'reread', folded.hashes.at(-1) ?? '');
    keepPosts(draft, folded);
    return about(read);
  } catch (error) {
    // A device that nobody will use is not left signed in.
    await client?.logout(true).catch(() => undefined);
    throw error;
  } finally {
    client?.stopClient();
    db.close();
  }
}

async function firstSync(client: MatrixClient): Promise<void> {
  const ready = new Promise<void>((resolve) => {
    client.on(ClientEvent.Sync, (state) => {
      if (state === SyncState.Prepared || state === SyncState.Syncing) resolve();
    });
  });
  await client.startClient({ initialSyncLimit: 1, disablePresence: true });
  await ready;
}

function foldWhole({ pieces, locked }: LedgerRead): FoldedLedger {
  const folded = foldLedger(pieces);
  const unread = locked === 0 ? '' : ` ${locked} events could not be read: their keys are not in the backup.`;
  if (folded.fault !== null)
    throw new PlainError(
      `The ledger room does not hold a whole record: ${folded.fault}. Lines 1 to ${folded.lines.length} stand.${unread} Put the last archive back instead: restore.`,
    );
  if (folded.lines.length === 0) throw new PlainError(`The ledger room is empty.${unread}`);
  return folded;
}

/** Nothing of what is in the record goes out again; which event each post became is known, so that it can be struck. */
function keepPosts(folder: string, { lines, posts }: FoldedLedger): void {
  const store = openStore(folder);
  try {
    const { transport } = store;
    transport.together(() => {
      transport.enqueue(
        lines.length,
        posts.map(({ key, room }) => ({ key, room, body: null })),
      );
      for (const { key, event } of posts) transport.sent(key, event);
    });
  } finally {
    store.close();
  }
}

function about({ foreign, locked }: LedgerRead): readonly string[] {
  return [
    ...(foreign === 0 ? [] : [`${foreign} events that are not the program's own were passed over.`]),
    ...(locked === 0 ? [] : [`${locked} events of the last moments could not be read.`]),
  ];
}
