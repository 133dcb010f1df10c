import type { Effect } from '../../../../core/desk/effect.ts';
import { lines } from '../../../../core/words/message.ts';
import type { Transport } from '../../../store/transport.ts';

/** Who is told. */
export interface ToTell {
  readonly say: (line: string) => void;
  readonly transport: Transport;
}

/** What could not be sent is told to the machine's owner; a board that may not be pinned is told in the room, once. */
export function gaveUp(effect: Effect, why: string, { say, transport }: ToTell): void {
  say(`Could not ${effect.does} in ${effect.room}: ${why}`);
  if (effect.does !== 'pin') return;
  const { room } = effect;
  const key = `board/no-pin/${room}`;
  const message = lines(
    'I may not pin my board here. Whoever runs this chat room can let me: the power to pin messages, mostly that of a moderator (50).',
  );
  const post: Effect = { does: 'post', key, room, message, about: 'board', items: [], mentions: [] };
  transport.enqueue(0, [{ key, room, body: post }]);
}
