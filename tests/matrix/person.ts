import { setTimeout as wait } from 'node:timers/promises';
import {
  ClientEvent,
  EventType,
  Filter,
  MatrixClient,
  type MatrixEvent,
  MatrixScheduler,
  MemoryStore,
  MsgType,
  Preset,
  RelationType,
  RoomEvent,
  SyncState,
} from 'matrix-js-sdk/lib/matrix.js';
import { silenceSdk, silent } from '../../bot/chat/matrix/silent-logger.ts';
import { passwordLogin } from './password-login.ts';
import { answerTo, type Content, relationOf, type Seen } from './seen.ts';

/**
 * Events that the phone is given at a sync. An app scrolls back over what a shorter answer left out (a homeserver gives ten
 * where nobody asks for more); this phone does not, and would show a hole after every outage.
 */
const SHOWN_AT_ONCE = 500;

/** A member of staff with a phone: signs in, types, reads. The keys are in memory; each test run is a new phone. */
export class Person {
  readonly client: MatrixClient;
  readonly seen: Seen[] = [];
  /** One after another: a message is seen in its place, however long its decryption takes. */
  #seeing: Promise<void> = Promise.resolve();

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
    client.on(RoomEvent.Timeline, (event) => {
      person.#seeing = person.#seeing.then(() => person.#see(event));
    });
    const ready = new Promise<void>((resolve) => {
      client.on(ClientEvent.Sync, (state) => {
        if (state === SyncState.Prepared || state === SyncState.Syncing) resolve();
      });
    });
    const filter = new Filter(user_id);
    filter.setTimelineLimit(SHOWN_AT_ONCE);
    await client.startClient({ initialSyncLimit: 100, filter });
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
    return this.seen.filter(({ content }) => answerTo(content) === event);
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

function relationPart(wire: Content): Content {
  return 'm.relates_to' in wire ? { 'm.relates_to': wire['m.relates_to'] } : {};
}
