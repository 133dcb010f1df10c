import type { Purpose } from '../../rules/question.ts';
import { toIso } from '../../time/instant.ts';
import { apply } from '../apply.ts';
import type { Session, Speaker } from '../session.ts';

/** Keeps a word that a person explained, only on yes; the reader knows it from the next note on. */
export function learn(
  session: Session,
  speaker: Speaker,
  purpose: Extract<Purpose, { sort: 'learn' }>,
  value: string,
): void {
  const { draft, timeline, now } = session;
  if (value === 'yes') {
    draft.decide(
      { kind: 'word', when: toIso(now), words: purpose.words, means: purpose.means },
      speaker.room,
      speaker.from,
      speaker.from,
    );
    apply(timeline, draft.entries.slice(-1));
  }
  draft.react(speaker.room, speaker.note, '👍');
}
