import type { AskOf } from '../../reading/ask.ts';
import type { Answer, AskView } from '../answer-view.ts';
import { dayWords } from '../clock-words.ts';
import { lines } from '../message.ts';
import { nameOf } from '../people-words.ts';

/** "Who can calibrate?": who was shown it, latest first. Being shown is not being licensed: that is the practice's to judge. */
export function answerWhoCan({ topic }: AskOf<'who-can'>, view: AskView): Answer {
  const shown = [...view.state.shown.values()]
    .filter((one) => one.topic === topic)
    .sort((one, other) => other.mark.at - one.mark.at);
  if (shown.length === 0)
    return {
      about: 'answer',
      message: lines([{ strong: 'Nobody' }, ` is on record as shown how (${topic}).`]),
      items: [],
    };
  const points = shown.map(({ person, mark }) => [
    { strong: nameOf(view.practice, person) },
    `, shown ${dayWords(mark.at, view.now, view.practice.timezone)}${mark.by === null ? '' : ` by ${nameOf(view.practice, mark.by)}`}`,
  ]);
  return { about: 'answer', message: [{ points }], items: [] };
}
