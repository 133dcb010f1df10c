import { existsSync, readFileSync, writeFileSync } from 'node:fs';

/** A chat room to be there: what it is called, whether it is encrypted, who is in it. */
export interface WantedRoom {
  readonly name: string;
  readonly encrypted: boolean;
}

/** A person's requests to a homeserver on this machine. */
class Hand {
  readonly #url: string;
  readonly #token: string;

  constructor(url: string, token: string) {
    this.#url = url;
    this.#token = token;
  }

  static async of(url: string, user: string, password: string): Promise<Hand> {
    const body = { type: 'm.login.password', identifier: { type: 'm.id.user', user }, password };
    const { access_token } = await post(`${url}/_matrix/client/v3/login`, body, null);
    return new Hand(url, String(access_token));
  }

  ask(path: string, body: unknown): Promise<Readonly<Record<string, unknown>>> {
    return post(`${this.#url}/_matrix/client/v3${path}`, body, this.#token);
  }
}

/**
 * The rooms for trying out, made by the first person at the first start and remembered in `file`; the others are in them
 * and the bot is asked in. Gives their ids in the order wanted.
 */
export async function tryRooms(
  url: string,
  file: string,
  people: readonly string[],
  password: string,
  bot: string,
  wanted: readonly WantedRoom[],
): Promise<readonly string[]> {
  if (existsSync(file)) return JSON.parse(readFileSync(file, 'utf8'));
  const hands = await Promise.all(people.map((person) => Hand.of(url, person, password)));
  const [first, ...others] = hands;
  if (first === undefined) return [];
  const rooms: string[] = [];
  for (const { name, encrypted } of wanted) {
    const algorithm = { algorithm: 'm.megolm.v1.aes-sha2' };
    const made = await first.ask('/createRoom', {
      name,
      preset: 'public_chat',
      visibility: 'private',
      invite: [bot],
      initial_state: encrypted ? [{ type: 'm.room.encryption', state_key: '', content: algorithm }] : [],
      // The bot may pin its board and tidy up its own posts.
      power_level_content_override: { users: { [bot]: 50 } },
    });
    const room = String(made.room_id);
    for (const other of others) await other.ask(`/join/${encodeURIComponent(room)}`, {});
    rooms.push(room);
  }
  for (const hand of hands) await hand.ask('/logout', {});
  writeFileSync(file, JSON.stringify(rooms));
  return rooms;
}

/** One request, told in plain words where it fails; `null` as the body only asks. */
async function post(
  url: string,
  body: unknown,
  token: string | null,
): Promise<Readonly<Record<string, unknown>>> {
  const response = await fetch(url, {
    method: body === null ? 'GET' : 'POST',
    headers: token === null ? {} : { Authorization: `Bearer ${token}` },
    ...(body === null ? {} : { body: JSON.stringify(body) }),
  });
  const answer: unknown = await response.json();
  const fields = typeof answer === 'object' && answer !== null ? { ...answer } : {};
  if (!response.ok) throw new Error(`${new URL(url).pathname}: ${JSON.stringify(fields)}`);
  return fields;
}
