import type { Question } from '../rules/question.ts';
import type { Instant } from '../time/instant.ts';

/** Questions that still wait, oldest first. */
export class QuestionLog {
  readonly #open = new Map<string, Question>();

  ask(question: Question): void {
    this.#open.set(question.key, question);
  }

  /** Takes in what `all` gave; this log must be empty. */
  restore(questions: readonly Question[]): void {
    for (const question of questions) this.ask(question);
  }

  close(key: string): void {
    this.#open.delete(key);
  }

  get(key: string): Question | null {
    return this.#open.get(key) ?? null;
  }

  all(): readonly Question[] {
    return [...this.#open.values()];
  }

  /** Questions that this person may answer in this chat room and that have not lapsed, the latest first. */
  waitingFor(room: string, person: string, now: Instant): readonly Question[] {
    return this.#candidates(room, now)
      .filter((question) => question.person === person || question.person === null)
      .reverse();
  }

  /** Lapsed by now, for closing them. */
  lapsed(now: Instant): readonly Question[] {
    return this.all().filter((question) => question.until !== null && question.until <= now);
  }

  #candidates(room: string, now: Instant): Question[] {
    return this.all().filter(
      (question) => question.room === room && (question.until === null || now < question.until),
    );
  }
}
