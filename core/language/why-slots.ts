import type { Clause, NoteScope } from './clause.ts';
import type { Entity } from './part.ts';
import { wordsOf } from './reasons.ts';

/** Where a slot came from: the words as typed, or how it was filled in. */
export type Source = { readonly said: string } | { readonly filledIn: string };
export type Slots = Record<string, Source>;

type Said = readonly number[] | string;

/** Slots that one run of words gives together. */
const TWINS: Readonly<Record<string, readonly string[]>> = {
  which: ['tips', 'items'],
  except: ['tips', 'items'],
  room: ['site'],
  site: ['room'],
  to: ['from'],
  count: ['times', 'day'],
  open: ['day'],
  shut: ['day'],
};
/** The mentions that may have given a slot that no frame accounts for. */
const ENTITIES: Readonly<Record<string, readonly Entity['is'][]>> = {
  celsius: ['cycle', 'celsius'],
  minutes: ['cycle'],
  site: ['site'],
  room: ['room'],
  autoclave: ['autoclave'],
  load: ['load'],
  person: ['person'],
  day: ['time'],
  days: ['time'],
  ran: ['time'],
  times: ['time'],
};

/** For every slot of an entry the words that gave it, or how it was filled in. `when` is told apart: it may be the note's own. */
export function slotsFor(
  entry: Readonly<Record<string, unknown>>,
  said: Readonly<Record<string, Said>>,
  clause: Clause,
  scope: NoteScope,
): Slots {
  const slots: Slots = {};
  for (const slot of Object.keys(entry)) {
    if (slot === 'kind' || slot === 'when' || slot === 'earliest') continue;
    slots[slot] = sourceOf(slot, entry[slot], said, clause, scope);
  }
  return slots;
}

function sourceOf(
  slot: string,
  value: unknown,
  said: Readonly<Record<string, Said>>,
  clause: Clause,
  scope: NoteScope,
): Source {
  for (const name of [slot, ...(TWINS[slot] ?? [])]) {
    const own = said[name];
    if (own !== undefined && own.length > 0) return whence(own, clause, scope);
  }
  if (slot === 'reason') return { said: String(value) };
  if (slot === 'by') return byWhom(String(value), clause, scope);
  if (slot === 'part') return { filledIn: 'all of it, where the note names no part' };
  const named = (ENTITIES[slot] ?? []).flatMap((is) => clause.entities(is).map(({ at }) => at));
  return named.length > 0 ? whence(named, clause, scope) : { filledIn: 'the words as a whole' };
}

function byWhom(name: string, clause: Clause, scope: NoteScope): Source {
  const person = clause.entities('person').find(({ entity }) => entity.name === name);
  if (person !== undefined) return whence([person.at], clause, scope);
  return { filledIn: scope.signature === name ? 'who signed the note' : 'who was spoken of just before' };
}

/** The words at these places of a clause as they were typed; a text says how a slot was filled in. */
export function whence(said: Said, clause: Clause, scope: NoteScope): Source {
  if (typeof said === 'string') return { filledIn: said };
  const words = said.flatMap((i) => {
    const part = clause.parts[i];
    return part === undefined ? [] : [scope.note.slice(...scope.offset(part))];
  });
  return { said: words.join(' … ') };
}

/** The words of a whole clause, for what is asked back about it. */
export function clauseWords(clause: Clause, scope: NoteScope): Slots {
  return { note: { said: wordsOf(clause.parts, scope) } };
}
