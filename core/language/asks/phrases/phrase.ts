import { Clause, type NoteScope } from '../../clause.ts';
import { strangeIn } from '../../evidence/strange.ts';
import { PatternsByNeed } from '../../needs/patterns-by-need.ts';
import type { Part } from '../../part.ts';
import { type AskResult, ask, dayOf, siteOf } from '../ask.ts';
import { type Shape, shapeOf } from './shape.ts';

/** A question known by its whole wording: what its line must be, and what it then asks for. */
export interface Phrase {
  /** Compared with the line without places and times, or, where `placed`, with all of it. */
  readonly form: RegExp;
  readonly placed?: true;
  /** Only where it was put as a question. */
  readonly asked?: true;
  /** Only where it says when. */
  readonly timed?: true;
  /** Slots of the ask by the clause; `null`: not this one. */
  readonly make: (c: Clause, found: RegExpExecArray) => AskResult | null;
}

/** Questions of one subject. */
export interface Phrases {
  readonly name: string;
  readonly phrases: readonly Phrase[];
}

/** The whole of a line is one of these patterns. */
export function form(...patterns: readonly string[]): RegExp {
  return new RegExp(`^(?:${patterns.join('|')})$`);
}

/** Holds that thing once or more, and beside it none but these words, in any order. */
export function amid(thing: string, words: string): RegExp {
  const beside = words.split(' ').join('|');
  return new RegExp(`^(?:(?:${beside}) )*?(?:${thing})(?: (?:${beside}|${thing}))*$`);
}

/** An ask with nothing said beyond where and when. */
export function asks(kind: string, slots: Record<string, unknown> = {}): () => AskResult {
  return () => ask(kind, slots, SURE);
}

/** The same with the site that is said. */
export function asksAt(kind: string, slots: Record<string, unknown> = {}): (c: Clause) => AskResult {
  return (c) => ask(kind, { ...slots, ...siteOf(c) }, SURE);
}

/** The same with the site and the day that are said. */
export function asksOn(kind: string, slots: Record<string, unknown> = {}): (c: Clause) => AskResult {
  return (c) => {
    const site = siteOf(c);
    return ask(kind, { ...slots, ...site, ...dayOf(c, site.site) }, SURE);
  };
}

/** Every word is explained. */
export const SURE = 9;

export interface Put {
  /** Name of the rule. */
  readonly name: string;
  readonly result: AskResult;
  readonly clause: Clause;
}

/** All phrases, found by the words that they need. */
export type PhraseBook = PatternsByNeed<Phrase & { readonly name: string }>;

/** Puts phrases into a book, in their order. */
export function bookOf(all: readonly Phrases[]): PhraseBook {
  const named = all.flatMap(({ name, phrases }) => phrases.map((phrase) => ({ ...phrase, name })));
  return new PatternsByNeed(named, ({ form }) => form);
}

/** The question that these parts, word for word, put; `null` where they put none that is known so. */
export function phraseIn(
  book: PhraseBook,
  parts: readonly Part[],
  question: boolean,
  scope: NoteScope,
): Put | null {
  if (scope.listing || scope.sentences > 2 || scope.strange - strangeIn(parts) > 0.5) return null;
  const shape = shapeOf(parts);
  if (shape === null) return null;
  for (const phrase of book.mayMatch(`${shape.line} ${shape.core}`)) {
    const found = matchOf(phrase, shape, question);
    if (found === null) continue;
    const clause = new Clause(parts, scope);
    for (const at of parts.keys()) clause.use(at);
    const result = phrase.make(clause, found);
    if (result !== null) return { name: phrase.name, result, clause };
  }
  return null;
}

function matchOf(phrase: Phrase, { line, core }: Shape, question: boolean): RegExpExecArray | null {
  if (phrase.asked && !question) return null;
  if (phrase.timed && !line.includes('<time>')) return null;
  return phrase.form.exec(phrase.placed ? line : core);
}
