import { ruleValue } from '../../core/defaults/rule-value.ts';
import type { Post } from '../../core/desk/effect.ts';
import { daysAhead } from '../../core/rules/day/day-times.ts';
import type { View } from '../../core/rules/matter.ts';
import { chatRoomFor } from '../../core/rules/room-of.ts';
import { type Instant, MINUTE } from '../../core/time/instant.ts';
import { lines } from '../../core/words/message.ts';
import type { Head } from '../store/chain.ts';

/** When a chat room gets the hash of a day. */
interface Evening {
  readonly room: string;
  readonly date: string;
  readonly at: Instant;
}

/**
 * The posts with number and hash of the record's last line that are due at that moment: one a chat room, in the minute of its
 * sites' last closing, which still is open; one that was missed is not made up for. They are no part of the record, since
 * they tell of all of it: their key is all that is kept, in the outbox.
 */
export function headPosts(view: View, { n, hash }: Head): readonly Post[] {
  return evenings(view)
    .filter(({ at }) => at <= view.now && view.now < at + MINUTE)
    .map(({ room, date }) => ({
      ...({ does: 'post', about: 'record', items: [], mentions: [] } as const),
      ...{ key: `hash/${date}/${room}`, room },
      message: lines(
        `The record tonight: ${n} ${n === 1 ? 'line' : 'lines'}, hash`,
        `${n}:${hash}`,
        'It shows later whether a line up to here was changed, not whether what was noted is true.',
      ),
    }));
}

/** The next instant after `view.now` at which one is due; `null`: the practice does not want them, or no site opens again. */
export function nextHeadPost(view: View): Instant | null {
  const next = Math.min(...evenings(view).flatMap(({ at }) => (at > view.now ? [at] : [])));
  return Number.isFinite(next) ? next : null;
}

function evenings(view: View): readonly Evening[] {
  if (!ruleValue(view.practice, 'nightlyHash')) return [];
  const found = new Map<string, Evening>();
  for (const { id } of view.practice.sites) {
    const room = chatRoomFor(view, id);
    if (room === null) continue;
    for (const { date, shut } of daysAhead(view, id)) {
      const key = `${room} ${date}`;
      found.set(key, { room, date, at: Math.max(shut, found.get(key)?.at ?? shut) });
    }
  }
  return [...found.values()];
}
