import { canLearn } from '../../language/learnable.ts';
import { type Purpose, YES_NO } from '../../rules/question.ts';
import { meaningWords } from '../../words/learned-words.ts';
import { lines } from '../../words/message.ts';
import type { Session, Speaker } from '../session.ts';
import { askPerson } from './ask-person.ts';

/**
 * Offers once to keep a word that was not known and that the answer explains. Never one that is a name, an id or a word of
 * the trade already.
 */
export function offerLearning(
  session: Session,
  speaker: Speaker,
  { words, about, slot }: Extract<Purpose, { sort: 'complete' }>,
  value: string,
): void {
  const { draft, practice } = session;
  if (words === undefined || !/^(scanner|site|room)$/.test(about) || value.includes(',')) return;
  if (!canLearn(practice, words)) return;
  const means = value.includes(':') ? value : `${slot === 'room' ? 'room' : about}:${value}`;
  if (means.startsWith('room:') && !means.includes('/')) return;
  const message = lines([
    `Shall I remember “${words}” for ${meaningWords(practice, means)}? `,
    { strong: 'yes' },
    ' or ',
    { strong: 'no' },
  ]);
  const key = draft.post(speaker.room, {
    about: 'question',
    message,
    replyTo: speaker.note,
    buttons: ['✅', '❌'],
  });
  askPerson(session, speaker, key, YES_NO, { sort: 'learn', words, means });
}
