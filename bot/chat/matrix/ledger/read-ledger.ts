import { setTimeout as wait } from 'node:timers/promises';
import { type MatrixClient, Method } from 'matrix-js-sdk/lib/matrix.js';
import { waitFor } from '../out/wait-for.ts';
import { type RawEvent, readEvent } from '../sync/read-event.ts';
import { fields } from '../sync/to-heard.ts';
import { pieceIn } from './batch.ts';
import type { KeptPiece } from './fold-ledger.ts';

/** Everything of the ledger room that may count. */
export interface LedgerRead {
  readonly pieces: readonly KeptPiece[];
  /** Events of ours whose keys were not in the backup. */
  readonly locked: number;
  /** Events that are not ours, or that came in clear: passed over. */
  readonly foreign: number;
}

/** The most that a homeserver is asked for at a time. */
const PAGE = 500;

/**
 * Reads the whole ledger room, oldest first. Only what the account itself sent, locked, counts: anything else could be
 * anybody's.
 */
export async function readLedger(client: MatrixClient, room: string): Promise<LedgerRead> {
  const me = client.getSafeUserId();
  const pieces: KeptPiece[] = [];
  let locked = 0;
  let foreign = 0;
  for await (const raw of eventsOf(client, room)) {
    if ('state_key' in raw || 'redacted_because' in fields(raw.unsigned)) continue;
    if (raw.sender !== me || raw.type !== 'm.room.encrypted') {
      foreign++;
      continue;
    }
    const read = await readEvent(client, raw, { room, home: room, fresh: true });
    if (read === 'locked') locked++;
    const piece = read === null || read === 'locked' ? null : pieceIn(read.type, read.content);
    if (piece !== null) pieces.push({ event: String(raw.event_id), piece });
  }
  return { pieces, locked, foreign };
}

async function* eventsOf(client: MatrixClient, room: string): AsyncGenerator<RawEvent> {
  let from: string | null = null;
  for (;;) {
    const page: Readonly<Record<string, unknown>> = await getPage(client, room, from);
    yield* Array.isArray(page.chunk) ? page.chunk.map(fields) : [];
    if (typeof page.end !== 'string' || page.end === from) return;
    from = page.end;
  }
}

async function getPage(client: MatrixClient, room: string, from: string | null) {
  const path = `/rooms/${encodeURIComponent(room)}/messages`;
  const query = { dir: 'f', limit: PAGE, ...(from === null ? {} : { from }) };
  for (let tries = 0; ; tries++) {
    try {
      return fields(await client.http.authedRequest(Method.Get, path, query));
    } catch (error) {
      const pause = waitFor(error, tries);
      if (pause === null) throw error;
      await wait(pause);
    }
  }
}
