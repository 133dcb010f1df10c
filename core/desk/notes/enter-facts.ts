import { sitesOfChatRoom } from '../../practice/look-up.ts';
import type { Fact } from '../../reading/fact.ts';
import { apply } from '../apply.ts';
import type { Session, Speaker } from '../session.ts';
import type { TurnEntry } from '../turn.ts';
import { settleSet } from './which-tips.ts';

/**
 * Keeps facts at the place of their note and folds them in, one after the other: in "used tip 4, all the used ones sent"
 * the set is known only when the first fact stands. Gives back what was entered.
 */
export function enterFacts(
  session: Session,
  speaker: Speaker,
  facts: readonly Fact[],
  place: number,
): readonly TurnEntry[] {
  const { draft, practice, timeline } = session;
  const sites = sitesOfChatRoom(practice, speaker.room).map((site) => site.id);
  const first = draft.entries.length;
  keepIndexes(session, place);
  for (const fact of facts) {
    const settled = settleSet(
      fact,
      timeline.state,
      'site' in fact && fact.site !== undefined ? [fact.site] : sites,
    );
    if ('tips' in settled && settled.tips?.length === 0) continue;
    draft.enter(
      settled,
      {
        noted: speaker.noted,
        by: fact.by ?? speaker.from,
        from: speaker.from,
        room: speaker.room,
        vouched: speaker.vouched,
      },
      place,
    );
    apply(timeline, draft.entries.slice(-1));
  }
  return draft.entries.slice(first);
}

/** What joins an earlier note (an answer to what was asked of it) stands behind what that note has already. */
function keepIndexes({ draft, timeline }: Session, place: number): void {
  if (place === draft.number || draft.firstIndex.has(place)) return;
  const standing = timeline.ofTurn(place).map(({ index }) => index);
  draft.firstIndex.set(place, Math.max(-1, ...standing) + 1);
}
