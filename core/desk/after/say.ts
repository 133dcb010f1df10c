import type { Finding } from '../../record/finding.ts';
import { ruleValue } from '../../rules/defaults/rule-value.ts';
import type { Speech } from '../../rules/speech.ts';
import { MINUTE } from '../../time/instant.ts';
import { apply } from '../apply.ts';
import { BUTTONS } from '../notes/raise-gaps.ts';
import type { Session, Speaker } from '../session.ts';

/** Abouts that must reach the phone of whoever typed the note. */
const LOUD = new Set(['warning', 'incident', 'caution']);

/** Puts one speech into the turn: its post, what it decides, and the question it asks. Gives the post's key. `on`: its finding. */
export function say(session: Session, speaker: Speaker, speech: Speech, on: Finding | null = null): string {
  const { draft, timeline, now } = session;
  const { about, message, items, decides = [] } = speech;
  const asks = speech.asks ?? asksToComplete(session, speech, on);
  const loud = LOUD.has(about) && speaker.from !== '' ? [speaker.from] : [];
  const key = draft.post(speaker.room, {
    about,
    message,
    items,
    mentions: [...speech.mentions, ...loud],
    ...(speaker.note === '' ? {} : { replyTo: speaker.note }),
    ...(asks === undefined ? {} : { buttons: BUTTONS.slice(0, asks.choices.length) }),
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
function asksToComplete({ timeline, practice }: Session, speech: Speech, on: Finding | null): Speech['asks'] {
  const { completes } = speech;
  const entry = on === null ? undefined : timeline.entry(on.mark.entry);
  if (completes === undefined || entry === undefined) return undefined;
  const { slot, choices } = completes;
  const purpose = { sort: 'complete-entry', entry: entry.id, kind: entry.fact.kind, slot } as const;
  const lasts = ruleValue(practice, 'questionMinutes');
  return { choices, person: entry.from, lasts, purpose };
}
