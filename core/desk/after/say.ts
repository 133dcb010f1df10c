import type { Speech } from '../../rules/speech.ts';
import { MINUTE } from '../../time/instant.ts';
import { apply } from '../apply.ts';
import { BUTTONS } from '../notes/raise-gaps.ts';
import type { Session, Speaker } from '../session.ts';

/** Abouts that must reach the phone of whoever typed the note. */
const LOUD = new Set(['warning', 'incident', 'caution']);

/** Puts one speech into the turn: its post, what it decides, and the question it asks. Gives the post's key. */
export function say(session: Session, speaker: Speaker, speech: Speech): string {
  const { draft, timeline, now } = session;
  const { about, message, items, asks, decides = [] } = speech;
  const loud = LOUD.has(about) && speaker.from !== '' ? [speaker.from] : [];
  const key = draft.post(speaker.room, {
    about,
    message,
    items,
    mentions: [...speech.mentions, ...loud],
    ...(speaker.note === '' ? {} : { replyTo: speaker.note }),
    ...(asks === undefined ? {} : { buttons: BUTTONS.slice(0, asks.choices.length) }),
  });
  const first = draft.entries.length;
  for (const decision of decides) draft.decide(decision, speaker.room, null, '');
  apply(timeline, draft.entries.slice(first));
  if (asks !== undefined) {
    const { choices, person, lasts, purpose } = asks;
    const until = lasts === null ? null : now + lasts * MINUTE;
    draft.asked.push({ key, room: speaker.room, person, asked: now, until, choices, items, purpose });
  }
  return key;
}
