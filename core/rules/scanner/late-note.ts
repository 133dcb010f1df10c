import { ruleValue } from '../../defaults/rule-value.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Mark } from '../../record/state.ts';
import { MINUTE } from '../../time/instant.ts';

/** Typed more than an hour after its time: the room has moved on, so it starts no wipe, cover or warm-up reminder. */
export function isLateNote(practice: Practice, { at, noted }: Mark): boolean {
  return noted - at > ruleValue(practice, 'lateNoteMinutes') * MINUTE;
}
