import type { NoteScope } from '../clause.ts';
import { strangeIn } from '../evidence/strange.ts';
import { opensQuestion } from '../mood/questions.ts';
import type { Output } from '../output.ts';
import { hasTag } from '../part.ts';
import type { Segment, Sentence } from '../segments.ts';
import { type BestAsk, bestAsk } from './best-ask.ts';
import { joined } from './joined.ts';
import { phrases } from './phrases/all.ts';
import { bookOf, type PhraseBook, phraseIn, SURE } from './phrases/phrase.ts';
import { isGreeting, namesNotice, plainlyAsks, questionStart } from './question-start.ts';
import { cutAtQuestion, rememberFor } from './told-before.ts';

/**
 * Reads the question in a sentence, if there is one, and gives back what is left of the sentence to be read as a
 * statement: `null` where nothing is. What is asked is never stated.
 */
export function readAsks(sentence: Sentence, scope: NoteScope, out: Output): Sentence | null {
  const segments = cutAtQuestion(sentence.segments);
  const from = questionStart({ ...sentence, segments });
  if (from < 0) {
    if (scope.sentences === 1 && namesNotice(segments) && knownIn(segments, 0, false, scope, out) === 0)
      return null;
    rememberFor(segments, scope);
    return sentence;
  }
  const asked = segments.slice(from);
  const strong = sentence.question || asked.some((s) => opensQuestion(s.parts));
  rememberFor(segments.slice(0, from), scope);
  const known = knownIn(segments, from, strong, scope, out);
  if (known >= 0)
    return known === 0 ? null : { ...sentence, segments: segments.slice(0, known), question: false };
  const put = whatIsAsked(segments, from, strong, sentence.question, scope);
  if (put !== null) {
    const { found, start } = put;
    out.weighIn(found.strength, found.cost, strangeIn(found.clause.parts));
    out.ask(found.result.made, found.ask.name, found.clause, found.result.missing);
    return start === 0 ? null : { ...sentence, segments: segments.slice(0, start), question: false };
  }
  if (!sentence.question && !plainlyAsks(asked)) return sentence;
  return from === 0 ? null : { ...sentence, segments: segments.slice(0, from), question: false };
}

/** Made at the first question: it takes 40 ms, and `read` is to start fast. */
let book: PhraseBook | undefined;

/** Puts the question that is known by its whole wording; gives back the segment that it begins with, −1 where there is none. */
function knownIn(
  segments: readonly Segment[],
  from: number,
  question: boolean,
  scope: NoteScope,
  out: Output,
): number {
  for (const start of from === 0 ? [0] : [0, from]) {
    const parts = joined(segments.slice(start));
    book ??= bookOf(phrases);
    const put = phraseIn(book, parts, question, scope);
    if (put === null) continue;
    out.weighIn(SURE, 0, strangeIn(parts));
    out.ask(put.result.made, put.name, put.clause, put.result.missing);
    return start;
  }
  return -1;
}

/** The ask, and the segment from which the sentence is spent on it. */
function whatIsAsked(
  segments: readonly Segment[],
  from: number,
  strong: boolean,
  marked: boolean,
  scope: NoteScope,
): { readonly found: BestAsk; readonly start: number } | null {
  const own = bestAsk(joined(segments.slice(from)), strong, scope);
  const before = segments.slice(0, from);
  if (own !== null) {
    // "… have managed to break, and why": what hangs on a statement is not put to us.
    const hangs = own.ask.name === 'ask:why' && !before.every((s) => isGreeting(s) && s.parts.length <= 2);
    return hangs ? null : { found: own, start: from };
  }
  if (from === 0 || !(strong || marked)) return null;
  const whole = bestAsk(joined(segments), true, scope);
  if (whole === null) return null;
  // "Never calibrated one before, how do I do it": what "it" is stands before the question.
  if (!marked && whole.ask.name !== 'ask:how') return null;
  return { found: whole, start: before.some(tellsOfItself) ? from : 0 };
}

/** A result, or a thing of ours that is told of: it stays a statement beside the question. */
function tellsOfItself({ parts }: Segment): boolean {
  return parts.some((p) => hasTag(p, 'fail') || hasTag(p, 'pass'));
}
