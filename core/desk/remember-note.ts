import { canonical } from '../reading/canonical.ts';
import type { Fact } from '../reading/fact.ts';
import { fact as factSchema } from '../reading/fact.ts';
import type { Decision } from '../record/decision.ts';
import { instantOf } from './apply.ts';
import type { NoteLog } from './note-log.ts';
import type { Cause, Turn } from './turn.ts';

type Heard = Extract<Cause, { noted: string }>;

/** Folds what a turn tells of notes and their edits: which there are, and how they read since when. */
export function rememberNote(notes: NoteLog, turn: Turn, number: number): void {
  const { cause } = turn;
  if (!('id' in cause)) return;
  if (cause.sort !== 'note') notes.heard(cause.id);
  if (cause.sort === 'note') {
    put(notes, turn, cause, cause.id, number);
    notes.reads(cause.id, cause.id, factsAt(turn, number));
  }
  if (cause.sort === 'edit') {
    // What was talk before the edit: the record has nothing of it yet.
    const first = (turn.entries ?? []).length + (turn.asked ?? []).length > 0;
    if (notes.noteOf(cause.of) === null && first) put(notes, turn, cause, cause.of, number);
    const note = notes.noteOf(cause.of);
    if (note !== null) {
      notes.reads(note.id, cause.id, factsAt(turn, note.turn));
      notes.asksNow(note.id, canonical(turn.reading?.asks ?? []));
      notes.leansNow(note.id, turn.leans);
    }
  }
  // A tick is taken back as a note is: by "undo", or by taking the reaction off.
  if (cause.sort === 'reaction' && (turn.entries ?? []).length > 0) put(notes, turn, cause, cause.id, number);
  if (cause.sort === 'redaction') notes.dropEdit(cause.of);
}

function put(
  notes: NoteLog,
  turn: Turn,
  { room, from, noted: heard }: Heard,
  id: string,
  number: number,
): void {
  const asked = canonical(turn.reading?.asks ?? []);
  const noted = instantOf(turn.entries?.find(({ place }) => place === number)?.noted ?? heard);
  const leans = turn.leans === undefined ? {} : { leans: turn.leans };
  const passed = turn.passed === undefined ? {} : { passed: turn.passed };
  notes.put({ id, turn: number, room, from, noted, asked, gone: false, ...leans, ...passed });
}

function factsAt({ entries = [] }: Turn, place: number): readonly Fact[] {
  return entries.flatMap((entry) => {
    return entry.place === place && isFact(entry.what) ? [entry.what] : [];
  });
}

/** What a note may say, not what is decided about it. */
function isFact(what: Fact | Decision): what is Fact {
  return FACTS.has(what.kind);
}

const FACTS: ReadonlySet<string> = new Set(factSchema.options.map(({ shape }) => shape.kind.value));
