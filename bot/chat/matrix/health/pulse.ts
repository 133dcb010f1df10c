import { utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { DatabaseSync } from 'node:sqlite';
import { setFact } from '../matrix-db.ts';

/** How often the pulse is written down, in ms: often enough for a watcher that looks each minute. */
const EVERY_MS = 15_000;

/** Name of the file in the practice's folder whose time an outside watcher looks at. */
const HEARTBEAT = 'heartbeat';

/**
 * Shows from outside that the program lives and hears: the time of `heartbeat` is that of its last turn with a sync that
 * is under two minutes old. A homeserver answers a waiting sync every 30 s even when nobody speaks.
 */
export class Pulse {
  readonly #db: DatabaseSync;
  readonly #file: string;
  #synced = 0;
  #kept = 0;
  #beaten = 0;

  constructor(db: DatabaseSync, folder: string) {
    this.#db = db;
    this.#file = join(folder, HEARTBEAT);
  }

  synced(now: number): void {
    this.#synced = now;
    if (now - this.#kept >= EVERY_MS) {
      this.#kept = now;
      setFact(this.#db, 'synced', new Date(now).toISOString());
    }
    this.beat(now);
  }

  beat(now: number): void {
    if (now - this.#beaten < EVERY_MS || now - this.#synced > 120_000) return;
    this.#beaten = now;
    try {
      utimesSync(this.#file, now / 1000, now / 1000);
    } catch {
      writeFileSync(this.#file, '');
    }
  }
}
