import { type IRoomEvent, type MatrixClient, MatrixEvent } from 'matrix-js-sdk/lib/matrix.js';
import type { Vouched } from '../../../../core/record/vouched.ts';
import { fields, type ReadEvent } from './to-heard.ts';
import { isSignedByOwner, powerOf } from './vouching.ts';

/** An event as the homeserver gives it: everything that is looked at is checked where it is looked at. */
export type RawEvent = Readonly<Record<string, unknown>>;

/**
 * An event read: decrypted where it was encrypted. `'locked'` where its key is not there yet; null for one that is
 * deleted or no room event. `home` is the room's id in the practice file.
 */
export async function readEvent(
  client: MatrixClient,
  raw: RawEvent,
  at: { readonly room: string; readonly home: string; readonly fresh?: boolean },
): Promise<ReadEvent | 'locked' | null> {
  const { event_id: id, sender, origin_server_ts: time, type } = raw;
  if (typeof id !== 'string' || typeof sender !== 'string' || typeof type !== 'string') return null;
  if (typeof time !== 'number' || 'redacted_because' in fields(raw.unsigned)) return null;
  const base = {
    id,
    room: at.home,
    sender,
    at: time,
    redacts: typeof raw.redacts === 'string' ? raw.redacts : null,
  };
  if (type !== 'm.room.encrypted') {
    const vouched: Vouched = { device: 'in-clear', power: powerOf(client, at.room, sender) };
    return { ...base, type, content: fields(raw.content), wire: fields(raw.content), vouched };
  }
  const event = sdkEvent(client, raw, at);
  await client.decryptEventIfNeeded(event);
  if (event.isRedacted()) return null;
  if (event.isDecryptionFailure() || event.getType() === 'm.room.encrypted') return 'locked';
  // The content as first sent: the SDK's own getContent() already shows a later edit.
  const content = fields(event.getOriginalContent());
  const device = (await isSignedByOwner(client, event)) ? 'signed' : 'unsigned';
  const vouched: Vouched = { device, power: powerOf(client, at.room, sender) };
  return { ...base, type: event.getType(), content, wire: fields(event.getWireContent()), vouched };
}

/** The SDK decrypts what its sync brought by itself: that work is waited for, not done twice. */
function sdkEvent(client: MatrixClient, raw: RawEvent, at: { room: string; fresh?: boolean }): MatrixEvent {
  const known = at.fresh === true ? undefined : client.getRoom(at.room)?.findEventById(String(raw.event_id));
  if (known !== undefined) return known;
  const event: Partial<IRoomEvent> = { ...raw };
  return new MatrixEvent({ ...event, room_id: at.room });
}
