import type { Item } from '../../reading/slots.ts';
import type { IncidentState } from '../../record/state.ts';
import { isOfTip, openIncidents, tipsOf } from '../../rules/incidents/open-incidents.ts';
import { mayCloseIncident } from '../../rules/rights.ts';
import { toIso } from '../../time/instant.ts';
import { itemWords } from '../../words/item-words.ts';
import { lines } from '../../words/message.ts';
import { followUp } from '../after/follow-up.ts';
import { apply } from '../apply.ts';
import type { Target } from '../input.ts';
import { askPerson } from '../questions/ask-person.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** Closes an incident or a look-back with what was done: the lead's, a deputy's or a manager's word, which is kept. */
export function close(
  session: Session,
  speaker: Speaker,
  reason: string | undefined,
  target: Target | undefined,
): void {
  const { draft, posts } = session;
  const open = openIncidents(viewOf(session)).map(({ incident }) => incident);
  const post = target !== undefined && 'post' in target ? posts.get(target.post) : null;
  const meant = post === null ? ofTipNamed(open, reason) : ofPost(open, post.post.items, post.finding);
  if (meant.length === 0) {
    draft.post(speaker.room, {
      about: 'incident',
      message: lines('No incident is open.'),
      replyTo: speaker.note,
    });
    return;
  }
  // Several of one tip are one matter: it went from scanner to scanner before anyone answered.
  if (new Set(meant.map((one) => (isOfTip(one) ? tipsOf(one).join() : one.id))).size > 1) {
    const which = meant.map((one) =>
      whatOf(one)
        .map((item) => itemWords(session.practice, item))
        .join(', '),
    );
    const message = lines(
      `Which one? Open: ${which.join('; ')}. Reply to its post with “closed” and what was done.`,
    );
    draft.post(speaker.room, { about: 'question', message, replyTo: speaker.note });
    return;
  }
  const ids = meant.map(({ id }) => id);
  if (reason === undefined && mayCloseIncident(session.practice, speaker.from))
    askReason(session, speaker, ids);
  else closeWith(session, speaker, ids, reason);
}

/** Closes them with that reason; by who may not, it is refused and they stay open. */
export function closeWith(
  session: Session,
  speaker: Speaker,
  incidents: readonly string[],
  reason: string | undefined,
): void {
  const { draft, timeline, now } = session;
  const first = draft.entries.length;
  for (const incident of incidents)
    draft.decide(
      { kind: 'incident-closed', when: toIso(now), incident, ...(reason === undefined ? {} : { reason }) },
      speaker.room,
      speaker.from,
      speaker.from,
      speaker.vouched,
    );
  apply(timeline, draft.entries.slice(first));
  followUp(session, speaker, draft.entries.slice(first), []);
}

/** It is closed with what was done, which is kept for the inspector: asked for, and open until it is said. */
function askReason(session: Session, speaker: Speaker, incidents: readonly string[]): void {
  const message = lines(
    [{ strong: 'What was done?' }, ' It stays open until that is said.'],
    'Type it here, such as “dentist told, patient called back”. No patient names, please.',
  );
  const parts = { about: 'question', message, replyTo: speaker.note } as const;
  const key = session.draft.post(speaker.room, parts);
  askPerson(session, speaker, key, [], { sort: 'close-reason', incidents });
}

/** The one that the post opened, else those that share something with it. */
function ofPost(
  open: readonly IncidentState[],
  items: readonly Item[],
  finding: string | null,
): readonly IncidentState[] {
  const opened = open.filter(({ id }) => id === finding);
  return opened.length > 0
    ? opened
    : open.filter((incident) => incident.items.some((item) => items.includes(item)));
}

/** A load's incident is named by the load, not by every tip and scanner that it concerns. */
function whatOf(incident: IncidentState): readonly Item[] {
  return isOfTip(incident) ? incident.items : incident.items.slice(0, 1);
}

/** Those of the tip that what was done speaks of ("tip 5, told the dentist"); all of them where it speaks of none. */
function ofTipNamed(open: readonly IncidentState[], reason = ''): readonly IncidentState[] {
  const words = reason.toLowerCase().split(/[^\p{L}\p{N}-]+/u);
  const named = open.filter((incident) =>
    tipsOf(incident).some((id) =>
      words.some((word, n) => word === 'tip' && words[n + 1] === id.toLowerCase()),
    ),
  );
  return named.length > 0 ? named : open;
}
