import type { Purpose } from '../../rules/question.ts';
import { toIso } from '../../time/instant.ts';
import { followUp } from '../after/follow-up.ts';
import { apply } from '../apply.ts';
import type { Session, Speaker } from '../session.ts';

/** "Release load 118?" answered by yes: the record checks whose word it is. No leaves it waiting. */
export function releaseLoad(
  session: Session,
  speaker: Speaker,
  purpose: Extract<Purpose, { sort: 'release-load' }>,
  value: string,
): void {
  const { draft, timeline, now } = session;
  if (value !== 'yes') {
    draft.react(speaker.room, speaker.note, '👍');
    return;
  }
  const first = draft.entries.length;
  draft.decide(
    { kind: 'load-released', when: toIso(now), load: purpose.load },
    speaker.room,
    speaker.from,
    speaker.from,
    speaker.vouched,
  );
  apply(timeline, draft.entries.slice(first));
  followUp(session, speaker, draft.entries.slice(first), []);
}
