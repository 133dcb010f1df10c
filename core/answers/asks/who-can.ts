import type { AskOf } from '../../reading/ask.ts';
import { dayWords } from '../../words/clock-words.ts';
import type { Line } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { shownWords } from '../topics.ts';

/** "Who can calibrate?": who was shown it, latest first. Being shown is not being licensed: that is the practice's to judge. */
export function answerWhoCan({ topic }: AskOf<'who-can'>, view: AskView): Answer {
  const { practice, state, now } = view;
  const shown = [...state.shown.values()]
    .filter((one) => one.topic === topic)
    .sort((one, other) => other.mark.at - one.mark.at);
  if (shown.length === 0) {
    const person =
      practice.people.find(({ part }) => part === 'staff')?.name ?? practice.people[0]?.name ?? 'Sam';
    const line: Line = [
      { strong: 'Nobody' },
      ` is on record as shown ${shownWords(topic)}. To note it: “showed ${person} ${shownWords(topic)}”.`,
    ];
    return { about: 'answer', message: [{ line }], items: [] };
  }
  const points = shown.map(({ person, mark }): Line => {
    const by = mark.by === null ? '' : ` by ${nameOf(practice, mark.by)}`;
    return [{ strong: nameOf(practice, person) }, `, ${dayWords(mark.at, now, practice.timezone)}${by}`];
  });
  return {
    about: 'answer',
    message: [
      { line: [{ strong: `Shown ${shownWords(topic)}` }, ':'] },
      { points },
      { line: ['Who may do it is for the practice to say.'] },
    ],
    items: [],
  };
}
