import { lines } from '../../words/message.ts';
import type { Speak } from '../speech.ts';
import { scannerWords } from '../tips/tip-words.ts';
import { readyInstead } from './ready-scanners.ts';
import { scanWords } from './reason-words.ts';

/** A warning at once; not a second time for the scan that follows the fitting it was said at. */
export const speakNotWiped: Speak<'not-wiped'> = (finding, view) => {
  const { scanner, earlier, items, again } = finding;
  if (again) return [];
  const site = view.state.scanners.get(scanner)?.site ?? null;
  const message = lines(
    [{ strong: `Stop: ${scannerWords(view.practice, scanner)} has not been wiped` }, ' since its last scan.'],
    `That ${scanWords(view, earlier)}.`,
    'Wipe scanner and base before it is used; your own product’s contact time comes first. Same patient? Say “same patient”.',
    readyInstead(view, site, scanner),
  );
  return [{ about: 'warning', items, message, mentions: [] }];
};
