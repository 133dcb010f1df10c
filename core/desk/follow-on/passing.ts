import type { Practice } from '../../practice/practice.ts';
import type { Reading } from '../../reading/reading.ts';
import type { NoteInput } from '../input.ts';
import type { NoteLine } from '../note-log.ts';
import type { Session } from '../session.ts';
import { type Leaning, toldBefore } from './told.ts';

/**
 * A note that names a thing of ours and was not recorded ("haven't done white yet") may be what the next one leans on: where
 * its author told something in this chat room a few minutes before, the turn keeps that it was there, and none of its words.
 */
export function rememberPassing(session: Session, input: NoteInput, reading: Reading): void {
  const { draft, practice } = session;
  const { facts, asks, acts, plans, unclear } = reading;
  const onlyAsked = asks.length + acts.length > 0 && plans.length + unclear.length === 0;
  if (draft.entries.length > 0 || facts.length > 0 || onlyAsked || !namesThing(practice, input.text)) return;
  const { id, room, from, at } = input;
  draft.passed = toldBefore(session, { id, room, from, at }).some(({ line }) => line.from === from);
}

/** Whether its author typed something of the kind between that note and this one. */
export function passedSince({ notes }: Session, note: Leaning, told: NoteLine | null): boolean {
  if (told === null) return false;
  return notes
    .between(note.room, told.noted, note.at)
    .some(
      ({ id, turn, from, passed }) =>
        passed === true && from === note.from && id !== note.id && turn > told.turn,
    );
}

/** Whether words name a scanner, a tip or a number. */
function namesThing({ scanners }: Practice, text: string): boolean {
  if (/\d|\btips?\b|\bscanners?\b/i.test(text)) return true;
  const typed = ` ${text.toLowerCase().replaceAll(/[^\p{L}]+/gu, ' ')} `;
  return scanners.some(({ name, also }) =>
    [name, ...also].some((own) => typed.includes(` ${own.toLowerCase()} `)),
  );
}
