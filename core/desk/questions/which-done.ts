import { openMatters } from '../../rules/matters.ts';
import { recordTick, tick } from '../acts/done.ts';
import type { Purpose } from '../question.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** The answer to "which one is done?": one of them, or all. */
export function sayWhichDone(
  session: Session,
  speaker: Speaker,
  purpose: Extract<Purpose, { sort: 'which-done' | 'which-reminder' }>,
  value: string,
): void {
  if (purpose.sort === 'which-done') {
    const chosen = value === 'all' ? purpose.matters : [value];
    recordTick(
      session,
      speaker,
      openMatters(viewOf(session)).filter((matter) => chosen.includes(matter.key)),
    );
    return;
  }
  const chosen = value === 'all' ? purpose.posts : [value];
  for (const key of chosen) {
    const line = session.posts.get(key);
    if (line !== null) tick(session, speaker, line);
  }
}
