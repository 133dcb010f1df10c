import type { MatrixClient } from 'matrix-js-sdk/lib/matrix.js';

/** Events of a room that the SDK may keep in memory: nothing here reads them again. */
const TIMELINE_MOST = 150;

/** Lets go of what the SDK remembers of rooms in which much was said. */
export function dropOldTimelines(client: MatrixClient): void {
  for (const room of client.getRooms()) {
    if (room.getLiveTimeline().getEvents().length > TIMELINE_MOST) room.resetLiveTimeline(null, null);
  }
}
