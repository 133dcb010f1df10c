import { canonical } from '../../reading/canonical.ts';
import type { About } from '../../rules/about.ts';
import { strikeReplies } from '../after/strike-replies.ts';
import { closeQuestionsOf } from '../corrections/close-questions.ts';
import { correct } from '../corrections/correct.ts';
import { leant } from '../follow-on/take-follow-on.ts';
import type { Input } from '../input.ts';
import { guardPrivacy } from '../notes/guard-privacy.ts';
import { answerInPrivate, onlyAsks } from '../notes/in-private.ts';
import { askGaps, fillGaps } from '../notes/raise-gaps.ts';
import { type Session, type Speaker, vouching } from '../session.ts';
import { answerAsks } from './answer-asks.ts';
import { onNote } from './on-note.ts';

/** An edited note says what it now says, from the time of the note; only its author can edit it. */
export function onEdit(session: Session, input: EditInput): void {
  const { draft, notes } = session;
  const note = notes.noteOf(input.edits);
  if (note === null) {
    takeAnew(session, input);
    return;
  }
  if (note.from !== input.from) return;
  if (onlyAsks(session.practice, input)) {
    const { from, room, noted: at, id } = note;
    const speaker: Speaker = { from, room, noted: at, note: id, ...vouching(input) };
    answerInPrivate(session, speaker, { sort: 'note', id, room, from, at, text: input.text });
    return;
  }
  const asTyped = session.read(input.text, { at: note.noted, from: note.from, room: note.room });
  const { read, message } = guardPrivacy(session.practice, note.noted, input.text, asTyped);
  draft.reading = read.reading;
  closeQuestionsOf(session, note.id);
  const { from, room, noted } = note;
  const speaker: Speaker = { from, room, noted, note: note.id, ...vouching(input) };
  const leaning = message === null ? leant(session, speaker, input, read, note.turn) : null;
  const leans = leaning !== null;
  const { filled, open } = leans ? { filled: [], open: [] } : fillGaps(session, speaker, read.gaps);
  const own = [...read.reading.facts, ...filled.map((one) => one.entry)];
  if (leans && leaning !== 'asked') draft.leans = leaning.leans;
  const meant = leans ? (leaning === 'asked' ? [] : leaning.facts) : own;
  if (meant.length > 0 || session.timeline.ofTurn(note.turn).length > 0) {
    const byDeletion = input.byDeletion === true ? { typed: false as const } : {};
    correct(session, { ...speaker, noted: input.at, ...byDeletion }, note, meant, 'edited');
  } else strikeReplies(session, note, [], input.from);
  if (message === null) strikeReplies(session, note, [], input.from, PRIVACY);
  askGaps(session, speaker, open);
  const asks = canonical(read.reading.asks);
  if (asks !== note.asked) answerAsks(session, speaker, read);
  if (message !== null) {
    draft.post(note.room, { about: 'privacy', message, replyTo: note.id, mentions: [note.from] });
  }
}

/** What it asked to take out is out. */
const PRIVACY: ReadonlySet<About> = new Set(['privacy']);

/** What was talk before the edit left no line in the record: it is taken as the note that it now is, from its own time. */
function takeAnew(session: Session, input: EditInput): void {
  const { edits: id, room, from, text, noteAt: at } = input;
  if (at !== undefined) {
    const privately = input.privately === true ? { privately: true as const } : {};
    onNote(session, { sort: 'note', id, room, from, at, text, ...privately, ...vouching(input) });
  }
}

type EditInput = Extract<Input, { sort: 'edit' }>;
