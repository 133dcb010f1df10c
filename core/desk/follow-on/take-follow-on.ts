import { byOwnNumber } from '../../answers/questions.ts';
import type { NoteRead, Why } from '../../language/read.ts';
import type { Fact } from '../../reading/fact.ts';
import { YES_NO } from '../../rules/question.ts';
import { lines, type Message } from '../../words/message.ts';
import type { Target } from '../input.ts';
import { hintedLately, rememberHint } from '../notes/hint.ts';
import { askPerson } from '../questions/ask-person.ts';
import { buttonsFor } from '../questions/buttons.ts';
import type { Session, Speaker } from '../session.ts';
import type { Leans } from '../turn.ts';
import { type FollowOn, followOn, type Option } from './follow-on.ts';

/** What a short note tells by way of what was told before it, and how that is read back. */
export interface Leant {
  readonly facts: readonly Fact[];
  readonly leans: Leans;
}

/**
 * Takes a note that leans on an earlier one, or asks what was meant: at most one such question in ten minutes in a chat
 * room. `null` where it leans on nothing; `place`: the turn that the note's facts belong to.
 */
export function leant(
  session: Session,
  speaker: Speaker,
  { text, replyTo }: { readonly text: string; readonly replyTo?: Target },
  { reading }: NoteRead,
  place = session.draft.number,
): Leant | 'asked' | null {
  const { note: id, room, from, noted: at } = speaker;
  const to = replyTo === undefined ? undefined : noteReplied(session, replyTo);
  if (to === null) return null;
  const meant = followOn(session, { id, room, from, at, ...(to === undefined ? {} : { to }) }, text, reading);
  if (meant?.sort === 'taken') return { facts: meant.facts, leans: meant.leans };
  return meant?.sort === 'asked' && ask(session, speaker, meant, place) ? 'asked' : null;
}

/** The note that a reply speaks to: by way of our answer, the one that was answered. */
function noteReplied({ posts }: Session, target: Target): string | null {
  return 'note' in target ? target.note : (posts.get(target.post)?.post.replyTo ?? null);
}

function ask(
  session: Session,
  speaker: Speaker,
  { head, options }: Extract<FollowOn, { sort: 'asked' }>,
  turn: number,
): boolean {
  const { draft } = session;
  if (hintedLately(session, speaker.room)) return false;
  const isYesNo = options.length === 1;
  const choices = isYesNo ? YES_NO : options.map(({ value, label }) => ({ value, label }));
  const key = draft.post(speaker.room, {
    about: 'question',
    message: wording(head, options),
    replyTo: speaker.note,
    ...(options.length === 0 ? {} : { buttons: buttonsFor(choices, null) }),
  });
  rememberHint(session, speaker.room, key);
  if (options.length === 0) return true;
  askPerson(session, speaker, key, choices, {
    sort: 'meant',
    turn,
    options: options.map(({ value, facts }) => ({ value: isYesNo ? 'yes' : value, facts })),
    author: speaker.from,
    note: speaker.note,
    noted: speaker.noted,
  });
  return true;
}

function wording(head: FollowOnHead, options: readonly Option[]): Message {
  if (options.length === 1) return [{ line: [...head, ' ', { strong: 'yes' }, ' or ', { strong: 'no' }] }];
  if (options.length === 0) return [{ line: [...head, ' Please type it in full.'] }];
  if (options.every(({ value }) => value.startsWith('tip:')))
    return [
      ...byOwnNumber(
        head,
        options.map(({ value, label }) => ({ value, label })),
      ).message,
    ];
  return [...lines(head), { steps: options.map(({ label }) => [label]) }];
}

type FollowOnHead = Extract<FollowOn, { sort: 'asked' }>['head'];

/** Why these facts are there, for "why?": the note before gave what this one left out. */
export function whyLeant({ facts }: Leant): readonly Why[] {
  const filledIn = 'your note before this one';
  return facts.map(({ kind }, index) => ({
    list: 'facts',
    index,
    rule: kind,
    slots: { what: { filledIn } },
  }));
}
