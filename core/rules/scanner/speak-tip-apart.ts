import { lines } from '../../words/message.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Speak } from '../speech.ts';
import { capital, scannerWords } from '../tips/tip-words.ts';

/** A scanner at one site and its calibration tip at another: it cannot be calibrated until they meet. */
export const speakTipApart: Speak<'calibration-tip-apart'> = ({ scanner, site, tipSite, items }, view) => {
  const { practice } = view;
  const message = lines(
    [
      { strong: `${capital(scannerWords(practice, scanner))} and its calibration tip are apart` },
      `: scanner at ${placeWords(practice, site, null)}, calibration tip at ${placeWords(practice, tipSite, null)}.`,
    ],
    'It can be calibrated when they are at one site. Here after all? Note that its calibration tip is.',
  );
  return [{ about: 'calibration', items, message, mentions: [] }];
};
