import { setTimeout as wait } from 'node:timers/promises';
import { type MatrixClient, Method } from 'matrix-js-sdk/lib/matrix.js';
import { waitFor } from '../out/wait-for.ts';
import type { RawEvent } from './read-event.ts';
import { fields } from './to-heard.ts';

/** The most events that a homeserver is asked for at a time. */
const PAGE = 200;

/**
 * What a sync left out between two positions, oldest first. A homeserver gives only the last few events of a busy room
 * and says so; the rest is read page by page. Keeps trying while the server is away; gives up where it may not be read.
 */
export async function readGap(
  client: MatrixClient,
  room: string,
  from: string,
  to: string,
): Promise<readonly RawEvent[]> {
  const events: RawEvent[] = [];
  let at: string | null = from;
  while (at !== null && at !== to) {
    const page: Readonly<Record<string, unknown>> | null = await getPage(client, room, at, to);
    if (page === null) break;
    const chunk = Array.isArray(page.chunk) ? page.chunk : [];
    events.push(...chunk.map(fields));
    at = typeof page.end === 'string' && page.end !== at ? page.end : null;
  }
  return events;
}

async function getPage(client: MatrixClient, room: string, from: string, to: string) {
  const path = `/rooms/${encodeURIComponent(room)}/messages`;
  for (let tries = 0; ; tries++) {
    try {
      const query = { from, to, dir: 'f', limit: PAGE };
      return fields(await client.http.authedRequest(Method.Get, path, query));
    } catch (error) {
      const pause = waitFor(error, tries);
      if (pause === null) return null;
      await wait(pause);
    }
  }
}
