import { Clause, type NoteScope } from '../clause.ts';
import { bearsOutside, holds, strangeIn, weigh } from '../evidence.ts';
import { LONGEST_CLAUSE } from '../interpret.ts';
import { opensQuestion } from '../mood.ts';
import type { Output } from '../output.ts';
import { hasTag, type Part } from '../part.ts';
import type { Segment, Sentence } from '../segments.ts';
import type { Ask, AskResult } from './ask.ts';
import { asks } from './asks.ts';

/**
 * Reads the question in a sentence, if there is one, and gives back what is left of the sentence to be read as a
 * statement: `null` where nothing is. What is asked is never stated.
 */
export function readAsks(sentence: Sentence, scope: NoteScope, out: Output): Sentence | null {
  const { segments } = sentence;
  const from = questionStart(sentence);
  if (from < 0) return sentence;
  const asked = segments.slice(from);
  const strong = sentence.question || asked.some((s) => opensQuestion(s.parts));
  rememberFor(segments.slice(0, from), scope);
  const parts = asked.flatMap((s, i) => (i === 0 ? s.parts : [jointPart(s), ...s.parts]));
  let found = bestAsk(parts, strong, scope);
  let start = from;
  if (found === null && from > 0 && sentence.question) {
    found = bestAsk(
      segments.flatMap((s, i) => (i === 0 ? s.parts : [jointPart(s), ...s.parts])),
      true,
      scope,
    );
    if (
      found !== null &&
      !segments.slice(0, from).some((s) => s.parts.some((p) => hasTag(p, 'fail') || hasTag(p, 'pass')))
    )
      start = 0;
  }
  if (found !== null) {
    out.weighIn(found.strength, found.cost, strangeIn(found.clause.parts));
    out.ask(found.result.made, found.ask.name, found.clause, found.result.missing);
    return start === 0 ? null : { ...sentence, segments: segments.slice(0, from), question: false };
  }
  if (!sentence.question && !plainlyAsks(asked)) return sentence;
  return from === 0 ? null : { ...sentence, segments: segments.slice(0, from), question: false };
}

function rememberFor(segments: readonly Segment[], scope: NoteScope): void {
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
    s.parts.some(
      (p) =>
        hasTag(p, 'record') ||
        /^(help|trace|enough|history)$/.test(p.text) ||
        hasTag(p, 'anyq') ||
        hasTag(p, 'wh'),
    ),
  );
  return record >= 0 ? 0 : -1;
}

function isGreeting(segment: Segment): boolean {
  return segment.parts.every((p) => p.senses.some((s) => s.sort === 'glue'));
}

/** Without a question mark, only these openings leave no doubt that something is asked. */
function plainlyAsks(segments: readonly Segment[]): boolean {
  const first = segments[0];
  if (first === undefined || !opensQuestion(first.parts)) return false;
  return !first.parts.some((p) => hasTag(p, 'lose'));
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
  for (const ask of asks) {
    const clause = new Clause(parts, scope);
    const result = ask.read(clause, question);
    if (result === null) continue;
    for (const { at } of clause.entities('time')) clause.use(at);
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
