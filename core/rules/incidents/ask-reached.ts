import type { SameTipAgain, UnsafeTip } from '../../record/finding.ts';
import { toIso } from '../../time/instant.ts';
import { lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import { YES_NO } from '../question.ts';
import type { Speech } from '../speech.ts';

/** Right behind the warning of a tip: whether it reached a patient. Anybody here may answer, it stays, and an incident is open. */
export function askReached({ tip, key, kind, items, mark }: UnsafeTip | SameTipAgain, { now }: View): Speech {
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
    decides: [
      {
        kind: 'incident-opened',
        when: toIso(now),
        incident: key,
        of: mark.entry,
        items: [...items],
        sort: kind,
      },
    ],
  };
}
