import { itemWords } from '../../answers/item-words.ts';
import { lines } from '../../answers/message.ts';
import { openIncidents } from '../../rules/incidents/open-incidents.ts';
import { toIso } from '../../time/instant.ts';
import { followUp } from '../after/follow-up.ts';
import { apply } from '../apply.ts';
import type { Target } from '../input.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** Closes an incident or a look-back with what was done: the lead's, a deputy's or a manager's word, which is kept. */
export function close(
  session: Session,
  speaker: Speaker,
  reason: string | undefined,
  target: Target | undefined,
): void {
  const { draft, timeline, posts, now } = session;
  const open = openIncidents(viewOf(session)).map(({ incident }) => incident);
  const post = target !== undefined && 'post' in target ? posts.get(target.post) : null;
  const meant =
    post === null
      ? open
      : open.filter((incident) => incident.items.some((item) => post.post.items.includes(item)));
  const [incident] = meant;
  if (incident === undefined) {
    draft.post(speaker.room, {
      about: 'incident',
      message: lines('No incident is open.'),
      replyTo: speaker.note,
    });
    return;
  }
  if (meant.length > 1) {
    const which = meant.map((one) => one.items.map((item) => itemWords(session.practice, item)).join(', '));
    const message = lines(
      `Which one? Open: ${which.join('; ')}. Reply to its post with “closed” and what was done.`,
    );
    draft.post(speaker.room, { about: 'question', message, replyTo: speaker.note });
    return;
  }
  const first = draft.entries.length;
  draft.decide(
    {
      kind: 'incident-closed',
      when: toIso(now),
      incident: incident.id,
      ...(reason === undefined ? {} : { reason }),
    },
    speaker.room,
    speaker.from,
    speaker.from,
  );
  apply(timeline, draft.entries.slice(first));
  followUp(session, speaker, draft.entries.slice(first), []);
}
