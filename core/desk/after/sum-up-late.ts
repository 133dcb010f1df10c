import { factWords } from '../../answers/fact-words.ts';
import { isForReaders } from '../../answers/record-rows.ts';
import { zoneOfChatRoom } from '../../practice/look-up.ts';
import { inWords } from '../../rules/tips/tip-words.ts';
import { clockWords } from '../../words/clock-words.ts';
import type { Block, Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import { type LateHere, summaryKey } from '../late-notes.ts';
import type { Session } from '../session.ts';

/** More than this is not read on a phone; the rest is counted. */
const SHOWN = 10;

/** Notes that waited while the program was away: one post a chat room says what was recorded and what was not answered. */
export function sumUpLate(session: Session): void {
  const { draft, late } = session;
  for (const [room, here] of late.waiting()) {
    const message = summary(session, room, here);
    const key = message.length === 0 ? '' : draft.post(room, { about: 'record', message });
    draft.matterSaid(summaryKey(room), 'first', key);
  }
}

function summary({ practice, timeline, now }: Session, room: string, { turns, asks }: LateHere): Message {
  const zone = zoneOfChatRoom(practice, room);
  const time = (at: number) => clockWords(at, now, zone);
  const told = turns.flatMap((turn) => timeline.ofTurn(turn));
  const kept = told.filter((entry) => entry.by !== null && isForReaders(entry));
  const shown = kept.slice(0, SHOWN).map(({ when, by, fact }) => {
    return [`${time(when)} ${factWords(practice, fact)} (${nameOf(practice, by)})`];
  });
  const more = kept.length - shown.length;
  const blocks: Block[] = [];
  if (shown.length > 0) {
    blocks.push({ line: [{ strong: 'I was away. Recorded now:' }] });
    blocks.push({ points: more > 0 ? [...shown, [`and ${more} more`]] : shown });
  }
  if (asks.length > 0) {
    const asked = inWords(asks.map(({ from, noted }) => `${nameOf(practice, from)} ${time(noted)}`));
    blocks.push({ line: [{ strong: 'Not answered:' }, ` ${asked}. Ask again if you still need it.`] });
  }
  return blocks;
}
