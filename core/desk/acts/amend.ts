import { ruleValue } from '../../defaults/rule-value.ts';
import { canonical } from '../../reading/canonical.ts';
import { type Fact, fact as factSchema } from '../../reading/fact.ts';
import { MINUTE } from '../../time/instant.ts';
import { lines } from '../../words/message.ts';
import { correct } from '../corrections/correct.ts';
import type { Target } from '../input.ts';
import type { NoteLine } from '../note-log.ts';
import type { Session, Speaker } from '../session.ts';
import { targetNote } from './target-note.ts';

/** "sorry, tip 5 not 4": the note as it should have been, from its own time. */
export function amend(
  session: Session,
  speaker: Speaker,
  { from, to }: { readonly from?: string; readonly to: string },
  target: Target | undefined,
): void {
  const { draft, timeline } = session;
  const amended = (one: NoteLine | null) =>
    (one === null ? [] : factsAt(session, one)).map((fact) => replaced(fact, from, to, timeline.state.tips));
  const note = noteToAmend(session, speaker, from, target, amended);
  const before = note === null ? [] : factsAt(session, note);
  const after = amended(note);
  if (note === null || canonical(before) === canonical(after)) {
    const what =
      from === undefined ? 'Which note should say that' : `I find no note of yours here that says ${from}`;
    const message = lines(`${what}? Edit the note itself, or type it again after “undo”.`);
    draft.post(speaker.room, { about: 'question', message, replyTo: speaker.note });
    return;
  }
  correct(session, speaker, note, after, 'amended');
}

/** The note that a correction means; where the latest does not say what was wrong, the latest of the hour that does. */
function noteToAmend(
  session: Session,
  speaker: Speaker,
  from: string | undefined,
  target: Target | undefined,
  amended: (note: NoteLine) => readonly Fact[],
): NoteLine | null {
  const { notes, practice } = session;
  const latest = targetNote(session, speaker, target);
  const says = (note: NoteLine) => canonical(factsAt(session, note)) !== canonical(amended(note));
  if (latest === null || target !== undefined || from === undefined || says(latest)) return latest;
  const since = speaker.noted - ruleValue(practice, 'lateNoteMinutes') * MINUTE;
  return notes.latestOf(speaker.room, speaker.from, (note) => note.noted >= since && says(note)) ?? latest;
}

function factsAt(session: Session, note: NoteLine): readonly Fact[] {
  return session.timeline.ofTurn(note.turn).flatMap(({ fact }) => {
    const parsed = factSchema.safeParse(fact);
    return parsed.success ? [parsed.data] : [];
  });
}

const SINGLE = ['scanner', 'tip', 'load', 'site', 'room', 'autoclave'] as const;
const LISTS = ['tips', 'items'] as const;

/** The fact with one id in place of another; with none named, in place of its only tip, scanner or load. */
function replaced(one: Fact, from: string | undefined, to: string, tips: ReadonlyMap<string, unknown>): Fact {
  const slots: Record<string, unknown> = { ...one };
  const old = from ?? onlyId(slots, tips.has(to) ? ['tips', 'tip'] : ['scanner', 'load', 'site']);
  if (old === null) return one;
  for (const slot of SINGLE) if (slots[slot] === old) slots[slot] = to;
  for (const slot of LISTS) {
    const list = slots[slot];
    if (Array.isArray(list)) slots[slot] = list.map((id: string) => swap(id, old, to));
  }
  const parsed = factSchema.safeParse(slots);
  return parsed.success ? parsed.data : one;
}

function swap(id: string, from: string, to: string): string {
  if (id === from) return to;
  return id.endsWith(`:${from}`) ? `${id.slice(0, -from.length)}${to}` : id;
}

function onlyId(slots: Readonly<Record<string, unknown>>, names: readonly string[]): string | null {
  for (const name of names) {
    const value = slots[name];
    if (typeof value === 'string') return value;
    if (Array.isArray(value) && value.length === 1) return String(value[0]);
  }
  return null;
}
