import type { SameTipAgain, UnsafeTip } from '../../record/finding.ts';
import { lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import { YES_NO } from '../question.ts';
import type { Speech } from '../speech.ts';
import { openedBy } from './opened-by.ts';

/** Right behind the warning of a tip: whether it reached a patient. Anybody here may answer, it stays, and an incident is open. */
export function askReached(finding: UnsafeTip | SameTipAgain, view: View): Speech {
  const { tip, key, items, mark } = finding;
  return {
    about: 'question',
    items,
    message: lines([
      { strong: `Did tip ${tip} reach a patient?` },
      ' Answer ',
      { strong: 'yes' },
      ' or ',
      { strong: 'no' },
      '. No patient names here, please.',
    ]),
    mentions: [],
    asks: {
      choices: YES_NO,
      person: null,
      lasts: null,
      purpose: { sort: 'reached-patient', tip, entry: mark.entry, incident: key },
    },
    decides: [openedBy(finding, items, view)],
  };
}
