import { type IRoomEvent, type MatrixClient, MatrixEvent, Method } from 'matrix-js-sdk/lib/matrix.js';
import { answerTo } from './seen.ts';

/** What the bot said in a room, oldest first, as the homeserver has it now. */
export async function saidInRoom(client: MatrixClient, room: string): Promise<readonly IRoomEvent[]> {
  const said: IRoomEvent[] = [];
  let from: string | undefined;
  do {
    const query = { dir: 'b', limit: 500, ...(from === undefined ? {} : { from }) };
    const path = `/rooms/${encodeURIComponent(room)}/messages`;
    const page: { chunk: IRoomEvent[]; end?: string } = await client.http.authedRequest(
      Method.Get,
      path,
      query,
    );
    said.push(...page.chunk.filter(({ sender }) => sender.startsWith('@scanward:')));
    from = page.chunk.length === 0 ? undefined : page.end;
  } while (from !== undefined);
  return said.reverse();
}

/** The notes that the bot's messages in a room answer, oldest first: what an event answers stands in clear. */
export async function answeredIn(client: MatrixClient, room: string): Promise<readonly string[]> {
  const said = await saidInRoom(client, room);
  return said.flatMap(({ content }) => answerTo(content) ?? []);
}

/**
 * Messages of the bot's in a room that a phone has no key for: a person would see that they cannot be read. With `to`, answers
 * to these notes alone: what was said before a phone was there is not for it.
 */
export async function unreadableIn(
  client: MatrixClient,
  room: string,
  to?: ReadonlySet<string>,
): Promise<readonly string[]> {
  const unreadable: string[] = [];
  for (const raw of await saidInRoom(client, room)) {
    if (to !== undefined && !to.has(answerTo(raw.content) ?? '')) continue;
    const event = new MatrixEvent({ ...raw, room_id: room });
    await client.decryptEventIfNeeded(event);
    if (event.isDecryptionFailure()) unreadable.push(raw.event_id);
  }
  return unreadable;
}
