import { Clause } from '../clause.ts';
import { made } from '../frames/frame.ts';
import { wordsNumber } from '../lexicon/count.ts';
import { needing } from '../needs/needs.ts';
import type { Made } from '../result.ts';
import { timeOf } from '../roles/time.ts';
import { resolveForward } from '../times/forward.ts';
import type { ActText } from './act-text.ts';
import { namesItem } from './item-id.ts';

/** Puts off by itself. */
const LATER =
  "later|later on|l8r|bit later|maybe later|not now|not just now|not right now|snooze|remind me|remind us|remind me again|remind me later|remind us later|remind me again later|remind later|remind me shortly|remind me in a bit|remind me when i'm done|ask me later|ask later|ask again|ask again later|ask me again|ask me again later|ask me in a bit|ping me later|nudge me later|come back to me|come back later|come back to me later|do it later|will do later|will do it later|will do it in a bit|i'll do it later|ill do it later|i'll do it in a bit|put it off|put that off|leave it for now|leave it for later|hold off|hold on|hang on|hold your horses|wait|can't now|cant now|can't do it now|cant do it now|can't right now|busy|busy now|too busy|too busy now|bit busy|busy at the moment|after this patient|after this one|when i'm free|when im free|give me a bit|give me a minute|give me a min|give me a mo|give me a sec|give us a minute|one sec|one minute|two ticks|two minutes|shortly";
const IN_A_BIT =
  '(?:in |give me |give us )?(?:(?:a|one|just a) (?:wee |little )?(?:bit|minute|min|mo|moment|sec|second|while|tick)|abit)';
/** Said beside it: why not now, and courtesy. */
const BESIDE =
  "can you|could you|will you|please|pls|plz|thanks|ta|cheers|mate|sorry|ok|oh|no|not yet|it|that|this|again|now|i'm|im|i am|with a patient|with patient|with a pt|have a patient|got a patient|mid patient|in surgery|in the middle of something|busy|bit busy|too busy|really busy|up to my eyes|up the walls|me|x";

const COURTESY = '(?:can you|could you|will you|please|pls|plz|thanks|ta|cheers|mate|sorry|it|that|x|now|so)';
const PUTS_OFF = new RegExp(`^(?:(?:${BESIDE}) )*(?:(?:${LATER})|${IN_A_BIT})(?: (?:${BESIDE}|${LATER}))*$`);
const IN_A = new RegExp(`^(?:${COURTESY} )*${IN_A_BIT}(?: ${COURTESY})*$`);

const LATER_AT =
  /^(later in|later,|give us a nudge|give me a nudge|give us a shout|give me a shout|nudge|shout|remind me|remind us|remember me|remember us|ask me|ask me again|snooze|later|give me|give us|ping me|nudge me|can you remind me|could you remind me|please remind me|pls remind me|do it|put it off|put that off|ask again|try me|ask|come back|come back to me|remind me again|remind|not now|not yet|tell me again|nudge us|poke me|prompt me|set a reminder|reminder|reminder please|snooze it|snooze for|hold off|hold it|push it|push it back|can you ask me|can you ask me again|remind me about it|remind me about that|will you remind me|wait|delay it|delay|postpone it|leave it|leave it till)( again| please| pls| after| thanks| ta| about it| about that| this| that| it| me| until| till| for| another| to)*$/;

/** "Later", "remind me in 20 minutes": what was asked for is put off, to an instant where one is said. */
export function later(c: Clause, text: ActText): Made | null {
  return (text.mayMatch(PUTTING_OFF) ? putsOff(c, text) : null) ?? laterAt(c);
}

/** What putting off with no time needs to stand in the text. */
const PUTTING_OFF = needing(IN_A, PUTS_OFF);

function putsOff(c: Clause, { words, typed }: ActText): Made | null {
  const timed = c
    .entities('time')
    .some(
      ({ entity }) =>
        (entity.span.shift !== undefined && entity.span.shift.minutes !== null) ||
        entity.span.clocks.length > 0,
    );
  if (IN_A.test(typed)) return made('later', {});
  if (!timed && (PUTS_OFF.test(words) || PUTS_OFF.test(typed))) return made('later', {});
  return null;
}

/** "Snooze 20 minutes", "give me half an hour": a length with no "in" before it. */
function lengthOf(c: Clause, typed: string): number | null {
  for (const [i, part] of c.parts.entries()) {
    const value = wordsNumber(part) ?? figure(part.text);
    const unit = c.parts[i + 1]?.text ?? '';
    if (value !== null && /^(min|mins|minute|minutes)$/.test(unit)) return value;
    if (value !== null && /^(hour|hours|hr|hrs)$/.test(unit)) return value * 60;
  }
  if (/\bhalf (?:an )?hour\b/.test(typed)) return 30;
  if (/\bquarter of an hour\b/.test(typed)) return 15;
  return /\ban hour\b/.test(typed) ? 60 : null;
}

function figure(text: string): number | null {
  return /^\d{1,3}$/.test(text) ? Number(text) : null;
}

/** "With a patient, remind me in 20 minutes": where the asking for it begins, after what is said first. */
function reminderAt(c: Clause): number {
  const at = c.parts.findIndex(
    (p, i) => i > 0 && c.parts[i - 1]?.mark && /^(remind|ask|nudge|ping|prompt|snooze)/.test(p.text),
  );
  return at < 0 || namesItem(c) ? 0 : at;
}

/** "Later, in 30 minutes": the word is no time beside one. */
function withoutLater(c: Clause): Clause {
  const said = c.entities('time').filter(({ at }) => c.parts[at]?.text !== 'later');
  if (said.length === 0) return c;
  return new Clause(
    c.parts.filter((p) => p.text !== 'later' && !(p.mark && p.text === ',')),
    c.scope,
  );
}

function laterAt(c: Clause): Made | null {
  const times = c.entities('time');
  if (times.length === 0 && c.parts.length <= 8 && c.word(ASKS_LENGTH) >= 0 && !namesItem(c)) {
    const minutes = lengthOf(c, c.parts.map((p) => p.text).join(' '));
    if (minutes !== null) return made('later', { until: c.scope.time.at + minutes * 60_000 });
  }
  if (times.length === 0) return null;
  const rest = c.parts.slice(reminderAt(c)).filter((p) => p.entity?.is !== 'time' && !p.mark);
  const text = rest
    .map((p) => p.text)
    .join(' ')
    .replace(
      /^(ok|um|uh|er|hi|hey|sorry|yes|no|can you|could you|kindly|please|pls|will you|would you|i'm with a patient|busy|not now)( |$)/,
      '',
    )
    .replace(/^(please|pls) /, '')
    .replace(/ (please|pls|thanks|ta|x)$/, '');
  const timeOnly = rest.length === 0;
  if (!timeOnly && !LATER_AT.test(text)) return null;
  if (timeOnly && !(times.length > 1 && /^(later|not now)/i.test(c.scope.note.trim()))) return null;
  const time = timeOf(withoutLater(c));
  if (time === null) return null;
  const when = resolveForward(time.span, c.scope.time);
  const until =
    when.exact || when.times.length > 0 || time.span.days.length > 0 || time.span.part !== undefined
      ? when.start
      : null;
  if (until === null || until <= c.scope.time.at) return made('later', {});
  return made('later', { until });
}

const ASKS_LENGTH = /^(snooze|remind me|remind us|give me|give us|later|ask me|nudge|remind|wait|ping me)$/;
