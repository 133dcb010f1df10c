import { Clause, type NoteScope } from '../clause.ts';
import { holds, weigh } from '../evidence/evidence.ts';
import { bearsOutside } from '../evidence/patience.ts';
import { strangeIn } from '../evidence/strange.ts';
import { LONGEST_CLAUSE } from '../interpret.ts';
import { opensQuestion } from '../mood/questions.ts';
import { needing, needsMetIn } from '../needs/needs.ts';
import type { Output } from '../output.ts';
import { type EntityOf, hasTag, type Part } from '../part.ts';
import type { Segment, Sentence } from '../segments.ts';
import { type Ask, type AskResult, useBeside } from './ask.ts';
import { asks } from './asks.ts';
import { phrases } from './phrases/all.ts';
import { bookOf, phraseIn, SURE } from './phrases/phrase.ts';

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

/** "Morning briefing", "spore test results": what is asked for by its name alone, with no word of asking. */
function namesNotice([segment, next]: readonly Segment[]): boolean {
  if (segment === undefined || next !== undefined || segment.parts.length > 7) return false;
  return segment.parts.some((p) => p.entity === undefined && NOTICE.test(p.text));
}

const NOTICE =
  /^(?:summary|brief|briefing|round up|roundup|round-up|sitrep|results?|dates?|hours|incidents|failures|commands|cycles|run down|run-down|state of play|locations?|training|temp|temperature|bookings|list|loads|log|reset|checklist|fill|speed|play|counts?|times?|last|latest|what if|hows)$/;

const book = bookOf(phrases);

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

function joined(segments: readonly Segment[]): readonly Part[] {
  return segments.flatMap((s, i) => (i === 0 ? s.parts : [jointPart(s), ...s.parts]));
}

/** "Load 32 failed where did those tips go": typed or dictated in one breath, the result and the question are two. */
function cutAtQuestion(segments: readonly Segment[]): readonly Segment[] {
  if (!segments.some(({ parts }) => parts.some((p) => hasTag(p, 'wh')))) return segments;
  return segments.flatMap((segment) => {
    const at = segment.parts.findIndex((p, i) => i > 1 && p.entity === undefined && hasTag(p, 'wh'));
    const before = segment.parts.slice(0, at);
    const told =
      at > 1 &&
      before.some((p) => loadIn(p) !== null) &&
      before.some((p) => hasTag(p, 'fail') || hasTag(p, 'pass'));
    return told && !opensQuestion(before)
      ? [
          { ...segment, parts: before },
          { ...segment, parts: segment.parts.slice(at), joint: '' },
        ]
      : [segment];
  });
}

/** A load by its name, or a number that is no tip's and may be one. */
function loadIn({ entity }: Part): EntityOf<'load'> | null {
  if (entity?.is === 'load') return entity;
  if (entity?.is !== 'tips' || entity.named || entity.ids.length > 0) return null;
  const [id, more] = entity.unknown;
  const digits = id?.replace(/\D/g, '') ?? '';
  return more === undefined && digits.length >= 2 ? { is: 'load', ids: [digits], named: false } : null;
}

function rememberFor(segments: readonly Segment[], scope: NoteScope): void {
  for (const { parts } of segments) {
    const load = parts.map(loadIn).find((one) => one !== null) ?? null;
    if (load !== null && !load.named && parts.some((p) => hasTag(p, 'fail') || hasTag(p, 'pass')))
      scope.memory.load = load;
  }
  for (const part of segments.flatMap((s) => s.parts)) {
    if (part.entity?.is === 'load') scope.memory.load = part.entity;
    if (part.entity?.is === 'tips' && part.entity.ids.length > 0) scope.memory.tips = part.entity;
  }
}

/** A joint kept as a part, so that words on both sides do not run together. */
function jointPart(segment: Segment): Part {
  return {
    from: segment.parts[0]?.from ?? 0,
    to: segment.parts[0]?.from ?? 0,
    text: segment.joint,
    senses: [GLUE],
    mark: false,
    unknown: false,
  };
}
const GLUE = { sort: 'glue', tag: 'glue', form: '', ref: '' } as const;

function questionStart(sentence: Sentence): number {
  const { segments } = sentence;
  const at = segments.findIndex((s) => opensQuestion(s.parts));
  if (at >= 0) return at;
  if (sentence.question)
    return segments.length > 1 && segments[0] !== undefined && isGreeting(segments[0]) ? 0 : 0;
  const record = segments.findIndex((s) =>
    s.parts.some((p) => ASKING_WORDS.has(p.text) || p.senses.some((sense) => ASKING_TAGS.has(sense.tag))),
  );
  if (record >= 0) return 0;
  const opening = (segments[0]?.parts ?? []).slice(0, 9);
  if (!opening.some((p) => (needsMetIn(p.text) & OPENING) !== 0)) return -1;
  return OPENS_ASK.test(opening.map((p) => p.text).join(' ')) ? 0 : -1;
}

/** What a sentence that is put as no question may ask with all the same. */
const ASKING_TAGS: ReadonlySet<string> = new Set(['record', 'incident', 'anyq', 'wh']);
const ASKING_WORDS: ReadonlySet<string> = new Set(
  'help|trace|enough|history|timeline|status|contents|details|overview|rundown|look back|look-back|lookback|who can|who knows'.split(
    '|',
  ),
);

/** Bare openings that ask for something to be found, shown or told. */
const OPENS_ASK =
  /^((hi|hello|hey|please|pls|so|ok|right|sorry|lads|can you|could you) )*(need to (find|know)\b|everything that\b|calibration (steps|procedure)|looking for\b|locate\b|find\b|date of\b|show\b|gimme\b|full list\b|all tips\b|all the tips\b|tips? status|latest\b|last (cal|calibration|temp|temperature|scan|wipe|move)|look back|do a look back|track\b|print\b|explain\b|learned words|learnt words|tell me\b|time ?line|instructions|commands|options|never .* before|setting up\b|\w+ \w+ (keeps|keep) (fog|mist|steam)|\w+ keeps (fog|mist|steam))/;

/** What such an opening needs to stand in it. */
const OPENING = needing(OPENS_ASK);

function isGreeting(segment: Segment): boolean {
  return segment.parts.every((p) => p.senses.some((s) => s.sort === 'glue'));
}

/** Without a question mark, only these openings leave no doubt that something is asked. */
function plainlyAsks(segments: readonly Segment[]): boolean {
  const first = segments[0];
  if (first === undefined || !opensQuestion(first.parts)) return false;
  return (
    /^(is|are|was|were|has|have)$/.test(first.parts[0]?.text ?? '') ||
    !first.parts.some((p) => hasTag(p, 'lose'))
  );
}

/** A number of who knows what, that is no id of ours, is asked nothing about: "the good old days of 419". */
function isOfAnother({ missing }: AskResult, c: Clause): boolean {
  if (missing?.about !== 'tip' || missing.words === undefined) return false;
  return !c.entities('tips').some(({ entity }) => entity.named);
}

interface BestAsk {
  readonly ask: Ask;
  readonly result: AskResult;
  readonly clause: Clause;
  readonly score: number;
  readonly strength: number;
  readonly cost: number;
}

function bestAsk(parts: readonly Part[], question: boolean, scope: NoteScope): BestAsk | null {
  if (parts.length === 0 || parts.length > LONGEST_CLAUSE) return null;
  let best: BestAsk | null = null;
  const shared = {};
  for (const ask of asks) {
    const clause = new Clause(parts, scope, shared);
    const result = ask.read(clause, question);
    if (result === null || isOfAnother(result, clause)) continue;
    for (const { at } of clause.entities('time')) clause.use(at);
    useBeside(clause);
    const raw = weigh(clause);
    const evidence = { strength: raw.strength + result.bonus, cost: raw.cost };
    if (!holds(evidence) || !bearsOutside(clause, scope.strange - strangeIn(parts), scope.listing)) continue;
    if (
      result.whole &&
      (scope.strange - strangeIn(parts) > 0.5 ||
        weigh(clause).cost > 0.7 ||
        parts.length > 16 ||
        scope.sentences > 2)
    )
      continue;
    const score = evidence.strength - 2 * evidence.cost;
    if (best === null || score > best.score + 1.5)
      best = { ask, result, clause, score, strength: evidence.strength, cost: evidence.cost };
  }
  return best;
}
