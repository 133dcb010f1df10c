import { findingOf, findingsOn } from '../../record/findings.ts';
import { composePost, dueAgainMessage, type Settling, settledMessage } from '../../rules/compose.ts';
import type { Matter } from '../../rules/matter.ts';
import { openMatters } from '../../rules/matters.ts';
import { inWords } from '../../rules/tips/tip-words.ts';
import type { PostLine } from '../post-log.ts';
import { isReminder } from '../reminders.ts';
import { type Session, viewOf } from '../session.ts';
import { doneBy } from './tick-marks.ts';

/**
 * Strikes through what no longer holds: reminders whose matters are all settled, and what a correction took the ground
 * from. The post says by whom and when where someone noted what it asked for; nobody gets a second one.
 */
export function strikeSettled(session: Session, by: string | null): void {
  const { draft, posts } = session;
  const corrected = draft.correction !== null;
  const open = new Map(openMatters(viewOf(session)).map((matter) => [matter.key, matter]));
  for (const line of posts.reminders()) {
    if (line.matters.some((key) => open.has(key))) continue;
    const done = doneBy(session, line);
    if (done !== null) strike(session, line, inWords(done.names), 'done', done.at);
    else strike(session, line, corrected ? by : null, corrected ? 'taken back' : 'done');
  }
  if (!corrected) return;
  reopenDue(session, by, open);
  strikeUntrue(session, by);
}

/** What a correction made due again is asked for as before: its posts stand once more, with what of them is open. */
function reopenDue(session: Session, by: string | null, open: ReadonlyMap<string, Matter>): void {
  const { draft, posts, practice, now } = session;
  for (const { post, matters } of posts.struck()) {
    const again = matters.flatMap((key) => open.get(key) ?? []);
    if (!isReminder(post.about) || again.length === 0) continue;
    const { message } = composePost(again, 'first', viewOf(session));
    draft.edit(post.room, post.key, dueAgainMessage({ ...post, message }, { practice, by, at: now }));
    draft.reopened.push(post.key);
    posts.reopen(post.key);
  }
}

/** Warnings whose finding is gone, and the questions that went with them. */
function strikeUntrue(session: Session, by: string | null): void {
  const { draft, posts, questions, timeline } = session;
  const { state } = timeline;
  for (const line of posts.warnings())
    if (line.finding !== null && findingOf(state, line.finding) === undefined)
      strike(session, line, by, 'taken back');
  for (const { key, purpose } of questions.all()) {
    if (purpose.sort !== 'reached-patient' && purpose.sort !== 'settled') continue;
    if (findingsOn(state, purpose.entry).length > 0) continue;
    draft.answered.push(key);
    questions.close(key);
    const line = posts.get(key);
    if (line !== null && !line.settled) strike(session, line, by, 'taken back');
  }
}

function strike(
  { draft, posts, practice, now }: Session,
  { post }: PostLine,
  by: string | null,
  how: Settling['how'],
  at = now,
): void {
  draft.edit(post.room, post.key, settledMessage(post, { practice, by, at, how }));
  draft.settled.push(post.key);
  posts.settle(post.key);
}
