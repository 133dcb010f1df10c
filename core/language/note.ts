import { toIso } from '../time/instant.ts';
import { readAct } from './acts/acts.ts';
import { readAsks } from './asks/read-asks.ts';
import { Clause, type Memory, type NoteScope } from './clause.ts';
import { type Draft, draftsOf, isOutcomeOnly, sortOf } from './clauses.ts';
import { type Interpretation, interpret } from './interpret.ts';
import { moodOf } from './mood.ts';
import { Output } from './output.ts';
import { hasSort, hasTag, type Part } from './part.ts';
import { byOf, hasOwnSubject } from './people.ts';
import type { NoteRead } from './read.ts';
import { reasonAfter, reasonBefore } from './reasons.ts';
import { type Sentence, sentencesOf } from './segments.ts';
import { liesAhead, whenOf } from './when.ts';

type Shared = Omit<NoteScope, 'memory' | 'headTime'>;

/** Reads a note that has been cut into parts: acts, asks, then clause by clause what happened. */
export function readNote(parts: readonly Part[], shared: Shared, spaced: (part: Part) => boolean): NoteRead {
  const memory: Memory = {
    tips: null,
    scanners: [],
    load: null,
    autoclave: null,
    items: [],
    by: null,
    frame: '',
  };
  const scope: NoteScope = { ...shared, memory, headTime: null };
  const out = new Output(scope);
  const sentences = sentencesOf(parts, spaced);
  if (actsOf(parts, sentences, scope, out)) return out.done();
  const statements: Sentence[] = [];
  for (const sentence of sentences) {
    const rest = sentence.quoted ? null : readAsks(sentence, scope, out);
    if (rest === null) continue;
    statements.push(rest);
    if (rest !== sentence || true) readStatements([rest], scope, out);
  }
  return out.done();
}

/** Acts are short: the whole note, or one sentence of it. */
function actsOf(
  parts: readonly Part[],
  sentences: readonly Sentence[],
  scope: NoteScope,
  out: Output,
): boolean {
  if (parts.length > 40) return false;
  const inner = parts.filter((p) => !(p.mark && /^[.!]$/.test(p.text)) || p.senses.length > 0);
  const whole = readAct(new Clause(inner, scope));
  if (whole !== null) {
    out.act(whole);
    return true;
  }
  if (sentences.length < 2) return false;
  let all = true;
  const found = [];
  for (const sentence of sentences) {
    const act = readAct(
      new Clause(
        sentence.segments.flatMap((s) => s.parts),
        scope,
      ),
    );
    const glue = sentence.segments.every((s) =>
      s.parts.every((p) => p.mark || hasSort(p, 'glue') || p.entity?.is === 'person'),
    );
    if (act === null && !glue) all = false;
    if (act !== null && act.entry.kind !== 'pick') found.push(act);
  }
  const [first] = found;
  if (!all || first === undefined) return false;
  out.act(first);
  return true;
}

/** Reads the clauses of what is no question. */
function readStatements(sentences: readonly Sentence[], scope: NoteScope, out: Output): void {
  const drafts = merged(draftsOf(sentences), scope, out);
  let voided = false;
  let pending: readonly Part[] = [];
  let previous: Interpretation | null = null;
  for (let i = 0; i < drafts.length; i++) {
    const draft = drafts[i];
    if (draft === undefined || draft.quoted || voided) continue;
    const cut = supposition(draft.parts);
    if (cut === 0) {
      voided = true;
      continue;
    }
    if (cut > 0) voided = true;
    const own = cut > 0 ? draft.parts.slice(0, cut) : draft.parts;
    const parts = pending.length > 0 ? [...pending, ...own] : own;
    const found = readDraft(parts, draft, previous, scope);
    if (found === null) {
      pending = sortOf(own) === 'entities' && i + 1 < drafts.length ? parts : [];
      remember(own, scope.memory);
      continue;
    }
    pending = [];
    const taken = emit(found, drafts, i, scope, out);
    i += taken;
    previous = found;
    remember(found.clause.parts, scope.memory);
  }
}

/** A clause by itself; else with the verb of the clause before ("cleaned the lens on green and the base on Robin"). */
function readDraft(
  parts: readonly Part[],
  draft: Draft,
  previous: Interpretation | null,
  scope: NoteScope,
): Interpretation | null {
  const verb = previous === null ? undefined : previous.clause.parts[previous.result.verb];
  const bare =
    draft.sort === 'entities' &&
    previous !== null &&
    verb !== undefined &&
    draft.joint !== '' &&
    verb.entity === undefined;
  const alike =
    bare &&
    previous.frame.name === 'used' &&
    draft.joint === 'and' &&
    previous.result.made.some((m) => 'scanner' in m.entry);
  const alone = alike ? null : interpret(parts, scope);
  if (alone !== null || !bare) return alone;
  return interpret([verb, ...parts], scope);
}

/** Where "if", "in case", "until" begins; −1 where nothing is supposed. */
function supposition(parts: readonly Part[]): number {
  const at = parts.findIndex(
    (p) => p.entity === undefined && hasTag(p, 'suppose') && !p.senses.some((s) => s.sort === 'verb'),
  );
  if (at < 0) return -1;
  const before = parts.slice(0, at);
  return before.every((p) => p.mark || (p.entity === undefined && (hasSort(p, 'glue') || hasSort(p, 'mood'))))
    ? 0
    : at;
}

/** Segments that say nothing by themselves are joined to the clause they belong to. */
function merged(drafts: readonly Draft[], scope: NoteScope, out: Output): Draft[] {
  const list: Draft[] = [];
  for (const draft of drafts) {
    const last = list[list.length - 1];
    if (draft.sort === 'time') {
      const span = draft.parts.find((p) => p.entity?.is === 'time')?.entity;
      if (last === undefined && span?.is === 'time') {
        if (out.empty && list.length === 0) scope.headTime = span.span;
        continue;
      }
    }
    if (last !== undefined && joinsTo(last, draft)) {
      list[list.length - 1] = {
        ...last,
        parts: [...last.parts, ...draft.parts],
        sort: sortOf([...last.parts, ...draft.parts]),
      };
    } else list.push(draft);
  }
  return list;
}

const RESULTS = [
  'calibrate',
  'spore',
  'penetration',
  'control',
  'leak',
  'magnifier',
  'inspection',
  'check',
  'load',
];

function takesResult(parts: readonly Part[]): boolean {
  return parts.some(
    (p) =>
      p.entity?.is === 'load' ||
      p.entity?.is === 'cycle' ||
      RESULTS.some((tag) => hasTag(p, tag)) ||
      (p.entity?.is === 'tips' && !p.entity.named && p.entity.unknown.length > 0),
  );
}

function joinsTo(last: Draft, draft: Draft): boolean {
  if (draft.sort === 'time') return true;
  if (draft.sort === 'outcome' && isOutcomeOnly(draft.parts)) return takesResult(last.parts);
  const load =
    last.parts.some((p) => p.entity?.is === 'load' || p.entity?.is === 'cycle') ||
    (last.parts.some((p) => p.entity?.is === 'tips' && p.entity.unknown.length > 0) &&
      last.parts.some((p) => hasTag(p, 'pass') || hasTag(p, 'fail')));
  if (load && isLoadDetail(draft.parts)) return true;
  if (
    draft.sort === 'talk' &&
    draft.parts.some((p) => p.entity === undefined && hasTag(p, 'doubt')) &&
    last.sentence === draft.sentence
  )
    return !draft.parts.some((p) => p.unknown);
  if (draft.sort === 'talk' && draft.parts.some((p) => hasTag(p, 'samept'))) return true;
  if (last.sort === 'entities' && draft.sort === 'outcome' && last.sentence === draft.sentence) return true;
  return false;
}

/** What belongs to a load's result: figures, indicator, dry or wet packs. */
function isLoadDetail(parts: readonly Part[]): boolean {
  let detail = false;
  for (const part of parts) {
    const is = part.entity?.is;
    if (is === 'cycle') detail = true;
    else if (is !== undefined && is !== 'time' && is !== 'number') return false;
    else if (
      is === undefined &&
      (hasTag(part, 'strip') || hasTag(part, 'pouch') || /^(dry|wet|damp|soaked|soggy)$/.test(part.text))
    )
      detail = true;
    else if (part.unknown) return false;
  }
  return detail;
}

/** Puts what a clause says where its mood lets it go; how many drafts after it were taken for its reason. */
function emit(
  found: Interpretation,
  drafts: readonly Draft[],
  at: number,
  scope: NoteScope,
  out: Output,
): number {
  const { clause, result } = found;
  const ahead = liesAhead(clause);
  const verb = Math.max(result.verb, 0);
  let mood = moodOf(clause, verb, ahead);
  if (result.anyMood && (mood === 'void' || mood === 'planned')) mood = 'stated';
  if (mood === 'void' || mood === 'asked') return 0;
  if (mood === 'doubted') {
    out.doubted(found);
    return 0;
  }
  let taken = 0;
  const first = result.made[0];
  const more: Record<string, unknown> = {};
  if (first !== undefined && (first.entry.kind === 'held' || first.entry.kind === 'retired')) {
    const after = reasonAfter(drafts, at, clause, scope);
    const reason = after?.text ?? reasonBefore(out, first.entry);
    if (reason !== null) more.reason = reason;
    taken = after?.taken ?? 0;
  }
  const by = byOf(clause, verb);
  if (by !== null) clause.use(by.at);
  const inherited =
    by === null && scope.memory.by !== null && !hasOwnSubject(clause) && drafts[at]?.joint !== ''
      ? scope.memory.by
      : null;
  scope.memory.by = by?.name ?? inherited;
  if (scope.memory.by !== null && mood === 'stated' && first?.entry.kind !== 'shown')
    more.by = scope.memory.by;
  if (clause.has('samept')) more.samePatient = true;
  out.clause(found, mood === 'planned', more, (site) =>
    whenOf(clause, site, mood === 'planned' ? 'forward' : 'back'),
  );
  return taken;
}

/** Keeps what the clause spoke of, for those after it that leave it out. */
function remember(parts: readonly Part[], memory: Memory): void {
  const items: string[] = [];
  const scanners = parts.flatMap((p) => (p.entity?.is === 'scanner' ? p.entity.ids : []));
  if (scanners.length > 0) {
    memory.scanners = [...new Set(scanners)];
    items.push(...memory.scanners.map((id) => `scanner:${id}`));
  }
  for (const part of parts) {
    const { entity } = part;
    if (entity?.is === 'tips' && (entity.ids.length > 0 || entity.which !== undefined)) {
      memory.tips = entity;
      items.push(...entity.ids.map((id) => `tip:${id}`));
    }
    if (entity?.is === 'load') {
      memory.load = entity;
      items.push(`load:${entity.ids[0]}`);
    }
    if (entity?.is === 'autoclave' && entity.id !== null) {
      memory.autoclave = entity.id;
      items.push(`autoclave:${entity.id}`);
    }
  }
  if (items.length > 0) memory.items = items;
}

export { toIso };
