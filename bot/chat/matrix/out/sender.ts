import type { DatabaseSync } from 'node:sqlite';
import { type MatrixClient, MatrixEvent, Method, type Room } from 'matrix-js-sdk/lib/matrix.js';
import { stateOf } from '../rooms/room-state.ts';
import type { Content } from './content.ts';

/** A chat room into which nothing can be sent for now: not joined, or not loaded yet. It holds back that room alone. */
export class RoomNotReady extends Error {
  override readonly name = 'RoomNotReady';
}

/**
 * Sends events. The SDK sends in clear where a room's state is not loaded yet: here a room must be joined, loaded and
 * known to be encrypted or not, and one that was ever seen encrypted is never sent to in clear.
 */
export class Sender {
  readonly #client: MatrixClient;
  readonly #db: DatabaseSync;
  #live = false;

  constructor(client: MatrixClient, db: DatabaseSync) {
    this.#client = client;
    this.#db = db;
  }

  /** The first sync with the homeserver is through: the rooms are known. */
  live(): void {
    this.#live = true;
  }

  /** Sends a message or a reaction; the same transaction again gives the same event. */
  async send(roomId: string, type: string, content: Content, transaction: string): Promise<string> {
    const room = this.#room(roomId);
    const clear = type === 'm.reaction' || !(await this.isEncrypted(room));
    const wire = clear ? { type, content } : await this.#encrypted(room, type, content);
    return this.#put(
      `/rooms/${encodeURIComponent(roomId)}/send/${encodeURIComponent(wire.type)}/${encodeURIComponent(transaction)}`,
      wire.content,
    );
  }

  /**
   * Sends into an encrypted room and nowhere else; gives the event and the key (Megolm session) that it was locked with.
   * Throws Error where the room is not encrypted.
   */
  async sendLocked(
    roomId: string,
    type: string,
    content: Content,
    transaction: string,
  ): Promise<{ readonly event: string; readonly session: string }> {
    const room = this.#room(roomId);
    if (!(await this.isEncrypted(room))) throw new Error(`${roomId} is not encrypted`);
    const wire = await this.#encrypted(room, type, content);
    const path = `/rooms/${encodeURIComponent(roomId)}/send/${encodeURIComponent(wire.type)}/${encodeURIComponent(transaction)}`;
    const event = await this.#put(path, wire.content);
    return { event, session: String(wire.content.session_id) };
  }

  async redact(roomId: string, event: string, transaction: string): Promise<string> {
    this.#room(roomId);
    return this.#put(
      `/rooms/${encodeURIComponent(roomId)}/redact/${encodeURIComponent(event)}/${encodeURIComponent(transaction)}`,
      {},
    );
  }

  async setState(roomId: string, type: string, content: Content): Promise<string> {
    this.#room(roomId);
    return this.#put(`/rooms/${encodeURIComponent(roomId)}/state/${encodeURIComponent(type)}/`, content);
  }

  /** The room, joined and loaded. Throws RoomNotReady. */
  loaded(roomId: string): Room {
    return this.#room(roomId);
  }

  async isEncrypted(room: Room): Promise<boolean> {
    const seen = this.#db.prepare('SELECT 1 AS yes FROM locked_room WHERE room = ?').get(room.roomId);
    if (seen !== undefined) return true;
    const crypto = this.#client.getCrypto();
    const says =
      room.hasEncryptionStateEvent() || (await crypto?.isEncryptionEnabledInRoom(room.roomId)) === true;
    if (says) this.#db.prepare('INSERT OR IGNORE INTO locked_room (room) VALUES (?)').run(room.roomId);
    return says;
  }

  #room(roomId: string): Room {
    const room = this.#live ? this.#client.getRoom(roomId) : null;
    if (room === null || room.getMyMembership() !== 'join') throw new RoomNotReady(roomId);
    // Every room has its creation in its state: without it the state is not there, and so nothing about encryption.
    if (stateOf(room, 'm.room.create') === null) throw new RoomNotReady(roomId);
    return room;
  }

  async #encrypted(room: Room, type: string, content: Content): Promise<{ type: string; content: Content }> {
    const crypto: object | undefined = this.#client.getCrypto();
    const encrypt: unknown = crypto === undefined ? undefined : Reflect.get(crypto, 'encryptEvent');
    if (crypto === undefined || typeof encrypt !== 'function') throw new Error('encryption is not there');
    const event = new MatrixEvent({ type, content: { ...content }, room_id: room.roomId });
    await Reflect.apply(encrypt, crypto, [event, room]);
    const wire = event.getWireContent();
    if (event.getWireType() !== 'm.room.encrypted' || typeof wire.ciphertext !== 'string') {
      throw new Error('a message was not encrypted and was held back');
    }
    return { type: 'm.room.encrypted', content: wire };
  }

  async #put(path: string, content: Content): Promise<string> {
    const answer: unknown = await this.#client.http.authedRequest(Method.Put, path, undefined, {
      ...content,
    });
    if (typeof answer === 'object' && answer !== null && 'event_id' in answer) return String(answer.event_id);
    throw new Error('the homeserver gave no event id');
  }
}
