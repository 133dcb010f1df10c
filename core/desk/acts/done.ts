import { itemWords } from '../../answers/item-words.ts';
import { lines } from '../../answers/message.ts';
import { ruleValue } from '../../rules/defaults/rule-value.ts';
import type { Matter } from '../../rules/matter.ts';
import { openMatters } from '../../rules/matters.ts';
import { MINUTE } from '../../time/instant.ts';
import { followUp } from '../after/follow-up.ts';
import type { Target } from '../input.ts';
import { enterFacts } from '../notes/enter-facts.ts';
import { BUTTONS } from '../notes/raise-gaps.ts';
import type { PostLine } from '../post-log.ts';
import type { Choice, Purpose } from '../question.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** A tick on a reminder: the post replied to, else the only one open in this chat room; with several, it asks which. */
export function done(session: Session, speaker: Speaker, target: Target | undefined): void {
  const named = target !== undefined && 'post' in target ? session.posts.get(target.post) : null;
  if (named !== null) {
    tick(session, speaker, named);
    return;
  }
  const open = session.posts.open(speaker.room).filter((line) => tickable(session, line).length > 0);
  const [only] = open;
  if (only === undefined) return;
  if (open.length === 1) tick(session, speaker, only);
  else
    askWhich(
      session,
      speaker,
      open.map((line) => reminderChoice(session, line)),
      {
        sort: 'which-reminder',
        posts: open.map((line) => line.post.key),
      },
    );
}

/** Records what a reminder asked for; with several items in it, asks which. */
export function tick(session: Session, speaker: Speaker, line: PostLine): void {
  const matters = tickable(session, line);
  const [only] = matters;
  if (only === undefined) {
    if (!line.settled && line.matters.length > 0) sayCannotTick(session, speaker);
    return;
  }
  if (matters.length === 1) recordTick(session, speaker, [only]);
  else
    askWhich(
      session,
      speaker,
      matters.map((matter) => matterChoice(session, matter)),
      {
        sort: 'which-done',
        post: line.post.key,
        matters: matters.map((matter) => matter.key),
      },
    );
}

/** Records what these matters asked for, by whoever ticked, at that time. */
export function recordTick(session: Session, speaker: Speaker, matters: readonly Matter[]): void {
  const facts = matters.flatMap((matter) => matter.tick?.(speaker.noted, speaker.from) ?? []);
  const entered = enterFacts(session, speaker, facts, session.draft.number);
  if (entered.length > 0) followUp(session, speaker, entered, []);
}

function tickable(session: Session, line: PostLine): readonly Matter[] {
  return openMatters(viewOf(session)).filter(
    (matter) => matter.tick !== undefined && line.matters.includes(matter.key),
  );
}

/** A load's result, a test or a release is never a tick: it has to be typed. */
function sayCannotTick(session: Session, speaker: Speaker): void {
  const message = lines('That one has to be typed: say what the result was, or who released what.');
  session.draft.post(speaker.room, {
    about: 'record',
    message,
    ...(speaker.note === '' ? {} : { replyTo: speaker.note }),
  });
}

function askWhich(session: Session, speaker: Speaker, choices: readonly Choice[], purpose: Purpose): void {
  const { draft, now } = session;
  const offered = [...choices, { label: 'all of them', value: 'all' }];
  const message = [{ line: ['Which one is done?'] }, { steps: offered.map((choice) => [choice.label]) }];
  const key = draft.post(speaker.room, {
    about: 'question',
    message,
    ...(speaker.note === '' ? {} : { replyTo: speaker.note }),
    buttons: BUTTONS.slice(0, offered.length),
  });
  const until = now + ruleValue(session.practice, 'questionMinutes') * MINUTE;
  draft.asked.push({
    key,
    room: speaker.room,
    person: speaker.from,
    asked: now,
    until,
    choices: offered,
    items: [],
    purpose,
  });
}

function matterChoice({ practice }: Session, matter: Matter): Choice {
  return { label: matter.items.map((item) => itemWords(practice, item)).join(', '), value: matter.key };
}

function reminderChoice(session: Session, line: PostLine): Choice {
  const items = tickable(session, line).flatMap(({ items }) =>
    items.map((item) => itemWords(session.practice, item)),
  );
  return { label: `${line.post.about}: ${items.join(', ')}`, value: line.post.key };
}
