import type { DatabaseSync } from 'node:sqlite';
import { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { IStore } from 'matrix-js-sdk/lib/store/index.js';
import { openKeyStore } from './keys/key-store.ts';
import type { Session } from './sign-in/session.ts';
import { silenceSdk, silent } from './silent-logger.ts';

/**
 * The client of a device, its keys opened from the folder. `failed` is told when a key cannot be written and must end the
 * process. One client a process.
 */
export async function openClient(
  db: DatabaseSync,
  session: Session,
  store: IStore,
  failed: (error: unknown) => void,
): Promise<MatrixClient> {
  silenceSdk();
  await openKeyStore(db, failed);
  const client = new MatrixClient({
    baseUrl: session.homeserver,
    userId: session.user,
    deviceId: session.device,
    accessToken: session.token,
    store,
    logger: silent,
    disableVoip: true,
  });
  await client.initRustCrypto({ storageKey: session.storageKey });
  return client;
}

/**
 * Signs the bot's device with its account's own key, so that people's phones show it as trusted. Returns why it could
 * not, in plain words, or null. A password is asked for only where the account has a key already.
 */
export async function signDevice(client: MatrixClient, password: string | null): Promise<string | null> {
  const crypto = client.getCrypto();
  if (crypto === undefined) return 'Encryption is not there.';
  try {
    await crypto.bootstrapCrossSigning({
      authUploadDeviceSigningKeys: async (upload) => {
        await upload(null).catch(async (error: unknown) => {
          const session = uiaSession(error);
          if (session === null || password === null) throw error;
          const identifier = { type: 'm.id.user', user: client.getUserId() ?? '' };
          await upload({ type: 'm.login.password', identifier, password, session });
        });
      },
    });
    return (await crypto.isCrossSigningReady()) ? null : UNSIGNED;
  } catch {
    return UNSIGNED;
  }
}

const UNSIGNED =
  "The bot's device could not be signed by its account: phones will show a warning beside its posts. If the account was used elsewhere before, reset its identity there, then start again.";

function uiaSession(error: unknown): string | null {
  if (typeof error !== 'object' || error === null || !('data' in error)) return null;
  const { data } = error;
  if (typeof data !== 'object' || data === null || !('session' in data)) return null;
  return typeof data.session === 'string' ? data.session : null;
}
