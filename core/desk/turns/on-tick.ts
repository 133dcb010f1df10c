import { composePost } from '../../rules/compose.ts';
import { ruleValue } from '../../rules/defaults/rule-value.ts';
import type { Matter, Stage, View } from '../../rules/matter.ts';
import { openMatters } from '../../rules/matters.ts';
import type { Instant } from '../../time/instant.ts';
import { readyMarks } from '../after/warm-up-marks.ts';
import { type Session, viewOf } from '../session.ts';

interface Due {
  readonly matter: Matter;
  readonly stage: Stage;
  /** Stages that this one makes up for: they fell due while the program was down. */
  readonly missed: readonly Stage[];
}

/** Says what has fallen due by now and was not said: matters of one chat room that belong together are one post. */
export function onTick(session: Session): void {
  readyMarks(session);
  for (const question of session.questions.lapsed(session.now)) {
    session.draft.answered.push(question.key);
    session.questions.close(question.key);
  }
  const groups = Map.groupBy(
    dueNow(session),
    ({ matter, stage }) => `${matter.room} ${matter.group} ${stage}`,
  );
  for (const due of groups.values()) postTogether(session, due);
}

/** The earliest instant after `after` at which a matter falls due; `null` when nothing is waited for. */
export function nextMatter(view: View, after: Instant): Instant | null {
  const times = openMatters(view).flatMap((matter) => unsaid(matter, view).map(({ at }) => at));
  const future = times.filter((at) => at > after);
  return future.length === 0 ? null : Math.min(...future);
}

function dueNow(session: Session): readonly Due[] {
  const view = viewOf(session);
  return openMatters(view).flatMap((matter) => {
    const due = unsaid(matter, view).filter(({ at }) => at <= session.now);
    const last = due.at(-1);
    if (last === undefined) return [];
    return [{ matter, stage: last.stage, missed: due.slice(0, -1).map(({ stage }) => stage) }];
  });
}

/** Stages not said yet, with when they fall due: the next one comes when it was put off to, sooner or later than it would have. */
function unsaid(matter: Matter, view: View): readonly { readonly stage: Stage; readonly at: Instant }[] {
  const waiting = matter.stages.filter(({ stage }) => view.said.saidAt(matter.key, stage) === null);
  const putOff = view.said.putOffUntil(matter.key);
  if (putOff === null) return waiting;
  const lastSaid = Math.max(
    ...STAGES.map((stage) => view.said.saidAt(matter.key, stage) ?? Number.NEGATIVE_INFINITY),
  );
  if (putOff <= lastSaid) return waiting;
  return waiting.map((one, index) =>
    index === 0 ? { ...one, at: putOff } : { ...one, at: Math.max(one.at, putOff + 1) },
  );
}

const STAGES: readonly Stage[] = ['first', 'again', 'lead'];

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
    for (const one of [...missed, stage]) draft.matterSaid(matter.key, one, key);
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
