import { setTimeout as wait } from 'node:timers/promises';
import { Attachment, EncryptedAttachment } from '@matrix-org/matrix-sdk-crypto-wasm';
import {
  ClientEvent,
  EventType,
  MatrixClient,
  type MatrixEvent,
  MatrixScheduler,
  MemoryStore,
  Method,
  MsgType,
  Preset,
  RelationType,
  RoomEvent,
  SyncState,
} from 'matrix-js-sdk/lib/matrix.js';
import { silenceSdk, silent } from '../../bot/chat/matrix/silent-logger.ts';
import { passwordLogin } from './password-login.ts';

type Content = Readonly<Record<string, unknown>>;

/** A message of the bot's as a phone shows it. */
export interface Seen {
  readonly id: string;
  readonly type: string;
  readonly content: Content;
  readonly encrypted: boolean;
  readonly room: string;
}

/** A member of staff with a phone: signs in, types, reads. The keys are in memory; each test run is a new phone. */
export class Person {
  readonly client: MatrixClient;
  readonly seen: Seen[] = [];

  private constructor(client: MatrixClient) {
    this.client = client;
  }

  static async signIn(url: string, user: string, password: string): Promise<Person> {
    silenceSdk();
    const { user_id, access_token, device_id } = await passwordLogin(url, user, password);
    const client = new MatrixClient({
      baseUrl: url,
      userId: user_id,
      accessToken: access_token,
      deviceId: device_id,
      store: new MemoryStore(),
      scheduler: new MatrixScheduler(),
      logger: silent,
      disableVoip: true,
    });
    await client.initRustCrypto({ useIndexedDB: false });
    const person = new Person(client);
    client.on(RoomEvent.Timeline, (event) => void person.#see(event));
    const ready = new Promise<void>((resolve) => {
      client.on(ClientEvent.Sync, (state) => {
        if (state === SyncState.Prepared || state === SyncState.Syncing) resolve();
      });
    });
    await client.startClient({ initialSyncLimit: 100 });
    await ready;
    return person;
  }

  get id(): string {
    return this.client.getSafeUserId();
  }

  /** A chat room of this person's, with whom it is shared, and who may pin there. */
  async room(
    encrypted: boolean,
    invite: readonly string[],
    moderators: readonly string[] = [],
  ): Promise<string> {
    const { room_id } = await this.client.createRoom({
      preset: Preset.PrivateChat,
      invite: [...invite],
      power_level_content_override: { users: Object.fromEntries(moderators.map((who) => [who, 50])) },
      initial_state: encrypted
        ? [{ type: EventType.RoomEncryption, state_key: '', content: { algorithm: 'm.megolm.v1.aes-sha2' } }]
        : [],
    });
    return room_id;
  }

  async say(room: string, text: string, more: Content = {}): Promise<string> {
    const content = { msgtype: MsgType.Text, body: text, ...more };
    const { event_id } = await this.client.sendMessage(room, JSON.parse(JSON.stringify(content)));
    return event_id;
  }

  async edit(room: string, note: string, text: string): Promise<string> {
    return this.say(room, `* ${text}`, {
      'm.new_content': { msgtype: MsgType.Text, body: text },
      'm.relates_to': { rel_type: RelationType.Replace, event_id: note },
    });
  }

  async reply(room: string, to: string, text: string): Promise<string> {
    return this.say(room, text, { 'm.relates_to': { 'm.in_reply_to': { event_id: to } } });
  }

  async react(room: string, to: string, key: string): Promise<void> {
    await this.client.sendEvent(room, EventType.Reaction, {
      'm.relates_to': { rel_type: RelationType.Annotation, event_id: to, key },
    });
  }

  /** The bot's reactions to an event. */
  reactionsTo(event: string): readonly string[] {
    return this.seen.flatMap(({ type, content }) => {
      const relation = relationOf(content);
      return type === 'm.reaction' && relation.event_id === event ? [String(relation.key)] : [];
    });
  }

  /** The bot's replies to an event. */
  repliesTo(event: string): readonly Seen[] {
    return this.seen.filter(({ content }) => {
      const inReply = relationOf(content)['m.in_reply_to'];
      return (
        typeof inReply === 'object' && inReply !== null && 'event_id' in inReply && inReply.event_id === event
      );
    });
  }

  /** A file of the bot's, downloaded and, where it is locked, unlocked. */
  async open(content: Content): Promise<string> {
    const secret: Content =
      typeof content.file === 'object' && content.file !== null ? { ...content.file } : {};
    const url = this.client.mxcUrlToHttp(
      String(content.url ?? secret.url),
      undefined,
      undefined,
      undefined,
      false,
      true,
      true,
    );
    const headers = { Authorization: `Bearer ${this.client.getAccessToken()}` };
    const bytes = new Uint8Array(await (await fetch(url ?? '', { headers })).arrayBuffer());
    if ('url' in content) return new TextDecoder().decode(bytes);
    const { url: _, ...info } = secret;
    const locked = new EncryptedAttachment(bytes, JSON.stringify(info));
    return new TextDecoder().decode(Attachment.decrypt(locked));
  }

  /** The note that a message of the bot's answers, or null. */
  answers({ content }: Seen): string | null {
    const inReply = relationOf(content)['m.in_reply_to'];
    if (typeof inReply !== 'object' || inReply === null || !('event_id' in inReply)) return null;
    return String(inReply.event_id);
  }

  /**
   * The notes that the bot's messages in a room answer, oldest first, as the homeserver has them. What a phone shows may lack
   * some after its homeserver was killed; what an event answers stands in clear.
   */
  async answeredIn(room: string): Promise<readonly string[]> {
    const answered: string[] = [];
    let from: string | undefined;
    do {
      const query = { dir: 'b', limit: 500, ...(from === undefined ? {} : { from }) };
      const path = `/rooms/${encodeURIComponent(room)}/messages`;
      const page: { chunk: { sender: string; content: Content }[]; end?: string } =
        await this.client.http.authedRequest(Method.Get, path, query);
      for (const { sender, content } of page.chunk) {
        const inReply = relationOf(content)['m.in_reply_to'];
        if (!sender.startsWith('@scanward:') || typeof inReply !== 'object' || inReply === null) continue;
        if ('event_id' in inReply) answered.push(String(inReply.event_id));
      }
      from = page.chunk.length === 0 ? undefined : page.end;
    } while (from !== undefined);
    return answered.reverse();
  }

  /** Waits until somebody is in a room of this person's. */
  async untilJoined(room: string, who: string): Promise<void> {
    await this.until(
      () => this.client.getRoom(room)?.getMember(who)?.membership === 'join',
      `${who} in the room`,
    );
  }

  /** The bot's edits of one of its posts, newest last. */
  editsOf(event: string): readonly Seen[] {
    return this.seen.filter(({ content }) => {
      const { rel_type, event_id } = relationOf(content);
      return rel_type === 'm.replace' && event_id === event;
    });
  }

  /** Waits until there is something to see; on a busy machine the patience is long, it is no measurement. */
  async until<T>(look: () => T | undefined | null | false, what: string, patience = 20_000): Promise<T> {
    const end = Date.now() + patience;
    for (let found = look(); ; found = look()) {
      if (found !== undefined && found !== null && found !== false) return found;
      if (Date.now() > end) throw new Error(`never seen: ${what}`);
      await wait(25);
    }
  }

  stop(): void {
    this.client.stopClient();
  }

  async #see(event: MatrixEvent): Promise<void> {
    if (event.getSender()?.startsWith('@scanward:') !== true) return;
    await this.client.decryptEventIfNeeded(event);
    const content: Content = { ...event.getOriginalContent(), ...relationPart(event.getWireContent()) };
    this.seen.push({
      id: event.getId() ?? '',
      type: event.getType(),
      content,
      encrypted: event.isEncrypted(),
      room: event.getRoomId() ?? '',
    });
  }
}

/** Whose phones a message rings. */
export function mentionsOf(content: Content): readonly unknown[] {
  const mentions = content['m.mentions'];
  if (typeof mentions !== 'object' || mentions === null || !('user_ids' in mentions)) return [];
  return Array.isArray(mentions.user_ids) ? mentions.user_ids : [];
}

function relationPart(wire: Content): Content {
  return 'm.relates_to' in wire ? { 'm.relates_to': wire['m.relates_to'] } : {};
}

function relationOf(content: Content): Content {
  const relation = content['m.relates_to'];
  return typeof relation === 'object' && relation !== null ? { ...relation } : {};
}
