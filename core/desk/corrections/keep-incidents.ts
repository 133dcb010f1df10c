import type { Entry } from '../../record/entry.ts';
import { findingOf } from '../../record/findings.ts';
import { apply } from '../apply.ts';
import type { Session } from '../session.ts';

/**
 * After a correction an incident whose warning still stands is open as before: the note said its tip was unsafe then and
 * says so now. `before`: what stood in the note's place.
 */
export function keepIncidents(session: Session, before: readonly Entry[], place: number): void {
  const { draft, timeline } = session;
  const { state } = timeline;
  const first = draft.entries.length;
  for (const { fact, noted, by, from, room } of before)
    if (fact.kind === 'incident-opened' && findingOf(state, fact.incident) !== undefined)
      draft.enter(fact, { noted, by, from, room }, place);
  apply(timeline, draft.entries.slice(first));
}
