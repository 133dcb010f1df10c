import { type MatrixClient, MatrixError, Method } from 'matrix-js-sdk/lib/matrix.js';

/** Whether the key of a room's messages is in the backup on the homeserver, asked of it: the program's own count lags. */
export async function isBackedUp(
  client: MatrixClient,
  version: string,
  room: string,
  session: string,
): Promise<boolean> {
  const path = `/room_keys/keys/${encodeURIComponent(room)}/${encodeURIComponent(session)}`;
  try {
    await client.http.authedRequest(Method.Get, path, { version });
    return true;
  } catch (error) {
    if (error instanceof MatrixError && error.httpStatus === 404) return false;
    throw error;
  }
}
