import { Desk } from '../../core/desk/desk.ts';
import type { SavedDesk } from '../../core/desk/saved-desk.ts';
import type { TimelineOptions } from '../../core/record/timeline.ts';
import { withScratchHistory } from '../store/history/history-file.ts';
import type { Refold } from '../store/refold-check.ts';
import { historyFault } from './history-fault.ts';
import { wholeDesk } from './open-desk.ts';

/**
 * Works out anew, from lines of the journal, what a desk saved of them, and the history beside it; both are gone afterwards.
 * `options`: more entries at hand than that desk kept, so that the fold never goes past its place before it is cut there.
 */
export function refoldTo(saved: SavedDesk, options: TimelineOptions): Refold {
  const { through } = saved.timeline;
  return (lines, found) =>
    withScratchHistory((history, path) => {
      const desk = wholeDesk(lines, () => new Desk(undefined, { ...options, archive: history }));
      const value = desk.save(through);
      const needsHistory = desk.needsArchive;
      if (found === null || !needsHistory || value === null)
        return { value, needsHistory, historyFault: null };
      history.commit('as the record gives it');
      return { value, needsHistory, historyFault: historyFault(found, { history, path }, value, options) };
    });
}
