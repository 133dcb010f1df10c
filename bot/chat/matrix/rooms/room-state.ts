import { Direction, type MatrixEvent, type Room } from 'matrix-js-sdk/lib/matrix.js';

/** The room's present state event of a type, or null. */
export function stateOf(room: Room, type: string): MatrixEvent | null {
  return room.getLiveTimeline().getState(Direction.Forward)?.getStateEvents(type, '') ?? null;
}
