import type { Purpose } from '../../rules/question.ts';
import { toIso } from '../../time/instant.ts';
import { followUp } from '../after/follow-up.ts';
import { apply } from '../apply.ts';
import type { Session, Speaker } from '../session.ts';

/** Whether a scanner that passed before settling was over had sat at room temperature: yes makes the pass count from its own time. */
export function settledAnswer(
  session: Session,
  speaker: Speaker,
  purpose: Extract<Purpose, { sort: 'settled' }>,
  value: string,
): void {
  const { draft, timeline, now } = session;
  const first = draft.entries.length;
  const kind = value === 'yes' ? 'pass-confirmed' : 'pass-doubted';
  draft.decide(
    { kind, when: toIso(now), scanner: purpose.scanner, of: purpose.entry },
    speaker.room,
    speaker.from,
    speaker.from,
  );
  apply(timeline, draft.entries.slice(first));
  followUp(session, speaker, draft.entries.slice(first), []);
}
