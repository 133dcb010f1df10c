import { randomBytes } from 'node:crypto';
import type { DatabaseSync } from 'node:sqlite';
import { emptyKeyStore } from '../keys/key-store.ts';
import { factOf, setFact, together } from '../matrix-db.ts';

/** How a token that runs out is replaced (Client-Server API, Refreshing access tokens). */
export interface Renewal {
  readonly token: string;
  /** When the access token runs out, in ms since 1970; null where the homeserver does not say. */
  readonly until: number | null;
}

/** One device of one account: what a sign-in gave, kept beside its keys. */
export interface Session {
  readonly homeserver: string;
  readonly user: string;
  readonly device: string;
  readonly token: string;
  /** With what the token is renewed, where the homeserver lets tokens run out; null where it has none. */
  readonly renewal: Renewal | null;
  /** 32 bytes with which the key store is written. */
  readonly storageKey: Uint8Array;
}

/** As it stands in `matrix.db`; what an older program left out is missing. */
interface Kept {
  readonly homeserver?: string;
  readonly user?: string;
  readonly device?: string;
  readonly token?: string;
  readonly storageKey?: string;
  readonly renewal?: Renewal | null;
}

/** The device kept in the practice's folder, or null before the first sign-in. */
export function keptSession(db: DatabaseSync): Session | null {
  const text = factOf(db, 'session');
  if (text === null) return null;
  const { homeserver, user, device, token, storageKey, renewal }: Kept = JSON.parse(text);
  if (!homeserver || !user || !device || !token || !storageKey) return null;
  const key = Buffer.from(storageKey, 'base64');
  return { homeserver, user, device, token, renewal: renewal ?? null, storageKey: key };
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
