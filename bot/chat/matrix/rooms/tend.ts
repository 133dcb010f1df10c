import { type MatrixClient, Method, type Room } from 'matrix-js-sdk/lib/matrix.js';
import type { Practice } from '../../../../core/practice/practice.ts';
import { lines } from '../../../../core/words/message.ts';
import { isLedgerRoom } from '../ledger/ledger-room.ts';
import { postContent } from '../out/content.ts';
import { RoomNotReady, type Sender } from '../out/sender.ts';
import { waitFor } from '../out/wait-for.ts';
import type { RoomHomes } from './homes.ts';
import { stateOf } from './room-state.ts';

/** What the rooms are tended with. */
export interface TendingParts {
  readonly client: MatrixClient;
  readonly sender: Sender;
  readonly homes: RoomHomes;
  readonly practice: Practice;
  readonly say: (line: string) => void;
}

/**
 * Looks after the rooms: joins where it may, leaves where it is not needed, follows an upgraded room. Everything is told
 * from how the rooms stand, so a step that failed is tried again at the next look.
 */
export class Rooms {
  readonly #parts: TendingParts;
  readonly #told = new Set<string>();
  #looking = false;
  #again = false;

  constructor(parts: TendingParts) {
    this.#parts = parts;
  }

  /** Looks at every room; what happens while it looks is looked at again. */
  async look(): Promise<void> {
    this.#again = true;
    if (this.#looking) return;
    this.#looking = true;
    try {
      while (this.#again) {
        this.#again = false;
        for (const room of this.#parts.client.getRooms()) {
          await this.#lookAt(room).catch((error: unknown) => this.#troubled(room, error));
        }
      }
    } finally {
      this.#looking = false;
    }
  }

  /** Tried again at the next look; told once, since the next look is soon. */
  #troubled(room: Room, error: unknown): void {
    if (error instanceof RoomNotReady) return;
    const line = `The room ${room.roomId} gives trouble: ${error instanceof Error ? error.message : String(error)}`;
    if (!this.#told.has(line)) this.#parts.say(line);
    this.#told.add(line);
  }

  async #lookAt(room: Room): Promise<void> {
    const { homes } = this.#parts;
    const membership = room.getMyMembership();
    if (membership === 'invite') await this.#invited(room);
    if (membership !== 'join' || isLedgerRoom(room, this.#parts.client.getSafeUserId())) return;
    // Where somebody else may read along it is a room like any other.
    if (homes.isPrivate(room.roomId) && !isForTwo(room)) homes.dropPrivate(room.roomId);
    const home = homes.homeOf(room.roomId);
    if (home === null) await this.#leavePolitely(room);
    else await this.#followUpgrade(room, home);
  }

  async #invited(room: Room): Promise<void> {
    const { client, homes, say } = this.#parts;
    const me = room.getMember(client.getSafeUserId());
    const inviter = me?.events.member?.getSender() ?? '';
    if (!this.#mayInvite(inviter)) {
      say(
        `${inviter || 'Somebody'} asked me into a chat room. The practice file names nobody like that: refused.`,
      );
      await client.leave(room.roomId);
      return;
    }
    const direct = me?.events.member?.getContent().is_direct === true;
    if (direct && this.#isOurs(inviter) && isForTwo(room)) homes.addPrivate(room.roomId, inviter);
    await client.joinRoom(room.roomId);
    say(`Joined ${room.roomId}, asked by ${inviter}.`);
  }

  #mayInvite(inviter: string): boolean {
    const server = inviter.slice(inviter.indexOf(':') + 1);
    return this.#isOurs(inviter) || this.#parts.practice.servers?.includes(server) === true;
  }

  #isOurs(person: string): boolean {
    return this.#parts.practice.people.some(({ id }) => id === person);
  }

  async #leavePolitely(room: Room): Promise<void> {
    const { client, sender, say } = this.#parts;
    const message = lines(
      `This chat room is not in my practice file, so I am leaving again. Its id for the file is ${room.roomId}.`,
    );
    const key = `leaving/${room.roomId}`;
    const post = {
      does: 'post',
      key,
      room: room.roomId,
      message,
      about: 'answer',
      items: [],
      mentions: [],
    } as const;
    // One line, whatever happens: the transaction is the same at every try.
    const transaction = `leaving-${client.getDeviceId()}`;
    await sender
      .send(room.roomId, 'm.room.message', postContent(post, null), transaction)
      .catch((error: unknown) => {
        // Where it may not speak it can still leave.
        if (waitFor(error, 0) !== null) throw error;
      });
    await client.leave(room.roomId);
    say(`Left ${room.roomId}: it is not in the practice file.`);
  }

  /** A room that was replaced points to the new one, and the new one must point back. */
  async #followUpgrade(room: Room, home: string): Promise<void> {
    const { client, homes, say } = this.#parts;
    const tombstone = stateOf(room, 'm.room.tombstone');
    const next: unknown = tombstone?.getContent().replacement_room;
    if (typeof next !== 'string' || next === room.roomId || homes.refused(next)) return;
    const joined = client.getRoom(next);
    if (joined?.getMyMembership() !== 'join') {
      // Known before the joining, so that nothing that is said there meanwhile is passed over.
      homes.move(next, home);
      await this.#joinBy(next, tombstone?.getSender() ?? '');
      say(`The room ${room.roomId} was upgraded: joined ${next}.`);
      return;
    }
    const create = stateOf(joined, 'm.room.create');
    if (create !== null && create.getContent().predecessor?.room_id !== room.roomId) homes.refuse(next);
  }

  async #joinBy(room: string, sender: string): Promise<void> {
    const server = sender.split(':').slice(1).join(':');
    const via = server === '' ? {} : { via: [server], server_name: [server] };
    await this.#parts.client.http.authedRequest(Method.Post, `/join/${encodeURIComponent(room)}`, via, {});
  }
}

/** The program and one other person, invited or there. */
function isForTwo(room: Room): boolean {
  return room.getJoinedMemberCount() + room.getInvitedMemberCount() <= 2;
}
