import { lines } from '../../words/message.ts';
import type { Speak } from '../speech.ts';
import { scannerWords } from '../tips/tip-words.ts';

/** What the record worked out rather than was told is shown, so that it can be put right. */
export const speakDisplaced: Speak<'displaced'> = ({ tip, scanner, items }, view) => {
  const message = lines(
    `Taken from your note: tip ${tip} is off ${scannerWords(view.practice, scanner)}, to be reprocessed.`,
  );
  return [{ about: 'answer', items, message, mentions: [] }];
};
