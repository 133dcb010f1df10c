import { EventShieldColour } from 'matrix-js-sdk/lib/crypto-api/index.js';
import type { MatrixClient, MatrixEvent } from 'matrix-js-sdk/lib/matrix.js';

/** Somebody whose devices looked unsigned is asked about again at most so often, ms: a new device is signed a moment later. */
const AGAIN_MS = 5_000;
const asked = new WeakMap<MatrixClient, Map<string, number>>();

/**
 * Whether an event was locked by a device that its owner has signed (cross-signing). A device that the encryption does not
 * know, or that changed a moment ago, is looked up at the homeserver first. A key that came by way of a backup proves
 * nothing of who sent it.
 */
export async function isSignedByOwner(client: MatrixClient, event: MatrixEvent): Promise<boolean> {
  if (await hasNoShield(client, event)) return true;
  const sender = event.getSender() ?? '';
  const times = asked.get(client) ?? new Map<string, number>();
  asked.set(client, times);
  const now = performance.now();
  const before = times.get(sender);
  if (before !== undefined && now - before < AGAIN_MS) return false;
  times.set(sender, now);
  await client
    .getCrypto()
    ?.getUserDeviceInfo([sender], true)
    .catch(() => undefined);
  return hasNoShield(client, event);
}

async function hasNoShield(client: MatrixClient, event: MatrixEvent): Promise<boolean> {
  const info = await client.getCrypto()?.getEncryptionInfoForEvent(event);
  return info?.shieldColour === EventShieldColour.NONE;
}

/** A person's power in a room, 0 to 100. Whoever made a newer room has more than any number. */
export function powerOf(client: MatrixClient, room: string, person: string): number {
  const power = client.getRoom(room)?.getMember(person)?.powerLevel ?? 0;
  return Math.max(0, Math.min(100, power));
}
