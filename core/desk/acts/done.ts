import type { About } from '../../rules/about.ts';
import type { Matter } from '../../rules/matter.ts';
import { openMatters } from '../../rules/matters.ts';
import type { Purpose } from '../../rules/question.ts';
import { itemWords } from '../../words/item-words.ts';
import { lines } from '../../words/message.ts';
import { followUp } from '../after/follow-up.ts';
import { tickMarks } from '../after/tick-marks.ts';
import type { Target } from '../input.ts';
import { enterFacts } from '../notes/enter-facts.ts';
import type { PostLine } from '../post-log.ts';
import { askPerson } from '../questions/ask-person.ts';
import { buttonsFor } from '../questions/buttons.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';

/** A tick on a reminder: the post replied to, else what is open in this chat room; with several things, it asks which. */
export function done(session: Session, speaker: Speaker, target: Target | undefined): void {
  const named = target !== undefined && 'post' in target ? session.posts.get(target.post) : null;
  if (named !== null) {
    tick(session, speaker, named);
    return;
  }
  // In reply to a colleague it speaks to them.
  if (target !== undefined) return;
  const asked = new Set(session.posts.open(speaker.room).flatMap(({ matters }) => matters));
  const open = openMatters(viewOf(session)).filter(({ key, tick }) => tick !== undefined && asked.has(key));
  tickOrAsk(session, speaker, eachOnce(open));
}

/** What asks for a result, a test or a release; a tick on anything else that records nothing only says that it was seen. */
const TYPED = new Set<About>(['load', 'spore-test', 'close-out', 'incident', 'look-back', 'escalation']);

/** Records what a reminder asked for; where it names several things that are still open, asks which. */
export function tick(session: Session, speaker: Speaker, line: PostLine): void {
  const open = openMatters(viewOf(session)).filter(({ key }) => line.matters.includes(key));
  const tickable = open.filter((matter) => matter.tick !== undefined);
  if (tickable.length > 0) tickOrAsk(session, speaker, tickable, open.length > 1);
  else if (open.length > 0 && TYPED.has(line.post.about)) sayCannotTick(session, speaker);
}

function tickOrAsk(
  session: Session,
  speaker: Speaker,
  matters: readonly Matter[],
  several = matters.length > 1,
): void {
  if (matters.length === 0) return;
  if (!several) recordTick(session, speaker, matters);
  else askWhich(session, speaker, matters);
}

/** A wipe that a reminder and the close-out both ask for is one thing. */
function eachOnce(matters: readonly Matter[]): readonly Matter[] {
  const once = new Map(matters.map((matter) => [marksOf(matter).join(), matter]));
  return [...once.values()];
}

function marksOf(matter: Matter): readonly string[] {
  return (matter.tick?.(0, '') ?? []).flatMap(tickMarks);
}

/** Records what these matters asked for, by whoever ticked, at that time. */
export function recordTick(session: Session, speaker: Speaker, matters: readonly Matter[]): void {
  const facts = matters.flatMap((matter) => matter.tick?.(speaker.noted, speaker.from) ?? []);
  const entered = enterFacts(session, speaker, facts, session.draft.number);
  if (entered.length > 0) followUp(session, speaker, entered, []);
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

function askWhich(session: Session, speaker: Speaker, matters: readonly Matter[]): void {
  const { draft } = session;
  const kinds = new Set(matters.map((matter) => marksOf(matter)[0]?.split(' ')[0]));
  const all = { label: 'all of them', value: 'all' };
  const choices = [
    ...matters.map((matter) => ({ label: label(session, matter, kinds.size > 1), value: matter.key })),
    ...(matters.length > 1 ? [all] : []),
  ];
  const message = [{ line: ['Which one is done?'] }, { steps: choices.map((choice) => [choice.label]) }];
  const key = draft.post(speaker.room, {
    about: 'question',
    message,
    ...(speaker.note === '' ? {} : { replyTo: speaker.note }),
    buttons: buttonsFor(choices, null),
  });
  const purpose: Purpose = { sort: 'which-done', matters: matters.map((matter) => matter.key) };
  askPerson(session, speaker, key, choices, purpose);
}

/** "green scanner"; with the deed where several sorts stand to choose from: "green scanner: wiped". */
function label({ practice }: Session, matter: Matter, withDeed: boolean): string {
  const items = matter.items.map((item) => itemWords(practice, item)).join(', ');
  const [deed] = marksOf(matter)[0]?.split(' ') ?? [];
  return withDeed && deed !== undefined ? `${items}: ${deed}` : items;
}
