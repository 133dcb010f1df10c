import { IDBDatabase, type IDBFactory, IDBKeyRange } from 'fake-indexeddb';

/**
 * What `fake-indexeddb` 6.2.8 keeps inside, as far as the key store looks at it. The package is pinned exactly because
 * of this file: each look is checked, and a newer inside fails at the start, not by losing keys.
 */
export interface RawStore {
  readonly name: string;
  readonly keyPath: string | string[] | null;
  readonly autoIncrement: boolean;
  /** The record under a key now, or undefined. */
  get(key: unknown): { readonly key: unknown; readonly value: unknown } | undefined;
  all(): { readonly key: unknown; readonly value: unknown }[];
  indexes(): { name: string; keyPath: string | string[]; unique: boolean; multiEntry: boolean }[];
}

/** Told of each change to a record; `key` undefined for all of a store. */
export type OnChange = (store: object, key: unknown) => void;

let onChange: OnChange | null = null;
let watched = false;

/** Watches every change that is made to any record. One process may hold one key store: throws RangeError on a second. */
export async function watchRecords(factory: InstanceType<typeof IDBFactory>, told: OnChange): Promise<void> {
  if (onChange !== null) throw new RangeError('one process may open one key store');
  onChange = told;
  if (watched) return;
  watched = true;
  const prototype = Object.getPrototypeOf(await anyStore(factory));
  wrap(prototype, 'storeRecord', (store, args) => {
    const [record] = args;
    return () => onChange?.(store, Reflect.get(objectOf(record), 'key'));
  });
  wrap(prototype, 'deleteRecord', (store, [key]) => {
    const keys = key instanceof IDBKeyRange ? keysIn(store, key) : [key];
    return () => {
      for (const each of keys) onChange?.(store, each);
    };
  });
  wrap(prototype, 'clear', (store) => () => onChange?.(store, undefined));
}

/** Ends the watch, so that a test may open another store in the same process. */
export function unwatchRecords(): void {
  onChange = null;
}

/** Calls `begun` for every transaction of any database as it begins, before anyone else can listen to it. */
export function watchTransactions(begun: (transaction: IDBTransaction) => void): () => void {
  const original = IDBDatabase.prototype.transaction;
  IDBDatabase.prototype.transaction = function (...args) {
    const transaction = original.apply(this, args);
    begun(transaction);
    return transaction;
  };
  return () => {
    IDBDatabase.prototype.transaction = original;
  };
}

/** The stores of an open database. */
export function rawStores(database: object): ReadonlyMap<string, object> {
  const stores: unknown = Reflect.get(objectOf(Reflect.get(database, '_rawDatabase')), 'rawObjectStores');
  if (!(stores instanceof Map)) throw strange('the stores of a database');
  return stores;
}

/** A raw store, read through checks. */
export function rawStore(store: object): RawStore {
  const records = objectOf(Reflect.get(store, 'records'));
  const record = (value: unknown) => {
    const one = objectOf(value);
    return { key: Reflect.get(one, 'key'), value: Reflect.get(one, 'value') };
  };
  const keyPath = (of: object): string | string[] | null => {
    const path: unknown = Reflect.get(of, 'keyPath');
    if (path === null || typeof path === 'string') return path;
    if (Array.isArray(path)) return path.map(String);
    throw strange('a key path');
  };
  return {
    name: String(Reflect.get(store, 'name')),
    keyPath: keyPath(store),
    autoIncrement: Reflect.get(store, 'autoIncrement') === true,
    get: (key) => {
      const found: unknown = call(records, 'get', [key]);
      return found === undefined ? undefined : record(found);
    },
    all: () => [...iterable(call(records, 'values', []))].map(record),
    indexes: () => {
      const indexes: unknown = Reflect.get(store, 'rawIndexes');
      if (!(indexes instanceof Map)) throw strange('the indexes of a store');
      return [...indexes.values()].map((index: unknown) => {
        const of = objectOf(index);
        const flag = (name: string) => Reflect.get(of, name) === true;
        const name = String(Reflect.get(of, 'name'));
        return { name, keyPath: keyPath(of) ?? '', unique: flag('unique'), multiEntry: flag('multiEntry') };
      });
    },
  };
}

function keysIn(store: object, range: unknown): unknown[] {
  const records = objectOf(Reflect.get(store, 'records'));
  return [...iterable(call(records, 'values', [range]))].map((one) => Reflect.get(objectOf(one), 'key'));
}

function wrap(prototype: object, name: string, before: (store: object, args: unknown[]) => () => void): void {
  const original: unknown = Reflect.get(prototype, name);
  if (typeof original !== 'function') throw strange(name);
  Reflect.set(prototype, name, function (this: object, ...args: unknown[]): unknown {
    const after = before(this, args);
    const result: unknown = Reflect.apply(original, this, args);
    after();
    return result;
  });
}

async function anyStore(factory: InstanceType<typeof IDBFactory>): Promise<object> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const request = factory.open('scanward-look', 1);
    request.onupgradeneeded = () => request.result.createObjectStore('any');
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const store = rawStores(database).get('any');
  database.close();
  factory.deleteDatabase('scanward-look');
  if (store === undefined) throw strange('a store');
  return store;
}

function call(target: object, name: string, args: unknown[]): unknown {
  const method: unknown = Reflect.get(target, name);
  if (typeof method !== 'function') throw strange(name);
  return Reflect.apply(method, target, args);
}

function objectOf(value: unknown): object {
  if (typeof value !== 'object' || value === null) throw strange('an object');
  return value;
}

function iterable(value: unknown): Iterable<unknown> {
  if (typeof value === 'object' && value !== null && Symbol.iterator in value) {
    const own: unknown = value[Symbol.iterator];
    if (typeof own === 'function') return { [Symbol.iterator]: () => Reflect.apply(own, value, []) };
  }
  throw strange('a list of records');
}

function strange(what: string): Error {
  return new Error(`fake-indexeddb is not as 6.2.8 is: ${what}`);
}
