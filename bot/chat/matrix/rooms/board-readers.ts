import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';

/**
 * Whose devices can read what is posted into an encrypted room now. A device that comes later has no key to what was said
 * before it: for the board, which is read for months, that would be for ever.
 */
export class BoardReaders {
  readonly #client: MatrixClient;
  readonly #known = new Map<string, ReadonlySet<string>>();

  constructor(client: MatrixClient) {
    this.#client = client;
  }

  /** The devices as of the last look, "user device" each, none of a plain room; null before the first. Looks again by itself. */
  of(room: string): ReadonlySet<string> | null {
    void this.#look(room).then(
      (devices) => this.#known.set(room, devices),
      // The keys or the room are not there yet: it stays as it was.
      () => undefined,
    );
    return this.#known.get(room) ?? null;
  }

  async #look(id: string): Promise<ReadonlySet<string>> {
    const crypto = this.#client.getCrypto();
    const room = this.#client.getRoom(id);
    if (room === null || crypto === undefined) throw new Error('not there yet');
    if (!room.hasEncryptionStateEvent()) return new Set();
    const me = this.#client.getSafeUserId();
    const people = (await room.getEncryptionTargetMembers()).map(({ userId }) => userId);
    const devices = await crypto.getUserDeviceInfo(people.filter((who) => who !== me));
    return new Set([...devices].flatMap(([who, theirs]) => [...theirs.keys()].map((one) => `${who} ${one}`)));
  }
}
