import { setTimeout as wait } from 'node:timers/promises';
import { type MatrixClient, Method } from 'matrix-js-sdk/lib/matrix.js';
import { waitFor } from '../out/wait-for.ts';
import type { RawEvent } from './read-event.ts';
import { fields } from './to-heard.ts';

/** Where reading back ends. */
export interface ReadBack {
  /** The record has this event. */
  readonly known: (event: string) => boolean;
  /** Instant of the last line of the record, ms. */
  readonly last: number;
}

/** A room in which nothing known turns up is read back for no longer than this before the record's last line, ms. */
const LONGEST_MS = 24 * 3_600_000;
/** Homeservers' clocks and the way of a note: what was typed so long before the last line may be not in it, ms. */
const MARGIN_MS = 2 * 60_000;
const PAGE = 100;

/**
 * What was typed in a room after the record's last line, oldest first, from the end of it (`newest`, and `from` before
 * that): what stands after the last event that the record knows, or, where it knows none, what is young enough.
 */
export async function readBack(
  client: MatrixClient,
  room: string,
  { newest, from }: { readonly newest: readonly RawEvent[]; readonly from: string | undefined },
  { known, last }: ReadBack,
): Promise<readonly RawEvent[]> {
  const isKnown = (event: RawEvent) => known(String(event.event_id));
  const isOld = (event: RawEvent) => timeOf(event) < last - LONGEST_MS;
  let events = [...newest];
  let at = from;
  while (at !== undefined && !events.some((event) => isKnown(event) || isOld(event))) {
    const page = await getPage(client, room, at);
    const chunk = Array.isArray(page?.chunk) ? page.chunk.map(fields) : [];
    events = [...chunk.reverse(), ...events];
    at = chunk.length > 0 && typeof page?.end === 'string' && page.end !== at ? page.end : undefined;
  }
  const place = events.findLastIndex(isKnown);
  return place === -1 ? events.filter((event) => timeOf(event) >= last - MARGIN_MS) : events.slice(place + 1);
}

function timeOf({ origin_server_ts: time }: RawEvent): number {
  return typeof time === 'number' ? time : 0;
}

async function getPage(client: MatrixClient, room: string, from: string) {
  const path = `/rooms/${encodeURIComponent(room)}/messages`;
  for (let tries = 0; ; tries++) {
    try {
      return fields(await client.http.authedRequest(Method.Get, path, { from, dir: 'b', limit: PAGE }));
    } catch (error) {
      const pause = waitFor(error, tries);
      if (pause === null) return null;
      await wait(pause);
    }
  }
}
