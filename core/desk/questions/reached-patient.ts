import type { Purpose } from '../../rules/question.ts';
import { toIso } from '../../time/instant.ts';
import { followUp } from '../after/follow-up.ts';
import { apply } from '../apply.ts';
import type { Session, Speaker } from '../session.ts';

/** The answer to "did it reach a patient?": yes holds the tip and calls the lead; both answers stay in the record. */
export function reachedPatient(
  session: Session,
  speaker: Speaker,
  purpose: Extract<Purpose, { sort: 'reached-patient' }>,
  value: string,
): void {
  const { draft, timeline, now } = session;
  const first = draft.entries.length;
  draft.decide(
    {
      kind: 'incident-answered',
      when: toIso(now),
      incident: purpose.incident,
      of: purpose.entry,
      tip: purpose.tip,
      reached: value === 'yes',
    },
    speaker.room,
    speaker.from,
    speaker.from,
  );
  apply(timeline, draft.entries.slice(first));
  followUp(session, speaker, draft.entries.slice(first), []);
}
