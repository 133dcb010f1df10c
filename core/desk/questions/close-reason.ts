import { ruleValue } from '../../defaults/rule-value.ts';
import type { NoteRead } from '../../language/read.ts';
import { itemsOf } from '../../record/items-of.ts';
import type { Question } from '../../rules/question.ts';
import { MINUTE } from '../../time/instant.ts';
import { reasonIn, tellsWhatWasDone } from '../acts/closing-words.ts';
import type { NoteInput } from '../input.ts';
import type { Session } from '../session.ts';

/**
 * What was done about an incident, in answer to "What was done?"; `null` where the note is no answer to it. In reply to the
 * question any words count. Typed plainly they count for the practice's `questionMinutes`, where they tell of something
 * done, ask nothing, and speak of no other item: an incident closed by talk would be a wrong record.
 */
export function closeReason(
  session: Session,
  { asked, purpose }: Question,
  replied: boolean,
  input: NoteInput,
  { reading }: NoteRead,
): string | null {
  if (replied) return reasonIn(input.text);
  if (purpose.sort !== 'close-reason' || input.replyTo !== undefined) return null;
  if (input.at - asked > ruleValue(session.practice, 'questionMinutes') * MINUTE) return null;
  const { facts, asks, plans, unclear, acts } = reading;
  if (asks.length + plans.length + unclear.length + acts.length > 0) return null;
  const { incidents } = session.timeline.state;
  const concerned = new Set(purpose.incidents.flatMap((id) => incidents.get(id)?.items ?? []));
  const elsewhere = facts.flatMap(itemsOf).some((item) => !concerned.has(item));
  return elsewhere || !tellsWhatWasDone(input.text) ? null : reasonIn(input.text);
}
