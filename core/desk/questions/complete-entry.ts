import type { Fact } from '../../reading/fact.ts';
import type { Entry } from '../../record/entry.ts';
import type { State } from '../../record/state.ts';
import type { Purpose } from '../../rules/question.ts';
import { toIso } from '../../time/instant.ts';
import { followUp } from '../after/follow-up.ts';
import { apply } from '../apply.ts';
import { type Session, type Speaker, vouching } from '../session.ts';
import type { TurnEntry } from '../turn.ts';

/**
 * Says of an entry what the record could not tell: which autoclave, which of several loads. The entry stands completed in
 * its own place and at its own time, whoever answered; nothing is done where its note was taken back meanwhile.
 */
export function completeEntry(
  session: Session,
  speaker: Speaker,
  purpose: Extract<Purpose, { sort: 'complete-entry' }>,
  value: string,
): void {
  const { draft, timeline } = session;
  const asked = timeline.entry(purpose.entry);
  if (asked === undefined) return;
  const completed = withAnswer(asked.fact, purpose.slot, value, timeline.state);
  const note = session.notes.noteOfTurn(asked.turn);
  const first = draft.entries.length;
  for (const kept of timeline.ofTurn(asked.turn))
    draft.entries.push(turnEntry(kept, kept.id === asked.id ? completed : kept.fact));
  timeline.setAside(asked.turn);
  draft.setsAside.push(asked.turn);
  if (note !== null) draft.of = note.id;
  const entered = draft.entries.slice(first);
  apply(timeline, entered);
  const author: Speaker = { ...speaker, from: asked.from, noted: asked.noted };
  followUp(
    session,
    author,
    entered.filter(({ index }) => index === asked.index),
    [],
  );
}

function withAnswer(
  fact: Entry['fact'],
  slot: 'autoclave' | 'load',
  value: string,
  state: State,
): Entry['fact'] {
  if (!isOfLoadOrTest(fact)) return fact;
  if (slot === 'autoclave') return { ...fact, autoclave: value };
  // A load's key: named by its autoclave where it has one, as people would.
  const autoclave = state.loads.get(value)?.autoclave ?? null;
  if (!('load' in fact)) return fact;
  return autoclave === null ? { ...fact, load: value } : { ...fact, autoclave };
}

type OfLoadOrTest = Extract<Fact, { autoclave?: string }>;

function isOfLoadOrTest(fact: Entry['fact']): fact is OfLoadOrTest {
  return /^(load-started|load-finished|spore-test|autoclave-test)$/.test(fact.kind);
}

function turnEntry(entry: Entry, what: Entry['fact']): TurnEntry {
  const { turn, index, noted, by, from, room } = entry;
  return { what, noted: toIso(noted), by, from, room, ...vouching(entry), place: turn, index };
}
