import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openKeyStore } from '../../../bot/chat/matrix/keys/key-store.ts';
import { keyText } from '../../../bot/chat/matrix/keys/key-text.ts';
import { openMatrixDb } from '../../../bot/chat/matrix/matrix-db.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'scanward-keys-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('what a transaction wrote is in the file before its completion is told, and read back by the next process', async () => {
  const db = openMatrixDb(folder);
  const rows = () => db.prepare('SELECT count(*) AS n FROM key_row WHERE store = ?').get('sessions')?.n;
  const close = await openKeyStore(db, () => undefined);
  const base = await open('keys', 2);
  await inOne(base, (store) => {
    store.put({ room: 'r', pickle: new Uint8Array([1, 2, 250]) }, 'a');
    store.put({ room: 'r', pickle: 'zwei' }, ['b', 7]);
    store.put({ room: 's', pickle: 'drei' }, 'c');
  });
  expect(rows()).toBe(3);
  await inOne(base, (store) => {
    store.delete('c');
    store.put({ room: 't', pickle: 'neu' }, ['b', 7]);
  });
  expect(rows()).toBe(2);
  close();
  const again = await openKeyStore(db, () => undefined);
  const reopened = await open('keys', 2);
  const found = await read(reopened);
  expect(found.a).toEqual({ room: 'r', pickle: new Uint8Array([1, 2, 250]) });
  expect(found['b,7']).toEqual({ room: 't', pickle: 'neu' });
  expect(Object.keys(found)).toHaveLength(2);
  again();
  db.close();
});

test('a write that fails is told, and completion is not', async () => {
  const db = openMatrixDb(folder);
  let told: unknown = null;
  const close = await openKeyStore(db, (error) => {
    told = error;
  });
  const base = await open('keys', 1);
  db.exec('DROP TABLE key_row');
  let completed = false;
  void inOne(base, (store) => store.put({ room: 'r' }, 'a')).then(() => {
    completed = true;
  });
  await expect.poll(() => told).not.toBeNull();
  expect(completed).toBe(false);
  close();
});

test('a second key store in one process is refused', async () => {
  const db = openMatrixDb(folder);
  const close = await openKeyStore(db, () => undefined);
  await expect(openKeyStore(db, () => undefined)).rejects.toThrow(RangeError);
  close();
  db.close();
});

test('the file may be read by its owner alone', () => {
  openMatrixDb(folder).close();
  expect(statSync(join(folder, 'matrix.db')).mode & 0o077).toBe(0);
});

test('different keys have different texts', () => {
  const key = fc.letrec((tie) => ({
    key: fc.oneof(
      fc.string(),
      fc.double({ noNaN: true }).map((n) => n + 0),
      fc.uint8Array(),
      fc.array(tie('key'), { maxLength: 3 }),
    ),
  })).key;
  fc.assert(
    fc.property(key, key, (a, b) => {
      expect(keyText(a) === keyText(b)).toBe(isDeepStrictEqual(a, b));
    }),
  );
});

function open(name: string, version: number): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = globalThis.indexedDB.open(name, version);
    request.onupgradeneeded = () => {
      const store = request.result.createObjectStore('sessions');
      store.createIndex('room', 'room', { unique: false });
    };
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

function inOne(base: IDBDatabase, work: (store: IDBObjectStore) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const transaction = base.transaction('sessions', 'readwrite');
    transaction.oncomplete = () => resolve();
    transaction.onerror = () => reject(transaction.error);
    work(transaction.objectStore('sessions'));
  });
}

function read(base: IDBDatabase): Promise<Record<string, unknown>> {
  return new Promise((resolve) => {
    const found: Record<string, unknown> = {};
    const request = base.transaction('sessions').objectStore('sessions').openCursor();
    request.onsuccess = () => {
      const cursor = request.result;
      if (cursor === null) return resolve(found);
      found[String(cursor.key)] = cursor.value;
      cursor.continue();
    };
  });
}
