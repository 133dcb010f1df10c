import { zoneOf } from '../../record/where.ts';
import { type Instant, MINUTE } from '../../time/instant.ts';
import { localDateOf } from '../../time/zone.ts';
import { clockWords } from '../../words/clock-words.ts';
import type { Message } from '../../words/message.ts';
import type { Matter, Stage, View } from '../matter.ts';

/** A post this much behind its time is late: the program was down. */
const LATE = 5 * MINUTE;
/** A first asking this long after its cause had to wait for the site to open. */
const WAITED = 60 * MINUTE;

/** "Due since yesterday 17:40.": for posts that could not be said in time, and for those that ask again. */
export function lateWords(matters: readonly Matter[], stage: Stage, view: View): Message {
  const late = matters.filter((matter) => stage !== 'first' || isLate(matter, view));
  const since = late.map((matter) => sinceOf(matter, view));
  const earliest = Math.min(...since);
  const first = late[since.indexOf(earliest)];
  if (first === undefined || earliest >= view.now) return [];
  const zone = zoneOf(view.practice, first.site);
  return [{ line: [`Due since ${clockWords(earliest, view.now, zone)}.`] }];
}

/** A cause that is judged anew each day is due since it was asked for first. */
function sinceOf({ key, since }: Matter, { said }: View): Instant {
  return Math.min(since, said.saidAt(key, 'first') ?? since);
}

function isLate(matter: Matter, { practice, said, now }: View): boolean {
  if (matter.about === 'question') return false;
  const putOff = said.putOffUntil(matter.key);
  const at = matter.stages.find(({ stage }) => stage === 'first')?.at ?? now;
  if (putOff === null ? now - at >= LATE : now - Math.max(at, putOff) >= LATE) return true;
  return isFromBefore(matter.since, at, zoneOf(practice, matter.site));
}

/** It holds since before the quiet that it was moved out of. */
function isFromBefore(since: Instant, at: Instant, zone: string): boolean {
  return at - since >= WAITED || localDateOf(since, zone) < localDateOf(at, zone);
}
