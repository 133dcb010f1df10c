import type { Ask } from '../../reading/ask.ts';
import { isSenior, whoMay } from '../../rules/rights.ts';
import { lines } from '../../words/message.ts';
import type { Session, Speaker } from '../session.ts';

/**
 * The record of a stretch of days names everybody: in a chat that knows who types it goes to the lead, the deputy or the
 * manager alone. At the terminal anyone may have it, since whoever sits there has the folder. True where it was refused,
 * which is said.
 */
export function refusesExport(session: Session, speaker: Speaker, ask: Ask): boolean {
  const { practice, draft } = session;
  const { from, room, note, vouched } = speaker;
  if (ask.kind !== 'record' || vouched === undefined || isSenior(practice, from, vouched)) return false;
  const message = lines(
    [{ strong: 'The record goes to those who answer for it: ' }, `${whoMay(practice)}.`],
    'Ask one of them for it. What happened with one tip or scanner I tell anyone: “what happened with tip 4?”',
  );
  draft.post(room, { about: 'record', message, replyTo: note });
  return true;
}
