import type { DatabaseSync } from 'node:sqlite';
import { deserialize, serialize } from 'node:v8';
import * as inMemory from 'fake-indexeddb';
import { IDBFactory } from 'fake-indexeddb';
import { together } from '../matrix-db.ts';
import { keyText } from './key-text.ts';
import { rawStore, rawStores, unwatchRecords, watchRecords, watchTransactions } from './raw-store.ts';

interface StoreShape {
  readonly name: string;
  readonly keyPath: string | string[] | null;
  readonly autoIncrement: boolean;
  readonly indexes: { name: string; keyPath: string | string[]; unique: boolean; multiEntry: boolean }[];
}

/**
 * The key store of the encryption: IndexedDB in memory, each transaction written through to `matrix.db` before its
 * `complete` is told, so that what the program has acted on is on the disk. A write that fails is told to `failed`, which
 * must end the process: a ratchet that goes on while its keys are not kept could not be read again.
 */
export async function openKeyStore(db: DatabaseSync, failed: (error: unknown) => void): Promise<() => void> {
  const factory = new IDBFactory();
  const dirty = new Map<object, Map<string, unknown> | 'all'>();
  await load(db, factory);
  const put = db.prepare('INSERT OR REPLACE INTO key_row (base, store, id, body) VALUES (?, ?, ?, ?)');
  const drop = db.prepare('DELETE FROM key_row WHERE base = ? AND store = ? AND id = ?');
  const dropAll = db.prepare('DELETE FROM key_row WHERE base = ? AND store = ?');
  const dropBase = db.prepare('DELETE FROM key_row WHERE base = ?');
  const shape = db.prepare('INSERT OR REPLACE INTO key_base (name, version, shape) VALUES (?, ?, ?)');

  const keepWhole = (base: string, store: object) => {
    const raw = rawStore(store);
    dropAll.run(base, raw.name);
    for (const { key, value } of raw.all()) put.run(base, raw.name, keyText(key), bytesOf(key, value));
  };
  const keepChanged = (base: string, store: object, keys: ReadonlyMap<string, unknown>) => {
    const raw = rawStore(store);
    for (const [id, key] of keys) {
      const now = raw.get(key);
      if (now === undefined) drop.run(base, raw.name, id);
      else put.run(base, raw.name, id, bytesOf(now.key, now.value));
    }
  };
  const keep = (transaction: IDBTransaction) => {
    const { name } = transaction.db;
    const stores = rawStores(transaction.db);
    if (transaction.mode === 'versionchange') {
      dropBase.run(name);
      shape.run(name, transaction.db.version, JSON.stringify([...stores.values()].map(shapeOf)));
      for (const store of stores.values()) keepWhole(name, store);
      return;
    }
    for (const store of stores.values()) {
      const changed = dirty.get(store);
      if (changed === undefined || !transaction.objectStoreNames.contains(rawStore(store).name)) continue;
      if (changed === 'all') keepWhole(name, store);
      else keepChanged(name, store, changed);
      dirty.delete(store);
    }
  };

  await watchRecords(factory, (store, key) => {
    const changed = dirty.get(store);
    if (key === undefined) dirty.set(store, 'all');
    else if (changed === undefined) dirty.set(store, new Map([[keyText(key), key]]));
    else if (changed !== 'all') changed.set(keyText(key), key);
  });
  const unwatch = watchTransactions((transaction) => {
    if (transaction.mode === 'readonly') return;
    transaction.addEventListener('complete', (event) => {
      try {
        together(db, () => keep(transaction));
      } catch (error) {
        event.stopImmediatePropagation();
        failed(error);
      }
    });
  });
  // The encryption asks of each object which class it has: all of them must be global.
  const classes = Object.entries(inMemory).filter(([name]) => name.startsWith('IDB'));
  Object.assign(globalThis, Object.fromEntries(classes), { indexedDB: factory });
  return () => {
    unwatch();
    unwatchRecords();
  };
}

/** Forgets every key: for a new device, which cannot use the old one's. */
export function emptyKeyStore(db: DatabaseSync): void {
  db.exec('DELETE FROM key_row; DELETE FROM key_base');
}

async function load(db: DatabaseSync, factory: IDBFactory): Promise<void> {
  const rows = db.prepare('SELECT store, body FROM key_row WHERE base = ?');
  for (const { name, version, shape } of db.prepare('SELECT name, version, shape FROM key_base').all()) {
    const shapes: StoreShape[] = JSON.parse(String(shape));
    const records = rows.all(String(name));
    await new Promise<void>((resolve, reject) => {
      const request = factory.open(String(name), Number(version));
      request.onupgradeneeded = () => fill(request.result, shapes, records, request.transaction);
      request.onsuccess = () => {
        request.result.close();
        resolve();
      };
      request.onerror = () => reject(request.error ?? new Error('the keys could not be read back'));
    });
  }
}

function fill(
  database: IDBDatabase,
  shapes: readonly StoreShape[],
  records: readonly Record<string, unknown>[],
  transaction: IDBTransaction | null,
): void {
  for (const { name, keyPath, autoIncrement, indexes } of shapes) {
    const store = database.createObjectStore(name, { keyPath, autoIncrement });
    for (const index of indexes) {
      store.createIndex(index.name, index.keyPath, { unique: index.unique, multiEntry: index.multiEntry });
    }
  }
  for (const { store, body } of records) {
    if (!(body instanceof Uint8Array) || transaction === null) continue;
    const { key, value } = deserialize(body);
    const target = transaction.objectStore(String(store));
    if (target.keyPath === null) target.put(value, key);
    else target.put(value);
  }
}

function bytesOf(key: unknown, value: unknown): Uint8Array {
  return serialize({ key, value });
}

function shapeOf(store: object): StoreShape {
  const { name, keyPath, autoIncrement, indexes } = rawStore(store);
  return { name, keyPath, autoIncrement, indexes: indexes() };
}
