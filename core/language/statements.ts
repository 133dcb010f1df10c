import type { NoteScope } from './clause.ts';
import { type Draft, draftsOf, sortOf } from './clauses.ts';
import { deniedWith } from './denial-carried.ts';
import { emit } from './emit.ts';
import { trustIn } from './good-news.ts';
import { jointOf } from './growth.ts';
import type { Interpretation } from './interpret.ts';
import { merged } from './joins.ts';
import { leftOut } from './left-out.ts';
import { leftOutLater } from './left-out-later.ts';
import { remember, rememberFacts } from './memory.ts';
import { clauseFrom } from './neighbours.ts';
import type { Output } from './output.ts';
import { hasSort, hasTag, type Part } from './part.ts';
import type { Sentence } from './segments.ts';
import { supposition } from './supposition.ts';
import { togetherAgain } from './telegrams.ts';

/** Longer runs of names than this wait for nothing. */
const LONGEST_WAIT = 40;

/** Reads the clauses of what is no question. */
export function readStatements(sentences: readonly Sentence[], scope: NoteScope, out: Output): void {
  if (TRIAL.test(scope.note)) return;
  const all = leftOutLater(togetherAgain(draftsOf(sentences)));
  const drafts = merged(all, sentences, scope, out);
  let pending: readonly Part[] = [];
  let previous: Interpretation | null = null;
  let supposed = -1;
  const denied = deniedWith(drafts);
  for (let i = 0; i < drafts.length; i++) {
    const draft = drafts[i];
    if (draft === undefined || draft.sentence === supposed || isSilent(draft, denied, all)) continue;
    const cut = supposition(draft.parts);
    if (cut >= 0 && supposesRest(draft, drafts[i + 1])) supposed = draft.sentence;
    if (cut === 0) continue;
    const own = cut > 0 ? draft.parts.slice(0, cut) : draft.parts;
    const found = clauseFrom(own, pending, drafts, i, previous, scope);
    if (found === null) {
      pending = waits(own) && i + 1 < drafts.length ? waiting(pending, draft, own) : [];
      remember(own, scope.memory);
      continue;
    }
    pending = [];
    i += found.taken;
    i += told(found.read, drafts, i, cut, scope, out);
    previous = found.read;
    remember(found.read.clause.parts, scope.memory);
    rememberFacts(found.read, scope.memory);
  }
}

/** Quoted, denied with what stands before it, or told again. */
function isSilent(draft: Draft, denied: ReadonlySet<Draft>, all: readonly Draft[]): boolean {
  return draft.quoted || denied.has(draft) || repeats(all, draft.sentence);
}

/** Tells what was read, as far as it may be believed; how many drafts after it belonged to it. */
function told(
  read: Interpretation,
  drafts: readonly Draft[],
  at: number,
  cut: number,
  scope: NoteScope,
  out: Output,
): number {
  const trust = trustIn(read.clause, read.result, drafts[at]?.parts ?? [], cut);
  if (trust === 'asked') out.doubted(read);
  return trust === 'taken' ? emit(read, drafts, at, scope, out) : 0;
}

function waiting(pending: readonly Part[], draft: Draft, own: readonly Part[]): readonly Part[] {
  if (pending.length === 0 || pending.length > LONGEST_WAIT) return own;
  return [...pending, jointOf(draft), ...own];
}

/** True where what is supposed takes the rest of its sentence with it. */
function supposesRest(draft: Draft, next: Draft | undefined): boolean {
  return !isAside(draft, next) && !isOnlyUntil(draft, next);
}

/** "Before I forget, …", "when I got in, …": only what would have to come true takes the rest with it. */
function isAside(draft: Draft, next: Draft | undefined): boolean {
  const aside = draft.parts.some(
    (p) => p.entity === undefined && hasTag(p, 'suppose') && /^(before|when)/.test(p.text),
  );
  return aside && next?.joint === ',';
}

/** "Out of action till further notice, the cable's frayed": what is set off behind is no longer a matter of time. */
function isOnlyUntil(draft: Draft, next: Draft | undefined): boolean {
  const until = draft.parts.find((p) => p.entity === undefined && hasTag(p, 'suppose'));
  return /^(till?|until|til)$/.test(until?.text ?? '') && /^[-,:;(]|--$/.test(next?.joint ?? '');
}

/** "Example: tip 4 on blue", "fwd: …", "said nobody ever": words that nobody here says for true. */
function repeats(drafts: readonly Draft[], sentence: number): boolean {
  return drafts.some(
    (one) =>
      one.sentence === sentence && one.parts.some((p) => p.entity === undefined && REPEATS.test(p.text)),
  );
}

/** "Just testing: …" says nothing, whatever comes behind. */
const TRIAL = /^\s*(just |only )?(a )?test(ing)?( message| note)?\s*[:,-]/i;

const REPEATS =
  /^(example|for example|training example|fwd|forwarded|copied from|copied|pasting|just testing|test message|test note|testing testing|ignore this test|hypothetically|pretend|the sign says|says the sign|the poster says|type something like|something like|said nobody ever|said no one ever)$/;

/** "One scan, the 2.30, is cancelled": a scan as a thing. */
function namesScans(part: Part): boolean {
  return part.senses.some((s) => s.tag === 'scan' && s.form === 'n');
}

/** True where a draft only names things: what is said of them comes after. */
/**
 * "Forgot to cover green": what was not done to a thing waits for nothing, and lends neither that nor its denial. With no
 * thing yet ("haven't wiped or covered green") it goes on.
 */
function saysNot(parts: readonly Part[]): boolean {
  const things = parts.some(
    (p) => p.entity !== undefined && p.entity.is !== 'person' && p.entity.is !== 'time',
  );
  if (!things) return false;
  return parts.some(
    (p) => p.entity === undefined && ['neg', 'oblige', 'intend', 'request'].some((tag) => hasTag(p, tag)),
  );
}

/** "Tip 4 is clean": that is said of it; it waits for nothing that is done to the next. */
function saysClean(parts: readonly Part[]): boolean {
  const last = parts.findLast((p) => p.entity === undefined && !p.mark);
  return last?.text === 'clean' && parts.some((p) => p.entity !== undefined);
}

function waits(parts: readonly Part[]): boolean {
  // "Not 5, used 6": what was left out waits for nothing.
  if (leftOut(parts)) return false;
  const sort = sortOf(parts);
  return (
    sort === 'entities' ||
    (sort === 'act' &&
      !parts.some((p) => hasTag(p, 'heater')) &&
      !saysClean(parts) &&
      !saysNot(parts) &&
      !parts.some((p) => hasSort(p, 'verb') && !hasSort(p, 'noun') && !hasSort(p, 'glue') && !namesScans(p)))
  );
}
