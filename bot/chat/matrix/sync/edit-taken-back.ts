import { type MatrixClient, Method } from 'matrix-js-sdk/lib/matrix.js';
import type { Heard } from '../../../keeper/heard.ts';
import { readEvent } from './read-event.ts';
import { fields, type ReadEvent, toHeard } from './to-heard.ts';

type Redaction = Extract<Heard, { sort: 'redaction' }>;

/**
 * What a note says again once an edit of it was deleted: its newest edit that stands, else its first text (Client-Server
 * API, Redactions of edited events). Null where the note itself is gone, or cannot be read.
 */
export async function editTakenBack(
  client: MatrixClient,
  me: string,
  at: { readonly room: string; readonly home: string },
  redaction: Redaction,
  original: string,
): Promise<Heard | null> {
  const note = await readOne(
    client,
    at,
    `/rooms/${encodeURIComponent(at.room)}/event/${encodeURIComponent(original)}`,
  );
  const heard = note === null ? null : toHeard(note, me);
  if (note === null || heard?.sort !== 'note') return null;
  const edits = await editsOf(client, at, original);
  const standing = edits
    .filter(({ sender, id }) => sender === note.sender && id !== redaction.redacts)
    // The newest by the server's time; two of one instant by their ids (Event replacements, Client behaviour).
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1))
    .map((edit) => toHeard(edit, me))
    .findLast((edit) => edit?.sort === 'edit');
  const text = standing?.sort === 'edit' ? standing.text : heard.text;
  const { id, room, at: when, vouched } = redaction;
  const edit = { sort: 'edit', id, room, at: when, from: note.sender, edits: original, text } as const;
  return { ...edit, byDeletion: true, ...(vouched === undefined ? {} : { vouched }) };
}

async function editsOf(
  client: MatrixClient,
  at: { readonly room: string; readonly home: string },
  original: string,
): Promise<readonly ReadEvent[]> {
  const path = `/rooms/${encodeURIComponent(at.room)}/relations/${encodeURIComponent(original)}/m.replace`;
  const prefix = { prefix: '/_matrix/client/v1' };
  const answer = fields(await client.http.authedRequest(Method.Get, path, { limit: 50 }, undefined, prefix));
  const chunk = Array.isArray(answer.chunk) ? answer.chunk : [];
  const read = await Promise.all(chunk.map((raw) => readEvent(client, fields(raw), { ...at, fresh: true })));
  return read.filter((one): one is ReadEvent => one !== null && one !== 'locked');
}

async function readOne(
  client: MatrixClient,
  at: { readonly room: string; readonly home: string },
  path: string,
): Promise<ReadEvent | null> {
  const raw = fields(await client.http.authedRequest(Method.Get, path));
  const read = await readEvent(client, raw, { ...at, fresh: true });
  return read === 'locked' ? null : read;
}
