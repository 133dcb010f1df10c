import type { MatrixClient, Room } from 'matrix-js-sdk/lib/matrix.js';
import { MatrixError, Method } from 'matrix-js-sdk/lib/matrix.js';
import { stateOf } from '../rooms/room-state.ts';
import { fields } from '../sync/to-heard.ts';

/** Type of the room, so that it is known before anything else is. */
const ROOM_TYPE = 'scanward.ledger';
/** Where the account says which room it is. */
const POINTER = 'scanward.ledger';
/** In the room's state: which epoch writes, and from which device. */
const CLAIM = 'scanward.ledger.claim';
/** Nobody but the bot's account writes, invites or changes anything there. */
const POWERS = {
  users_default: 0,
  events_default: 100,
  state_default: 100,
  invite: 100,
  redact: 100,
  kick: 100,
};

/** Who may write to the ledger: the machine that took over last. */
export interface Claim {
  readonly epoch: number;
  readonly device: string;
}

/** Whether a room is a ledger, this account's own. */
export function isLedgerRoom(room: Room, me: string): boolean {
  const create = stateOf(room, 'm.room.create');
  return create?.getContent().type === ROOM_TYPE && create.getSender() === me;
}

/** The account's ledger room, or null where it has none. */
export async function findLedgerRoom(client: MatrixClient): Promise<string | null> {
  const path = `/user/${encodeURIComponent(client.getSafeUserId())}/account_data/${POINTER}`;
  const { room } = await orNothing(client.http.authedRequest(Method.Get, path));
  return typeof room === 'string' ? room : null;
}

/** Makes the ledger room and points the account to it. */
export async function makeLedgerRoom(client: MatrixClient, practice: string): Promise<string> {
  const me = client.getSafeUserId();
  const made = fields(
    await client.http.authedRequest(Method.Post, '/createRoom', undefined, {
      preset: 'private_chat',
      visibility: 'private',
      creation_content: { type: ROOM_TYPE, 'm.federate': false },
      name: `Ledger of ${practice}`,
      topic: 'The record, locked, from which another machine can go on. There is nothing to read here.',
      // The maker's own power is the server's business: in newer rooms it may not be listed.
      power_level_content_override: POWERS,
      initial_state: [
        { type: 'm.room.encryption', state_key: '', content: { algorithm: 'm.megolm.v1.aes-sha2' } },
        { type: 'm.room.history_visibility', state_key: '', content: { history_visibility: 'joined' } },
      ],
    }),
  );
  if (typeof made.room_id !== 'string') throw new Error('the homeserver made no ledger room');
  const path = `/user/${encodeURIComponent(me)}/account_data/${POINTER}`;
  await client.http.authedRequest(Method.Put, path, undefined, { room: made.room_id });
  return made.room_id;
}

/** Who writes there now, asked of the homeserver; epoch 0 where nobody does yet. */
export async function claimOf(client: MatrixClient, room: string): Promise<Claim> {
  const path = `/rooms/${encodeURIComponent(room)}/state/${CLAIM}/`;
  return claimIn(await orNothing(client.http.authedRequest(Method.Get, path)));
}

/** The same as the last sync told it. */
export function claimSeen(room: Room): Claim {
  return claimIn(fields(stateOf(room, CLAIM)?.getContent()));
}

/** Takes over: whoever writes in an earlier epoch has to stop. */
export async function claim(client: MatrixClient, room: string, { epoch, device }: Claim): Promise<void> {
  const path = `/rooms/${encodeURIComponent(room)}/state/${CLAIM}/`;
  await client.http.authedRequest(Method.Put, path, undefined, { epoch, device });
}

function claimIn({ epoch, device }: Readonly<Record<string, unknown>>): Claim {
  return {
    epoch: typeof epoch === 'number' ? epoch : 0,
    device: typeof device === 'string' ? device : '',
  };
}

async function orNothing(asked: Promise<unknown>): Promise<Readonly<Record<string, unknown>>> {
  try {
    return fields(await asked);
  } catch (error) {
    if (error instanceof MatrixError && error.errcode === 'M_NOT_FOUND') return {};
    throw error;
  }
}
