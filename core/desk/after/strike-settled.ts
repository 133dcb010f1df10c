import { settledMessage } from '../../rules/compose.ts';
import { openMatters } from '../../rules/matters.ts';
import type { About } from '../effect.ts';
import { type Session, viewOf } from '../session.ts';

/** Reminders: posts that ask for something and are struck through when it is done. The day's posts stand as they were. */
const REMINDERS = new Set<About>([
  'calibration',
  'settle',
  'clean',
  'cover',
  'tips',
  'load',
  'supply',
  'order',
  'spore-test',
  'escalation',
]);

/**
 * Strikes through what no longer holds: reminders whose matters are all settled, and warnings that a correction took the
 * ground from. The post says by whom and when, and nobody gets a second one.
 */
export function strikeSettled(session: Session, by: string | null): void {
  const { draft, posts, timeline, practice, now } = session;
  const open = new Set(openMatters(viewOf(session)).map((matter) => matter.key));
  const corrected = draft.correction !== null;
  for (const line of posts.open(null)) {
    if (!REMINDERS.has(line.post.about) || line.matters.some((key) => open.has(key))) continue;
    const how = corrected ? 'taken back' : 'done';
    draft.edit(line.post.room, line.post.key, settledMessage(line.post, { practice, by, at: now, how }));
    draft.settled.push(line.post.key);
    posts.settle(line.post.key);
  }
  if (!corrected) return;
  const found = new Set(timeline.state.history.findings.map((finding) => finding.key));
  for (const line of posts.warnings()) {
    if (line.finding === null || found.has(line.finding)) continue;
    draft.edit(
      line.post.room,
      line.post.key,
      settledMessage(line.post, { practice, by, at: now, how: 'taken back' }),
    );
    draft.settled.push(line.post.key);
    posts.settle(line.post.key);
  }
}
