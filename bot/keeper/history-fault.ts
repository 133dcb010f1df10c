import canonicalize from 'canonicalize';
import type { SavedDesk } from '../../core/desk/saved-desk.ts';
import { LOADS, NUMBERS } from '../../core/record/history-in.ts';
import { inOrder } from '../../core/record/order.ts';
import { Timeline, type TimelineOptions } from '../../core/record/timeline.ts';
import { firstDifference } from '../store/history/compare.ts';
import type { History } from '../store/history/history.ts';
import { withScratchHistory } from '../store/history/history-file.ts';
import { damageIn, type HistoryLook, lookAtHistory } from '../store/history/look.ts';
import { basesIn } from '../store/history/rows.ts';

/** Entries taken from one history into another at a time. */
const PAGE = 1_024;

/**
 * What is wrong with a history.db that stands beside a snapshot, in plain words, or `null`: every row is held against
 * `wanted`, which the same lines gave, and every state to go back to against what the entries before it give.
 */
export function historyFault(
  found: HistoryLook,
  wanted: { readonly history: History; readonly path: string },
  { timeline }: Pick<SavedDesk, 'timeline'>,
  options: TimelineOptions = {},
): string | null {
  const damage = damageIn(found);
  if (damage !== null) return `it is damaged (${damage})`;
  const { loads, loadsByNumber } = timeline.state;
  const atHand = new Set([
    ...loads.kept.map(([key]) => `${LOADS} ${key}`),
    ...loadsByNumber.kept.map(([key]) => `${NUMBERS} ${key}`),
  ]);
  const other = lookAtHistory(wanted.path);
  if (other === null) return null;
  try {
    const inRows = firstDifference(found.db, other.db, (map, key) => atHand.has(`${map} ${key}`));
    return inRows ?? wrongBase(found, wanted.history, timeline.practice, options);
  } finally {
    other.close();
  }
}

/** Each state to go back to is folded again, from the first entry on, and held against the one kept. */
function wrongBase(
  found: HistoryLook,
  wanted: History,
  practice: SavedDesk['timeline']['practice'],
  options: TimelineOptions,
): string | null {
  return withScratchHistory((archive) => {
    const timeline = new Timeline(practice, { ...options, archive });
    let from: Parameters<History['after']>[0] = null;
    for (const { number, through, state } of basesIn(found.db)) {
      for (let at = from; ; ) {
        const page = wanted.after(at, PAGE).filter((entry) => inOrder(entry, through) <= 0);
        timeline.add(page);
        at = page.at(-1) ?? at;
        if (page.length < PAGE) break;
      }
      from = through;
      if (canonicalize(timeline.save(through).state) !== canonicalize(state))
        return `the state number ${number} that is kept to go back to is not what the record gives`;
    }
    return null;
  });
}
