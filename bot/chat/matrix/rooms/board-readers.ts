import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';

/**
 * The devices that can read what is posted into an encrypted room now, "user device" each; none of a plain room, null where
 * the room or the keys are not there yet. A device that comes later has no key to what was said before it: for the board,
 * which is read for months, that would be for ever.
 */
export async function boardReaders(client: MatrixClient, id: string): Promise<ReadonlySet<string> | null> {
  const crypto = client.getCrypto();
  const room = client.getRoom(id);
  if (room === null || crypto === undefined) return null;
  if (!room.hasEncryptionStateEvent()) return new Set();
  const me = client.getSafeUserId();
  try {
    const people = (await room.getEncryptionTargetMembers()).map(({ userId }) => userId);
    const devices = await crypto.getUserDeviceInfo(people.filter((who) => who !== me));
    return new Set([...devices].flatMap(([who, theirs]) => [...theirs.keys()].map((one) => `${who} ${one}`)));
  } catch {
    // The homeserver did not say who is in the room: it is asked again at the next look.
    return null;
  }
}
