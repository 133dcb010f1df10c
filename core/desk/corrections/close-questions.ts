import type { Session } from '../session.ts';

/** What was asked about a note as it stood is no longer the question. */
export function closeQuestionsOf({ draft, questions }: Session, note: string): void {
  for (const question of questions.all()) {
    if (question.purpose.sort !== 'complete' || question.purpose.note !== note) continue;
    draft.answered.push(question.key);
    questions.close(question.key);
  }
}
