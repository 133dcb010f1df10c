import type { DatabaseSync } from 'node:sqlite';
import { setTimeout as wait } from 'node:timers/promises';
import type { AuthDict } from 'matrix-js-sdk/lib/interactive-auth.js';
import { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import type { IStore } from 'matrix-js-sdk/lib/store/index.js';
import type { Vault } from './keys/key-backup.ts';
import { openKeyStore } from './keys/key-store.ts';
import { VERIFICATION_METHODS } from './rooms/verification.ts';
import { keepSignedIn } from './sign-in/renew.ts';
import type { Session } from './sign-in/session.ts';
import { silenceSdk, silent } from './silent-logger.ts';

/**
 * The client of a device that stays signed in, its keys opened from the folder. `failed` is told when a key cannot be written and must end the
 * process. One client a process.
 */
export async function openClient(
  db: DatabaseSync,
  session: Session,
  store: IStore,
  vault: Vault,
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
    verificationMethods: VERIFICATION_METHODS,
    cryptoCallbacks: { getSecretStorageKey: vault.callback },
  });
  void keepSignedIn(db, session, (token) => client.setAccessToken(token), failed).catch(failed);
  await client.initRustCrypto({ storageKey: session.storageKey });
  return client;
}

/** Tries of signing a new device: the homeserver has to know the device first. */
const TRIES = 5;

/**
 * Signs the bot's device with its account's own key, so that people's phones show it as trusted; to be called once the
 * first sync is through. A new device takes the account's key from its secret storage, where the recovery key was given.
 * Returns why it could not, in plain words, or null.
 */
export async function signDevice(client: MatrixClient, password: string | null): Promise<string | null> {
  const crypto = client.getCrypto();
  if (crypto === undefined) return 'Encryption is not there.';
  for (let tries = 0; tries < TRIES; tries++) {
    try {
      await crypto.userHasCrossSigningKeys(client.getSafeUserId(), true);
      if (await isSigned(client)) return null;
      await crypto.bootstrapCrossSigning({
        authUploadDeviceSigningKeys: (upload) => withPassword(client, upload, password),
      });
      if (await isSigned(client)) return null;
    } catch {
      // Told below, with what a person can do.
    }
    await wait(500 * (tries + 1));
  }
  return UNSIGNED;
}

/** The key is here and has signed this device. */
async function isSigned(client: MatrixClient): Promise<boolean> {
  const crypto = client.getCrypto();
  if (crypto === undefined || !(await crypto.isCrossSigningReady())) return false;
  const status = await crypto.getDeviceVerificationStatus(client.getSafeUserId(), client.getDeviceId() ?? '');
  return status?.signedByOwner === true;
}

/** A password is asked for only where the account has another key already. */
async function withPassword(
  client: MatrixClient,
  upload: (auth: AuthDict | null) => Promise<unknown>,
  password: string | null,
): Promise<void> {
  try {
    await upload(null);
  } catch (error) {
    const session = uiaSession(error);
    if (session === null || password === null) throw error;
    const identifier = { type: 'm.id.user', user: client.getSafeUserId() };
    await upload({ type: 'm.login.password', identifier, password, session });
  }
}

const UNSIGNED =
  "The bot's device could not be signed by its account: phones will show a warning beside its posts. Start once with the recovery key (SCANWARD_RECOVERY_KEY), or reset the account's identity in another client and start again.";

function uiaSession(error: unknown): string | null {
  if (typeof error !== 'object' || error === null || !('data' in error)) return null;
  const { data } = error;
  if (typeof data !== 'object' || data === null || !('session' in data)) return null;
  return typeof data.session === 'string' ? data.session : null;
}
