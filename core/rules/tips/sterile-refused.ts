import type { SterileRefused } from '../../record/finding.ts';
import { lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { tipsInWords } from './tip-words.ts';
import { spokenTogether } from './together.ts';
import { unsafeWords } from './unsafe-words.ts';

/** `sterile` was said of tips that the record cannot take it of: a warning, and nothing changes. */
export function speakSterileRefused(finding: SterileRefused, view: View): readonly Speech[] {
  const all = spokenTogether(view, finding);
  if (all.length === 0) return [];
  const ids = all.map(({ tip }) => tip);
  const stay = ids.length === 1 ? 'is' : 'are';
  const why = all.map(({ tip, reasons }) => {
    return [`Tip ${tip}: ${reasons.map((reason) => unsafeWords(view, tip, reason)).join('. Also: ')}.`];
  });
  return [
    {
      about: 'warning',
      items: all.flatMap(({ items }) => items),
      message: [
        ...lines([
          { strong: `Not taken: ${tipsInWords(ids)} ${stay} not sterile on record.` },
          ' Do not use.',
        ]),
        { points: why },
        ...lines('Through a load, with its result noted, makes sterile. If a note is wrong, edit it.'),
      ],
      mentions: [],
    },
  ];
}
