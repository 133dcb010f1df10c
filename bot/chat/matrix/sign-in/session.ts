import { randomBytes } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';
import { emptyKeyStore } from '../keys/key-store.ts';
import { factOf, setFact, together } from '../matrix-db.ts';

/** One device of one account: what a sign-in gave, kept beside its keys. */
export interface Session {
  readonly homeserver: string;
  readonly user: string;
  readonly device: string;
  readonly token: string;
  /** 32 bytes with which the key store is written. */
  readonly storageKey: Uint8Array;
}

/** The device kept in the practice's folder, or null before the first sign-in. */
export function keptSession(db: DatabaseSync): Session | null {
  const text = factOf(db, 'session');
  if (text === null) return null;
  const { homeserver, user, device, token, storageKey }: Record<string, string | undefined> =
    JSON.parse(text);
  if (!homeserver || !user || !device || !token || !storageKey) return null;
  return { homeserver, user, device, token, storageKey: Buffer.from(storageKey, 'base64') };
}

/** Keeps a device. */
export function keepSession(db: DatabaseSync, session: Session): void {
  const storageKey = Buffer.from(session.storageKey).toString('base64');
  setFact(db, 'session', JSON.stringify({ ...session, storageKey }));
}

/** Forgets the device and all its keys, for a new one. What the rooms said stays. */
export function forgetDevice(db: DatabaseSync): void {
  together(db, () => {
    db.exec("DELETE FROM fact WHERE name = 'session'");
    emptyKeyStore(db);
  });
}

/** A key for the key store of a new device. */
export function newStorageKey(): Uint8Array {
  return randomBytes(32);
}
