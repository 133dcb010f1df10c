import { seniorsInWords, whoMay } from '../../rules/rights.ts';
import { lines } from '../../words/message.ts';
import type { Answer, AskView } from '../answer-view.ts';

/** "Who can release a load?": those who answer for it here, by name and part. */
export function answerWhoMay({ practice }: AskView): Answer {
  const who = whoMay(practice);
  const message = lines(
    [
      { strong: `${who.slice(0, 1).toUpperCase()}${who.slice(1)}` },
      ' may release what is held, or a load, and close an incident.',
    ],
    ...(seniorsInWords(practice) === 'anyone' ? [] : ['What you put on hold yourself you may release too.']),
  );
  return { about: 'answer', message, items: [] };
}
