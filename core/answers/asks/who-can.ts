import type { AskOf } from '../../reading/ask.ts';
import type { Mark } from '../../record/state.ts';
import { dayWords } from '../../words/clock-words.ts';
import type { Line, Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { shownWords } from '../topics.ts';

interface Shown {
  readonly person: string;
  readonly topic: string;
  readonly mark: Mark;
}

/** "Who can calibrate?": who was shown it, latest first. Being shown is not being licensed: that is the practice's to judge. */
export function answerWhoCan({ topic, person }: AskOf<'who-can'>, view: AskView): Answer {
  const shown: readonly Shown[] = [...view.state.shown.values()]
    .filter((one) => {
      const isAsked = person === undefined || nameOf(view.practice, one.person) === person;
      return isAsked && (topic === undefined || one.topic === topic);
    })
    .sort((one, other) => other.mark.at - one.mark.at);
  const message = shown.length === 0 ? nobody(topic, person, view) : listOf(shown, topic, person, view);
  return { about: 'answer', message, items: [] };
}

function nobody(topic: string | undefined, person: string | undefined, { practice }: AskView): Message {
  const somebody =
    practice.people.find(({ part }) => part === 'staff')?.name ?? practice.people[0]?.name ?? 'Sam';
  const what = topic === undefined ? 'anything' : shownWords(topic);
  const example = `“showed ${person ?? somebody} ${shownWords(topic ?? 'calibrate')}”`;
  const line: Line =
    person === undefined
      ? [{ strong: 'Nobody' }, ` is on record as shown ${what}. To note it: ${example}.`]
      : [{ strong: person }, ` is not on record as shown ${what}. To note it: ${example}.`];
  return [{ line }];
}

function listOf(
  shown: readonly Shown[],
  topic: string | undefined,
  person: string | undefined,
  { practice, now }: AskView,
): Message {
  const points = shown.map((one): Line => {
    const by = one.mark.by === null ? '' : ` by ${nameOf(practice, one.mark.by)}`;
    const what = topic === undefined ? ` ${shownWords(one.topic)}` : '';
    const when = `, ${dayWords(one.mark.at, now, practice.timezone)}${by}`;
    if (person !== undefined) return [{ strong: shownWords(one.topic) }, when];
    return [{ strong: nameOf(practice, one.person) }, `${what}${when}`];
  });
  const head = topic === undefined ? 'Shown' : `Shown ${shownWords(topic)}`;
  return [
    { line: [{ strong: person === undefined ? head : `${person} was shown` }, ':'] },
    { points },
    { line: ['Who may do it is for the practice to say.'] },
  ];
}
