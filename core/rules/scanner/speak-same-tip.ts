import { lines } from '../../words/message.ts';
import { askReached } from '../incidents/ask-reached.ts';
import type { Speak } from '../speech.ts';
import { scannerWords, sterileHere } from '../tips/tip-words.ts';
import { foundWith } from '../tips/together.ts';
import { scanWords } from './reason-words.ts';

/** The tip was in another scan before this one: a warning, then whether it reached a patient. */
export const speakSameTipAgain: Speak<'same-tip-again'> = (finding, view) => {
  const { tip, scanner, earlier, items } = finding;
  const site = view.state.scanners.get(scanner)?.site ?? null;
  const warning = [
    ...lines(
      [{ strong: `Stop: tip ${tip} was used` }, ' on an earlier scan and has had no load since.'],
      `On ${scannerWords(view.practice, scanner)}: that ${scanWords(view, earlier)}.`,
    ),
    ...sterileHere(view, site),
    ...lines('Same patient? Edit your note to say “same patient”.'),
  ];
  const stop = { about: 'warning', items, message: warning, mentions: [] } as const;
  // Warned of for another cause with the same note: that warning asks already.
  if (foundWith(view, finding, 'unsafe-tip').some(({ again }) => !again)) return [stop];
  return [stop, askReached(finding, view)];
};
