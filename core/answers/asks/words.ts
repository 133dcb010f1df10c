import { meaningWords } from '../../words/learned-words.ts';
import { lines } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';

/** The words that this practice has taught, and how one is dropped. */
export function answerWords({ practice, state }: AskView): Answer {
  const learned = [...state.words];
  const [first] = learned;
  if (first === undefined) {
    const message = lines('None yet. When I do not know a word, I ask what it means and offer to keep it.');
    return { about: 'answer', message, items: [] };
  }
  const points = learned.map(([words, { means }]) => [
    { strong: words },
    `: ${meaningWords(practice, means)}`,
  ]);
  return {
    about: 'answer',
    message: [
      { line: [{ strong: learned.length === 1 ? 'One word' : `${learned.length} words` }, ' learned:'] },
      { points },
      { line: [`“forget ${first[0]}” drops it.`] },
    ],
    items: [],
  };
}
