import type { Entry } from '../../record/entry.ts';
import { lines, type Message } from '../../words/message.ts';
import type { View } from '../matter.ts';
import { type Moment, type Reason, readinessOf } from '../readiness.ts';
import type { Speak, Speech } from '../speech.ts';
import { capital, scannerWords } from '../tips/tip-words.ts';
import { readyInstead } from './ready-scanners.ts';
import { reasonWords } from './reason-words.ts';

/** A scan started on a scanner that is due for a cause, held, missing or on its way: a caution, with which one is ready. */
export const speakNotReady: Speak<'not-ready-scanner'> = ({ scanner, items }, view) => {
  return [caution(view, scanner, items, readinessOf(view, scanner).because.filter(isItsOwn))];
};

/**
 * The same for a weekly calibration whose day has closed without a pass: only the hours tell that, so it is looked for on
 * every scan that is started. Empty where another cause has been found on the scan already.
 */
export function weeklyOverdueSpeeches(entry: Entry, view: View): readonly Speech[] {
  if (entry.fact.kind !== 'scan-started') return [];
  const { scanner } = entry.fact;
  const reasons = readinessOf({ ...view, now: entry.when }, scanner).because.filter(isItsOwn);
  if (reasons.length === 0 || reasons.some(({ word }) => word !== 'weekly')) return [];
  return [caution(view, scanner, [`scanner:${scanner}`], reasons)];
}

/** What is not wiped is warned of, so it is not cautioned for as well. */
function isItsOwn({ blocks, word }: Reason): boolean {
  return blocks && word !== 'not-wiped';
}

function caution(
  moment: Moment,
  scanner: string,
  items: Speech['items'],
  reasons: readonly Reason[],
): Speech {
  const site = moment.state.scanners.get(scanner)?.site ?? null;
  const why = reasons.map((reason) => reasonWords(moment, reason, site)).join('; ');
  const message: Message = lines(
    [{ strong: `${capital(scannerWords(moment.practice, scanner))} is not ready` }, `: ${why}.`],
    readyInstead(moment, site, scanner),
  );
  return { about: 'caution', items, message, mentions: [] };
}
