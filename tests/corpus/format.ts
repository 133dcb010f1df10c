import { existsSync, readFileSync } from 'node:fs';
import { isMap, isScalar, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import { z } from 'zod';
import { type Reading, reading } from '../../core/reading/reading.ts';
import { isoInstant } from '../../core/reading/slots.ts';
import { type KnownNames, knownNames, strangers } from './known-names.ts';

/** One note and what it must read as. */
export interface CorpusCase {
  readonly voice: string;
  /** Path of the corpus file, and the line of the note in it. */
  readonly file: string;
  readonly line: number;
  /** Position of the case in its file, from 1. */
  readonly number: number;
  readonly practicePath: string;
  readonly note: string;
  readonly context: NoteContext;
  readonly expected: Reading;
  readonly tags: readonly string[];
}

/** When, by whom and where a note was typed. */
export interface NoteContext {
  readonly at: string;
  readonly from?: string;
  readonly room?: string;
}

export interface CorpusError {
  readonly file: string;
  readonly line: number;
  /** 0 where the mistake is at the head of the file. */
  readonly number: number;
  readonly message: string;
}

const tag = z.string().regex(/^[a-z-]+$/, 'a tag in small letters');
const context = {
  at: z.exactOptional(isoInstant),
  from: z.exactOptional(z.string()),
  room: z.exactOptional(z.string().nullable()),
};
const note = z.union([z.string(), z.strictObject({ text: z.string(), ...context })]);
const corpusCase = z.strictObject({
  gives: z.record(z.string(), z.unknown()),
  tags: z.array(tag),
  notes: z.array(note).min(1),
  ...context,
});
const head = z.strictObject({
  voice: z.string(),
  practice: z.string(),
  ...context,
  at: isoInstant,
  cases: z.array(z.unknown()),
});
type Head = z.infer<typeof head>;
type Context = Pick<Head, 'from' | 'room'> & { at?: string };

/**
 * Reads one corpus file (FORMAT.md), fills in what it leaves out and checks it against the schemas and the names of
 * its practice file. Mistakes are returned, never thrown; a case with a mistake is not among the cases.
 */
export function loadCorpus(file: string): { cases: CorpusCase[]; errors: CorpusError[] } {
  const lines = new LineCounter();
  const doc = parseDocument(readFileSync(file, 'utf8'), { lineCounter: lines });
  const lineOf = (path: (string | number)[]): number => lineAt(doc.getIn(path, true), lines);
  const broken = doc.errors.map((e) => ({
    file,
    line: lines.linePos(e.pos[0]).line,
    number: 0,
    message: e.message,
  }));
  const top = head.safeParse(doc.toJS());
  if (broken.length > 0 || !top.success) {
    return { cases: [], errors: [...broken, ...said(top.error, file, 1, 0)] };
  }
  const practicePath = practiceOf(top.data.practice);
  if (!existsSync(practicePath)) {
    return { cases: [], errors: [{ file, line: 1, number: 0, message: `no practice file ${practicePath}` }] };
  }
  const known = knownNames(practicePath);
  const cases: CorpusCase[] = [];
  const errors: CorpusError[] = [];
  for (const [i, raw] of top.data.cases.entries()) {
    const made = oneCase(raw, { top: top.data, file, practicePath, known, number: i + 1, lineOf });
    cases.push(...made.cases);
    errors.push(...made.errors);
  }
  return { cases, errors };
}

interface Place {
  top: Head;
  file: string;
  practicePath: string;
  known: KnownNames;
  number: number;
  lineOf: (path: (string | number)[]) => number;
}

function oneCase(raw: unknown, at: Place): { cases: CorpusCase[]; errors: CorpusError[] } {
  const { file, number, top, practicePath } = at;
  const line = at.lineOf(['cases', number - 1]);
  const parsed = corpusCase.safeParse(raw);
  if (!parsed.success) return { cases: [], errors: said(parsed.error, file, line, number) };
  const { gives, tags, notes, ...own } = parsed.data;
  const cases: CorpusCase[] = [];
  const errors: CorpusError[] = [];
  for (const [j, each] of notes.entries()) {
    const { text, ...its } = typeof each === 'string' ? { text: each } : each;
    const ctx = contextOf(top, own, its);
    const expected = reading.safeParse(filled(gives, ctx.at));
    const noteLine = at.lineOf(['cases', number - 1, 'notes', j]);
    if (!expected.success) {
      errors.push(...said(expected.error, file, line, number));
      continue;
    }
    const wrong = strangers(expected.data, at.known, ctx);
    errors.push(...wrong.map((message) => ({ file, line: noteLine, number, message })));
    if (wrong.length > 0) continue;
    const { voice } = top;
    cases.push({
      ...{ voice, file, line: noteLine, number, practicePath },
      ...{ note: text, context: ctx, expected: expected.data, tags },
    });
  }
  return { cases, errors };
}

/** The nearest of file, case and note wins; a `null` chat room takes the outer one away. */
function contextOf(top: Context & { at: string }, own: Context, its: Context): NoteContext {
  const at = its.at ?? own.at ?? top.at;
  const from = its.from ?? own.from ?? top.from;
  const room = [its.room, own.room, top.room].find((r) => r !== undefined);
  return { at, ...(from === undefined ? {} : { from }), ...(typeof room === 'string' ? { room } : {}) };
}

/** Lists left out are empty, the kinds of `plans` and `unclear` go without saying; a fact with no `when` has the note's own instant, also inside a plan. */
function filled(gives: Record<string, unknown>, at: string): Record<string, unknown> {
  const dated = (fact: unknown): unknown =>
    typeof fact === 'object' && fact !== null ? { when: at, ...fact } : fact;
  const facts = Array.isArray(gives.facts) ? gives.facts.map(dated) : gives.facts;
  const plans = Array.isArray(gives.plans)
    ? gives.plans.map((p) => ({ kind: 'plan', ...p, fact: dated(p?.fact) }))
    : gives.plans;
  const unclear = Array.isArray(gives.unclear)
    ? gives.unclear.map((u) => ({ kind: 'unclear', ...u }))
    : gives.unclear;
  const empty = { facts: [], asks: [], acts: [], plans: [], unclear: [] };
  return {
    ...empty,
    ...gives,
    ...(facts ? { facts } : {}),
    ...(plans ? { plans } : {}),
    ...(unclear ? { unclear } : {}),
  };
}

/** A bare name is in `practices/`, one with a folder is under `tests/corpus/`. */
function practiceOf(name: string): string {
  return new URL(name.includes('/') ? name : `practices/${name}`, import.meta.url).pathname;
}

function said(error: z.ZodError | undefined, file: string, line: number, number: number): CorpusError[] {
  return (error?.issues ?? []).map((issue) => ({
    ...{ file, line, number },
    message: `${issue.path.join('.')}: ${issue.message}`,
  }));
}

function lineAt(node: unknown, lines: LineCounter): number {
  const at: Node | undefined = isMap(node) || isSeq(node) || isScalar(node) ? node : undefined;
  return at?.range ? lines.linePos(at.range[0]).line : 1;
}
