import { readBack } from '../../answers/read-back.ts';
import type { Entry } from '../../record/entry.ts';
import { findingsOn } from '../../record/findings.ts';
import { faultReply } from '../../rules/faults/fault-reply.ts';
import { incidentAnswered } from '../../rules/incidents/incident-answered.ts';
import { loadReply } from '../../rules/loads/load-reply.ts';
import { sporeReply } from '../../rules/loads/spore-reply.ts';
import type { View } from '../../rules/matter.ts';
import { calibrationReply } from '../../rules/scanner/calibration-reply.ts';
import { arrivalSpeeches, departureSpeeches } from '../../rules/scanner/moving.ts';
import { weeklyOverdueSpeeches } from '../../rules/scanner/speak-not-ready.ts';
import type { Speech } from '../../rules/speech.ts';
import { toEntry } from '../apply.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';
import type { TurnEntry } from '../turn.ts';
import { say } from './say.ts';
import { isStop, speakFindings } from './speak-findings.ts';
import { takenOf } from './taken.ts';
import { startWarmUp } from './warm-up-marks.ts';

/**
 * What a note calls for at once, in the order in which it must be heard: warnings, then what to do, then that it is
 * recorded. A reaction is the best answer; a line comes only where ids or times are worth reading back. `leant`: the note
 * names its facts by way of an earlier one only, so all of it is read back.
 */
export function followUp(
  session: Session,
  speaker: Speaker,
  entered: readonly TurnEntry[],
  filledIn: readonly string[],
  leant: 'same' | 'meant' | null = null,
): void {
  const entries = entered.map(toEntry);
  let warned = speakFindings(session, speaker);
  for (const entry of entries) {
    for (const speech of repliesTo(entry, viewOf(session))) {
      say(session, speaker, speech);
      warned ||= isStop(speech.about);
    }
  }
  startWarmUp(session, speaker, entries);
  acknowledge(session, speaker, entries, { filledIn, leant }, warned);
}

/** Replies that a kind of fact calls for by itself, whatever the rules found. */
function repliesTo(entry: Entry, view: View): readonly Speech[] {
  switch (entry.fact.kind) {
    case 'moved':
    case 'found':
      return arrivalSpeeches(entry, view);
    case 'scan-started':
      return weeklyOverdueSpeeches(entry, view);
    case 'departed':
      return departureSpeeches(entry, view);
    case 'calibrated':
      return calibrationReply(entry, view);
    case 'load-started':
    case 'load-finished':
      return loadReply(entry, view);
    case 'spore-test':
      return sporeReply(entry, view);
    case 'fault':
      return faultReply(entry, view);
    case 'incident-answered':
      return incidentAnswered(entry, view);
    default:
      return [];
  }
}

function acknowledge(
  session: Session,
  speaker: Speaker,
  entries: readonly Entry[],
  { filledIn, leant }: { readonly filledIn: readonly string[]; readonly leant: 'same' | 'meant' | null },
  warned: boolean,
): void {
  const { draft, timeline } = session;
  const { state } = timeline;
  const { stands, plain } = takenOf(
    entries.flatMap(({ id }) => findingsOn(state, id)),
    entries,
  );
  const message = stands.length === 0 ? null : readBack(stands, viewOf(session), filledIn, leant);
  if (message !== null) draft.post(speaker.room, { about: 'record', message, replyTo: speaker.note });
  // A warned note is kept as said, but a thumb under it would look like leave to go on; so it would where it was refused.
  if (warned || !plain || speaker.note === '') return;
  // The waiting mark of a tip that warms says that the note was taken.
  if (
    draft.correction === null &&
    draft.effects.some((one) => one.does === 'react' && one.to === speaker.note)
  )
    return;
  // A note has its thumb already when it is edited.
  draft.react(speaker.room, speaker.note, draft.correction === 'edited' ? '✏️' : '👍');
}
