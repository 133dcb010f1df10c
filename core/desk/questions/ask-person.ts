import { ruleValue } from '../../defaults/rule-value.ts';
import type { Choice, Purpose } from '../../rules/question.ts';
import { MINUTE } from '../../time/instant.ts';
import type { Session, Speaker } from '../session.ts';

/** The post with that key asks whoever spoke; the question lapses after the practice's `questionMinutes`. */
export function askPerson(
  session: Session,
  { room, from: person }: Speaker,
  key: string,
  choices: readonly Choice[],
  purpose: Purpose,
): void {
  const { draft, practice, now } = session;
  const until = now + ruleValue(practice, 'questionMinutes') * MINUTE;
  draft.asked.push({ key, room, person, asked: now, until, choices, items: [], purpose });
}
