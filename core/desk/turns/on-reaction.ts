import { takenMessage } from '../../rules/compose/settled-message.ts';
import type { Question } from '../../rules/question.ts';
import { lines } from '../../words/message.ts';
import { tick } from '../acts/done.ts';
import { later } from '../acts/later.ts';
import { loosens } from '../follow-on/loosening.ts';
import type { Input } from '../input.ts';
import { answerQuestion } from '../questions/answer-question.ts';
import { type Session, type Speaker, vouching } from '../session.ts';

const DONE = new Set(['✅', '✔', '☑', '👍', '👌']);
const NOT = new Set(['❌', '👎', '✖', '🚫']);
const LATER = new Set(['⏰', '⏲', '⏳', '💤', '🕒']);

/**
 * A reaction to a post of ours: an answer to what it asked, a tick, or "later". Reactions travel in clear and can be
 * forged, so they tighten or tick off; what would release, pass or close is asked to be typed.
 */
export function onReaction(session: Session, input: Extract<Input, { sort: 'reaction' }>): void {
  if (!('post' in input.reacts)) return;
  const emoji = plain(input.emoji);
  const { post: key } = input.reacts;
  const { from, room, at: noted } = input;
  const speaker: Speaker = { from, room, noted, note: '', ...vouching(input) };
  const question = session.questions.get(key);
  if (question !== null && (question.until === null || session.now < question.until)) {
    answerByReaction(session, speaker, question, emoji);
    return;
  }
  const line = session.posts.get(key);
  if (line === null) return;
  if (DONE.has(emoji)) tick(session, speaker, line);
  else if (LATER.has(emoji)) later(session, speaker, undefined, input.reacts);
}

function answerByReaction(session: Session, speaker: Speaker, question: Question, emoji: string): void {
  if (question.person !== null && question.person !== speaker.from) return;
  const value = choiceFor(question, emoji);
  if (value === null) return;
  if (wouldLoosen(question, value)) {
    const message = lines('Please type that one: a reaction cannot pass, release or confirm anything.');
    session.draft.post(question.room, {
      about: 'question',
      message,
      replyTo: question.key,
      mentions: [speaker.from],
    });
    return;
  }
  answerQuestion(session, speaker, question, value);
  showTaken(session, speaker, question, value);
}

/** A tap leaves no note under which a thumb could stand: the question itself says what was taken. */
function showTaken(
  session: Session,
  speaker: Speaker,
  { key, purpose, choices }: Question,
  value: string,
): void {
  const { draft, posts, practice, now } = session;
  const post = posts.get(key)?.post;
  const label = choices.find((choice) => choice.value === value)?.label;
  const shown = draft.effects.some((effect) => effect.does === 'edit' && effect.post === key);
  if (post === undefined || label === undefined || shown || purpose.sort === 'walk') return;
  draft.edit(post.room, key, takenMessage(post, { practice, by: speaker.from, at: now, label }));
}

function choiceFor(question: Question, emoji: string): string | null {
  const number = /^(\d)\u20e3$/.exec(emoji)?.[1];
  if (number !== undefined) return question.choices[Number(number) - 1]?.value ?? null;
  const word = DONE.has(emoji) ? 'yes' : NOT.has(emoji) ? 'no' : null;
  // A walk goes on or ends by other words, so that a typed "yes" is never taken for it.
  const walking = word === 'yes' ? 'next' : word === 'no' ? 'stop' : null;
  const wanted = question.purpose.sort === 'walk' ? walking : word;
  return question.choices.find((choice) => choice.value === wanted)?.value ?? null;
}

function wouldLoosen({ purpose }: Question, value: string): boolean {
  if (/^(settled|allow-correction|release-load)$/.test(purpose.sort)) return value === 'yes';
  if (purpose.sort === 'complete-entry') return LOOSENS.test(purpose.kind);
  if (purpose.sort === 'meant')
    return purpose.options.some((option) => option.value === value && option.facts.some(loosens));
  if (purpose.sort !== 'complete') return false;
  const kind = String(purpose.draft.kind);
  const good =
    value === 'passed' || (purpose.form === 'confirm' && value === 'yes') || purpose.slot !== 'outcome';
  return good && LOOSENS.test(kind);
}

/** What may make something sterile, passed or free. */
const LOOSENS = /^(load-finished|spore-test|autoclave-test|released|sterile|load-released)$/;

/** The emoji without the variation selector that some phones add. */
function plain(emoji: string): string {
  return emoji.replaceAll('\ufe0f', '').trim();
}
