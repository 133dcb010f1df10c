import { ruleValue } from '../../defaults/rule-value.ts';
import { composePost } from '../../rules/compose.ts';
import type { Matter, Stage } from '../../rules/matter.ts';
import { waitingMatters } from '../../rules/matters.ts';
import { DAY } from '../../time/instant.ts';
import { sumUpLate } from '../after/sum-up-late.ts';
import { tickMarks } from '../after/tick-marks.ts';
import { readyMarks } from '../after/warm-up-marks.ts';
import { type Session, viewOf } from '../session.ts';

interface Due {
  readonly matter: Matter;
  readonly stage: Stage;
  /** Stages that this one makes up for: they fell due while the program was down. */
  readonly missed: readonly Stage[];
}

/** A question that has lapsed is still answered in reply to its post, for so long (assumed). */
const REPLY_KEPT_MS = 7 * DAY;

/** Says what has fallen due by now and was not said: matters of one chat room that belong together are one post. */
export function onTick(session: Session): void {
  readyMarks(session);
  for (const question of session.questions.lapsed(session.now - REPLY_KEPT_MS)) {
    session.draft.answered.push(question.key);
    session.questions.close(question.key);
  }
  sumUpLate(session);
  const groups = Map.groupBy(
    dueNow(session),
    ({ matter, stage }) => `${matter.room} ${matter.group} ${stage}`,
  );
  for (const due of groups.values()) postTogether(session, due);
}

function dueNow(session: Session): readonly Due[] {
  return waitingMatters(viewOf(session)).flatMap(({ matter, unsaid }) => {
    const due = unsaid.filter(({ at }) => at <= session.now);
    const last = due.at(-1);
    if (last === undefined) return [];
    return [{ matter, stage: last.stage, missed: due.slice(0, -1).map(({ stage }) => stage) }];
  });
}

function postTogether(session: Session, due: readonly Due[]): void {
  const { draft } = session;
  const [first] = due;
  if (first === undefined) return;
  const matters = due.map(({ matter }) => matter);
  const { about, message, items, mentions } = composePost(matters, first.stage, viewOf(session));
  const ticks = matters.some((matter) => matter.tick !== undefined);
  const key = draft.post(first.matter.room, {
    about,
    message,
    items,
    mentions,
    ...(ticks ? { buttons: ['✅', '⏰'] } : {}),
  });
  for (const { matter, stage, missed } of due) {
    const marks = (matter.tick?.(session.now, '') ?? []).flatMap(tickMarks);
    for (const one of [...missed, stage]) draft.matterSaid(matter.key, one, key, marks);
    if (matter.asks !== undefined) {
      draft.asked.push({
        key,
        room: matter.room,
        person: null,
        asked: session.now,
        until: session.now + ruleValue(session.practice, 'questionMinutes') * 60_000,
        choices: matter.asks.choices,
        items: matter.items,
        purpose: matter.asks.purpose,
      });
    }
  }
}
