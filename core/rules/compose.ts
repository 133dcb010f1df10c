import type { Item } from '../reading/slots.ts';
import { itemWords } from '../words/item-words.ts';
import type { Message } from '../words/message.ts';
import type { About } from './about.ts';
import { gathered, type Part } from './compose/gathered.ts';
import { howToAnswer } from './compose/how-to-answer.ts';
import { lateWords } from './compose/late-words.ts';
import { leadWords } from './compose/lead-words.ts';
import type { Matter, Stage, View } from './matter.ts';
import { capital } from './tips/tip-words.ts';

export { dueAgainMessage, type Settling, settledMessage } from './compose/settled-message.ts';

/** What a post says besides where it goes. */
export interface Composed {
  readonly about: About;
  readonly message: Message;
  readonly items: readonly Item[];
  readonly mentions: readonly string[];
}

/** These keep what they are about whoever is named in them: an escalation is of a reminder. */
const KEEPS_ABOUT = new Set<About>(['incident', 'look-back', 'warning', 'spore-test', 'question']);
/** Lists of their own: they follow one another whole. */
const DAY_POSTS = new Set<About>(['brief', 'close-out', 'question']);
/** Here the lead is named from the first. */
const NAMES_LEAD = new Set<About>(['incident', 'look-back', 'warning']);

/**
 * One post of several matters of one chat room and group that are said at the same stage. Where a brief is among them
 * it speaks for the others, which are only marked as said with it.
 */
export function composePost(matters: readonly Matter[], stage: Stage, view: View): Composed {
  const briefs = matters.filter(({ about }) => about === 'brief');
  const told = briefs.length > 0 ? briefs : matters;
  const own = told[0]?.about ?? 'answer';
  const named = stage === 'lead' || NAMES_LEAD.has(own);
  const mentions = named ? [...new Set(matters.flatMap(({ leads }) => leads))] : [];
  return {
    about: stage === 'lead' && !KEEPS_ABOUT.has(own) ? 'escalation' : own,
    message: [
      ...(named ? leadWords(view.practice, stage, mentions) : []),
      ...(DAY_POSTS.has(own)
        ? told.flatMap(({ line }) => line)
        : gathered(told.map((matter) => partOf(matter, view)))),
      ...lateWords(told, stage, view),
      ...choices(told),
      ...(told.some(({ tick }) => tick !== undefined) ? howToAnswer() : []),
    ],
    items: [...new Set(matters.flatMap(({ items }) => items))],
    mentions,
  };
}

function partOf({ items, line }: Matter, { practice }: View): Part {
  const [item] = items;
  const name = item === undefined || items.length > 1 ? null : capital(itemWords(practice, item));
  return { name, message: line };
}

/** Numbered, so that the number may be typed. */
function choices(matters: readonly Matter[]): Message {
  const offered = matters.flatMap(({ asks }) => asks?.choices ?? []);
  return offered.length === 0 ? [] : [{ steps: offered.map(({ label }) => [label]) }];
}
