import { openMatters } from '../../rules/matters.ts';
import type { Purpose } from '../../rules/question.ts';
import { recordTick } from '../acts/done.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** The answer to "which one is done?": one of them, or all. */
export function sayWhichDone(
  session: Session,
  speaker: Speaker,
  { matters }: Extract<Purpose, { sort: 'which-done' }>,
  value: string,
): void {
  const chosen = value === 'all' ? matters : [value];
  const open = openMatters(viewOf(session)).filter(({ key }) => chosen.includes(key));
  recordTick(session, speaker, open);
}
