import { ruleValue } from '../../defaults/rule-value.ts';
import type { Entry } from '../../record/entry.ts';
import type { Finding } from '../../record/finding.ts';
import type { Purpose } from '../../rules/question.ts';
import type { Speech } from '../../rules/speech.ts';
import { MINUTE, toIso } from '../../time/instant.ts';
import { apply } from '../apply.ts';
import { buttonsFor } from '../questions/buttons.ts';
import type { Session, Speaker } from '../session.ts';

/** Abouts that must reach the phone of whoever typed the note. */
const LOUD = new Set(['warning', 'incident', 'caution']);

/** Puts one speech into the turn: its post, what it decides, and the question it asks. Gives the post's key. `on`: its finding. */
export function say(session: Session, speaker: Speaker, speech: Speech, on: Finding | null = null): string {
  const { draft, timeline, now } = session;
  const { about, message, items, decides = [] } = speech;
  const asks = speech.asks ?? asksToComplete(session, speaker, speech, on);
  const loud = LOUD.has(about) && speaker.from !== '' ? [speaker.from] : [];
  const key = draft.post(speaker.room, {
    about,
    message,
    items,
    mentions: [...speech.mentions, ...loud],
    ...(speaker.note === '' ? {} : { replyTo: speaker.note }),
    ...(asks === undefined ? {} : { buttons: buttonsFor(asks.choices, asks.purpose) }),
  });
  const first = draft.entries.length;
  for (const decision of decides) draft.decide(decision, speaker.room, null, '');
  apply(timeline, draft.entries.slice(first));
  if (asks !== undefined) {
    const { choices, person, lasts, purpose } = asks;
    const until = lasts === null ? null : now + lasts * MINUTE;
    draft.asked.push({ key, room: speaker.room, person, asked: now, until, choices, items, purpose });
  }
  return key;
}

/** Who wrote the note may complete it as long as any question stays; anybody else in reply to the post. */
function asksToComplete(
  session: Session,
  speaker: Speaker,
  speech: Speech,
  on: Finding | null,
): Speech['asks'] {
  const { timeline, practice } = session;
  const { completes } = speech;
  const entry = on === null ? undefined : timeline.entry(on.mark.entry);
  if (completes === undefined || entry === undefined) return undefined;
  const { slot, choices } = completes;
  const purpose = slot === 'tips' ? tipsOfLoad(session, speaker, entry) : completion(entry, slot);
  if (purpose === null) return undefined;
  const lasts = ruleValue(practice, 'questionMinutes');
  return { choices, person: entry.from, lasts, purpose };
}

function completion({ id, fact }: Entry, slot: 'autoclave' | 'load'): Purpose {
  return { sort: 'complete-entry', entry: id, kind: fact.kind, slot };
}

/** The tips of a load whose result was told alone: they join its note. When it went on is not known: just before its end. */
function tipsOfLoad(
  { notes }: Session,
  speaker: Speaker,
  { fact, turn, from, noted }: Entry,
): Purpose | null {
  if (fact.kind !== 'load-finished') return null;
  // The note of this very turn is not in the log yet.
  const note = notes.noteOfTurn(turn)?.id ?? speaker.note;
  const { load, autoclave } = fact;
  const when = toIso(Date.parse(fact.when) - 1);
  const started = { kind: 'load-started', when, load, ...(autoclave === undefined ? {} : { autoclave }) };
  return {
    sort: 'complete',
    turn,
    list: 'facts',
    draft: started,
    about: 'tip',
    slot: 'tips',
    form: 'ids',
    author: from,
    note,
    noted,
  };
}
