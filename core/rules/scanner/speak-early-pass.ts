import { lines } from '../../words/message.ts';
import { YES_NO } from '../question.ts';
import type { Speak } from '../speech.ts';
import { scannerWords } from '../tips/tip-words.ts';
import { timeAt } from './time-words.ts';

/** A pass noted before settling is over: asked back, and until the answer is yes the calibration stays due. */
export const speakEarlyPass: Speak<'pass-before-settling'> = (finding, view) => {
  const { scanner, items, settledBy, mark } = finding;
  const name = scannerWords(view.practice, scanner);
  const site = view.state.scanners.get(scanner)?.site ?? null;
  const until =
    settledBy === null
      ? `${name} was still on its way.`
      : `${name} was to settle until ${timeAt(view, site, settledBy)}.`;
  const message = lines(
    [{ strong: `Has ${name} sat at room temperature long enough?` }, ' yes or no'],
    `By the notes ${until} Yes: the pass counts. No: calibration stays due.`,
  );
  return [
    {
      // No infection matter, and still something to stop for: a caution that asks.
      about: 'caution',
      items,
      message,
      mentions: [],
      asks: {
        choices: YES_NO,
        person: null,
        lasts: null,
        purpose: { sort: 'settled', scanner, entry: mark.entry },
      },
    },
  ];
};
