import { decodeRecoveryKey } from 'matrix-js-sdk/lib/crypto-api/index.js';
import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';
import { PlainError } from '../../../plain-error.ts';

/**
 * The key of the account's secret storage on the homeserver, while it is known in this process: given at the start to
 * take a machine over, or just made. It is never written to the practice's folder.
 */
export class Vault {
  #key: Uint8Array<ArrayBuffer> | null = null;

  /** `recoveryKey` as it was shown once. Throws PlainError where it is none. */
  open(recoveryKey: string): void {
    try {
      this.#key = new Uint8Array(decodeRecoveryKey(recoveryKey));
    } catch {
      throw new PlainError('SCANWARD_RECOVERY_KEY is no recovery key: check that all of it is there.');
    }
  }

  hold(key: Uint8Array<ArrayBuffer>): void {
    this.#key = key;
  }

  get isOpen(): boolean {
    return this.#key !== null;
  }

  /** What the SDK asks for when it needs the storage. */
  readonly callback = async (asked: {
    readonly keys: Readonly<Record<string, unknown>>;
  }): Promise<[string, Uint8Array<ArrayBuffer>] | null> => {
    const [name] = Object.keys(asked.keys);
    return this.#key === null || name === undefined ? null : [name, this.#key];
  };
}

/**
 * Backs the keys up on the homeserver, locked with a new recovery key, and gives that key to be shown once. An older
 * backup of the account is no longer written to. Needs the device's own cross-signing keys.
 */
export async function newRecoveryKey(client: MatrixClient, vault: Vault): Promise<string> {
  const crypto = client.getCrypto();
  if (crypto === undefined) throw new PlainError('Encryption is not there.');
  let shown: string | null = null;
  await crypto.bootstrapSecretStorage({
    setupNewSecretStorage: true,
    setupNewKeyBackup: true,
    createSecretStorageKey: async () => {
      const made = await crypto.createRecoveryKeyFromPassphrase();
      vault.hold(made.privateKey);
      shown = made.encodedPrivateKey ?? null;
      return made;
    },
  });
  if (shown === null) throw new PlainError('The homeserver took no new recovery key. Try again.');
  return shown;
}

/**
 * Goes on with the backup there is; with the recovery key given, a new device gets back the keys of what was said before.
 * Gives the version of the backup that is written to, or null where there is none, and how many keys came back.
 */
export async function useBackup(
  client: MatrixClient,
  vault: Vault,
): Promise<{ readonly version: string | null; readonly restored: number }> {
  const crypto = client.getCrypto();
  if (crypto === undefined) return { version: null, restored: 0 };
  let restored = 0;
  if (vault.isOpen && (await crypto.getKeyBackupInfo()) !== null) {
    await crypto.loadSessionBackupPrivateKeyFromSecretStorage();
    restored = (await crypto.restoreKeyBackup()).imported;
  }
  await crypto.checkKeyBackupAndEnable();
  return { version: await crypto.getActiveSessionBackupVersion(), restored };
}
