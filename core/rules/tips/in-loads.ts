import type { InTwoLoads, LeftOpenLoad, NeverUsedInTwoLoads } from '../../record/finding.ts';
import { loadWords } from '../../words/load-words.ts';
import { type Line, lines } from '../../words/message.ts';
import type { View } from '../matter.ts';
import type { Speech } from '../speech.ts';
import { capital, inWords, tipsInWords } from './tip-words.ts';
import { foundWith, spokenTogether } from './together.ts';

/** In a load twice running with no use between: said, since a use may have gone unnoted, and a cycle is spent. */
export function speakNeverUsed(finding: NeverUsedInTwoLoads, view: View): readonly Speech[] {
  const all = spokenTogether(view, finding);
  if (all.length === 0) return [];
  const ids = all.map(({ tip }) => tip);
  return [
    {
      about: 'load',
      items: all.flatMap(({ items }) => items),
      message: [
        ...lines([{ strong: `Not used since the last load: ${tipsInWords(ids)}.` }, ' Was a use not noted?']),
        { points: all.map(({ tip, loads }) => [`Tip ${tip}: ${loadsInWords(view, loads)}.`]) },
      ],
      mentions: [],
    },
  ];
}

/** In two loads at once: one of the two notes is wrong. */
export function speakInTwoLoads(finding: InTwoLoads, view: View): readonly Speech[] {
  const all = spokenTogether(view, finding);
  if (all.length === 0) return [];
  return [
    {
      about: 'caution',
      items: all.flatMap(({ items }) => items),
      message: [
        ...lines([
          { strong: `In two loads at once: ${tipsInWords(all.map(({ tip }) => tip))}.` },
          ' Sterile only when both have passed. If one is a slip, edit that note.',
        ]),
        { points: all.map(({ tip, loads }): Line => [`Tip ${tip}: ${loadsInWords(view, loads)}.`]) },
      ],
      mentions: [],
    },
  ];
}

/**
 * Fitted, used or removed while its load is open: not part of that load's pass. Left out where a warning of the same
 * note says that the load has no result yet.
 */
export function speakLeftOpenLoad(finding: LeftOpenLoad, view: View): readonly Speech[] {
  const warned = foundWith(view, finding, 'unsafe-tip').map(({ tip }) => tip);
  const all = spokenTogether(view, finding).filter(({ tip }) => !warned.includes(tip));
  if (all.length === 0) return [];
  const ids = all.map(({ tip }) => tip);
  const loads = [...new Set(all.map(({ load }) => load))];
  const [it, needs] = ids.length === 1 ? ['it', 'It needs'] : ['them', 'They need'];
  return [
    {
      about: 'load',
      items: all.flatMap(({ items }) => items),
      message: lines([
        { strong: `${capital(tipsInWords(ids))}: out before ${loadsInWords(view, loads)} had its result.` },
        ` A pass will not count for ${it}. ${needs} another load.`,
      ]),
      mentions: [],
    },
  ];
}

function loadsInWords({ practice, state }: View, keys: readonly string[]): string {
  return inWords(
    keys.flatMap((key) => {
      const load = state.loads.get(key);
      return load === undefined ? [] : [loadWords(practice, load)];
    }),
  );
}
