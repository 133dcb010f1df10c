import { guideFor, WHOSE_WORD } from '../../answers/guide.ts';
import { sitesOfAsk } from '../../answers/site-of-ask.ts';
import { shownWords } from '../../answers/topics.ts';
import type { HowTopic } from '../../reading/ask.ts';
import type { Purpose, Question } from '../../rules/question.ts';
import { toIso } from '../../time/instant.ts';
import { lines, type Message } from '../../words/message.ts';
import { nameOf } from '../../words/people-words.ts';
import { followUp } from '../after/follow-up.ts';
import { apply } from '../apply.ts';
import { type Session, type Speaker, viewOf } from '../session.ts';
import { askPerson } from './ask-person.ts';

type Walk = Extract<Purpose, { sort: 'walk' }>;

const NEXT = /^(?:next(?: (?:one|step))?|ok(?:ay)?|done|go on|carry on|✅|✔️?)$/i;
const STOP = /^(?:stop|stop it|cancel|that’s enough|that's enough|enough|❌)$/i;
const BEGIN = /^(?:please )?(?:walk me through(?: it)?|step by step)(?: please)?$/i;
const SHOW =
  /^\W*(?:(?:please|can you|could you|will you) )?(?:show me\b|walk me through\b|take me through\b)/i;

/** "Show me how to calibrate": asks to be led through it, not told it at once. */
export function wantsWalk(text: string): boolean {
  return SHOW.test(text);
}

/**
 * What a typed note answers to a walk: never "yes", "no" or a number, so that it takes no answer from a question that
 * waits beside it ("did it reach a patient?"). `null`: the note is about something else.
 */
export function walkWord({ step }: Walk, text: string): string | null {
  const words = text.trim().replace(/[.!,]+$/, '');
  if (step === 0) return BEGIN.test(words) ? 'next' : null;
  if (NEXT.test(words)) return 'next';
  return STOP.test(words) ? 'stop' : null;
}

/** Under the steps told at once, how to be led through them one by one; lapses quietly. */
export function offerWalk(session: Session, speaker: Speaker, key: string, topic: HowTopic): void {
  ask(session, speaker, key, { sort: 'walk', topic, step: 0 });
}

/** Posts the step after `step`; behind the last, asks whether it was seen through, which the record then keeps. */
export function walkOn(session: Session, speaker: Speaker, topic: HowTopic, step: number): void {
  const { draft, practice } = session;
  const { title, steps, otherwise } = guideFor(
    topic,
    viewOf(session),
    sitesOfAsk(practice, undefined, speaker.room),
  );
  const text = steps[step];
  const replyTo = speaker.note;
  const message: Message =
    text === undefined
      ? [
          ...lines([{ strong: 'That is all of it.' }, ' When it does not work:']),
          { points: otherwise.map((one) => [one]) },
          ...lines('Done it yourself? “done” notes that you were shown; “stop” notes nothing.', WHOSE_WORD),
        ]
      : lines([{ strong: `${title}, ${step + 1} of ${steps.length}: ` }, text], '“next”, or “stop”.');
  const key = draft.post(speaker.room, { about: 'help', message, replyTo, buttons: ['✅', '❌'] });
  ask(session, speaker, key, { sort: 'walk', topic, step: step + 1 });
}

/** The next step, the end, or what the record keeps of it. Being shown is not being licensed. */
export function walkAnswered(
  session: Session,
  speaker: Speaker,
  question: Question,
  walk: Walk,
  value: string,
): void {
  const { draft, practice, timeline } = session;
  if (value !== 'next') {
    draft.react(speaker.room, speaker.note, '👍');
    return;
  }
  const { steps } = guideFor(walk.topic, viewOf(session), sitesOfAsk(practice, undefined, speaker.room));
  if (walk.step <= steps.length) {
    walkOn(session, speaker, walk.topic, walk.step);
    return;
  }
  const person = nameOf(practice, question.person ?? speaker.from);
  const fact = { kind: 'shown', when: toIso(session.now), person, topic: walk.topic } as const;
  const first = draft.entries.length;
  draft.enter(fact, { noted: session.now, by: null, from: speaker.from, room: speaker.room });
  apply(timeline, draft.entries.slice(first));
  draft.post(speaker.room, {
    about: 'record',
    message: lines(
      `Noted: ${person} was shown ${shownWords(walk.topic)}. Who may do it is for the practice to say.`,
    ),
    ...(speaker.note === '' ? {} : { replyTo: speaker.note }),
  });
  followUp(session, speaker, draft.entries.slice(first), []);
}

function ask(session: Session, speaker: Speaker, key: string, purpose: Walk): void {
  const choices =
    purpose.step === 0
      ? [{ label: 'walk me through it', value: 'next' }]
      : [
          { label: 'next', value: 'next' },
          { label: 'stop', value: 'stop' },
        ];
  askPerson(session, speaker, key, choices, purpose);
}
