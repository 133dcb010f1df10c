import { toIso } from '../time/instant.ts';
import { readAct } from './acts/acts.ts';
import { readAsks } from './asks/read-asks.ts';
import { Clause, type Memory, type NoteScope } from './clause.ts';
import { type Draft, draftsOf, isOutcomeOnly, sortOf } from './clauses.ts';
import { strangeIn } from './evidence.ts';
import { type Interpretation, interpret } from './interpret.ts';
import { moodOf } from './mood.ts';
import { Output } from './output.ts';
import { hasSort, hasTag, type Part, type TipsSaid } from './part.ts';
import { byOf, hasOwnSubject } from './people.ts';
import type { NoteRead } from './read.ts';
import { reasonAfter, reasonBefore } from './reasons.ts';
import { type Sentence, sentencesOf } from './segments.ts';
import type { TimeSpan } from './times/time-span.ts';
import { liesAhead, whenOf } from './when.ts';

/** A reading and how well it explains the note. */
export interface Scored {
  readonly read: NoteRead;
  readonly score: number;
}

function scored(out: Output, scope: NoteScope): Scored {
  return { read: out.done(), score: out.score - 1.2 * Math.max(0, scope.strange - out.explained) };
}

type Shared = Omit<NoteScope, 'memory' | 'headTime'>;

/** Reads a note that has been cut into parts: acts, asks, then clause by clause what happened. */
export function readNote(allParts: readonly Part[], shared: Shared, spaced: (part: Part) => boolean): Scored {
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
  const signed = signatureOf(allParts, shared);
  const parts = signed === null ? allParts : allParts.slice(0, signed.at);
  const sentences = sentencesOf(parts, spaced);
  scope.sentences = sentences.length;
  scope.signature = signed?.name ?? null;
  if (!speaksOfUs(parts) && parts.length > 12) return scored(out, scope);
  if (actsOf(parts, sentences, scope, out)) return scored(out, scope);
  const statements: Sentence[] = [];
  for (const sentence of sentences) {
    const rest = sentence.quoted ? null : readAsks(sentence, scope, out);
    if (rest === null) continue;
    statements.push(rest);
  }
  readStatements(statements, scope, out);
  return scored(out, scope);
}

/** A long note with none of our things in it is nobody's business: nothing more needs to be tried. */
function speaksOfUs(parts: readonly Part[]): boolean {
  return parts.some((part) =>
    part.entity !== undefined
      ? part.entity.is !== 'time' && part.entity.is !== 'person' && part.entity.is !== 'number'
      : part.senses.some((s) => (s.sort === 'noun' || s.sort === 'verb') && OURS.has(s.tag)),
  );
}

const OURS = new Set([
  'tip',
  'scanner',
  'caltip',
  'cover',
  'lens',
  'base',
  'load',
  'autoclave',
  'spore',
  'penetration',
  'control',
  'leak',
  'temp',
  'record',
  'booking',
  'calibrate',
  'scan',
  'wipe',
  'bag',
  'sterile',
  'sterilise',
  'shut',
  'open',
  'due',
  'incident',
  'fog',
  'cancel',
  'hold',
  'release',
]);

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
    out.weighIn(4, 0, scope.strange);
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

/** "Green wiped down - JB", "(Tom)": who signed at the end. */
function signatureOf(parts: readonly Part[], shared: Shared): { name: string; at: number } | null {
  let end = parts.length - 1;
  while (end > 0 && parts[end]?.mark && /^[).!]$/.test(parts[end]?.text ?? '')) end--;
  const last = parts[end];
  const mark = parts[end - 1];
  if (last === undefined || !mark?.mark || !/^(-|--|\(|~|\/|\n)$/.test(mark.text) || end < 3) return null;
  if (last.entity?.is === 'person') return { name: last.entity.name, at: end - 1 };
  const typed = shared.note.slice(...shared.offset(last));
  return last.unknown && /^[A-Z]{2,3}$/.test(typed) ? { name: typed, at: end - 1 } : null;
}

/** Reads the clauses of what is no question. */
function readStatements(sentences: readonly Sentence[], scope: NoteScope, out: Output): void {
  const drafts = merged(draftsOf(sentences), sentences, scope, out);
  let pending: readonly Part[] = [];
  let previous: Interpretation | null = null;
  for (let i = 0; i < drafts.length; i++) {
    const draft = drafts[i];
    if (draft === undefined || draft.quoted) continue;
    const cut = supposition(draft.parts);
    if (cut === 0) {
      // "Before I forget, …", "when I got in, …": only what would have to come true takes the rest with it.
      if (
        draft.parts.some(
          (p) => p.entity === undefined && hasTag(p, 'suppose') && /^(before|when)/.test(p.text),
        ) &&
        drafts[i + 1]?.joint === ','
      )
        continue;
      return;
    }
    const own = cut > 0 ? draft.parts.slice(0, cut) : draft.parts;
    const found = clauseFrom(own, pending, drafts, i, previous, scope);
    if (found === null) {
      pending =
        waits(own) && i + 1 < drafts.length
          ? [...pending, ...(pending.length > 0 ? [jointOf(draft)] : []), ...own]
          : [];
      remember(own, scope.memory);
    } else {
      pending = [];
      i += found.taken;
      i += emit(found.read, drafts, i, scope, out);
      previous = found.read;
      remember(found.read.clause.parts, scope.memory);
      rememberFacts(found.read, scope.memory);
    }
    if (cut > 0) return;
  }
}

interface Read {
  readonly read: Interpretation;
  /** How many of the drafts after it were taken in. */
  readonly taken: number;
}

/** Reads a draft with what it needs of its neighbours: names before it, names and places after it. */
function clauseFrom(
  own: readonly Part[],
  pending: readonly Part[],
  drafts: readonly Draft[],
  at: number,
  previous: Interpretation | null,
  scope: NoteScope,
): Read | null {
  const draft = drafts[at];
  if (draft === undefined) return null;
  let parts = pending.length > 0 ? [...pending, jointOf(draft), ...own] : own;
  let read = readDraft(parts, draft, previous, scope);
  if (read === null && pending.length > 0) {
    parts = own;
    read = readDraft(parts, draft, previous, scope);
  }
  if (draft.sort !== 'act' && read === null) return null;
  let taken = 0;
  for (let next = drafts[at + 1]; next !== undefined; next = drafts[at + 1 + taken]) {
    const filling =
      read?.frame.name === 'load-started' &&
      read.result.missing?.about === 'tip' &&
      next.parts.some((p) => p.entity?.is === 'tips');
    if (
      (next.sort !== 'entities' && !filling) ||
      next.quoted ||
      (next.sentence !== draft.sentence && !filling) ||
      supposition(next.parts) >= 0
    )
      break;
    const alone = interpret(next.parts, scope);
    const standing = alone !== null && !(read !== null && isAdjunct(alone, read));
    if (
      (standing && !filling) ||
      (read !== null &&
        next.parts.some((p) => hasTag(p, 'pass') || hasTag(p, 'fail')) &&
        next.parts.some((p) => p.entity?.is === 'scanner' || p.entity?.is === 'load'))
    )
      break;
    const longer: readonly Part[] = [...parts, jointOf(next), ...next.parts];
    const both = interpret(longer, scope);
    if (both === null || !takesIn(both, parts.length + 1)) break;
    if (read !== null && separate(read, next, scope)) break;
    read = both;
    parts = longer;
    taken++;
  }
  if (read === null) read = readAhead(own, drafts[at + 1], draft, scope);
  return read === null ? null : { read, taken };
}

/** True where a draft only names things: what is said of them comes after. */
function waits(parts: readonly Part[]): boolean {
  const sort = sortOf(parts);
  return (
    sort === 'entities' ||
    (sort === 'act' && !parts.some((p) => hasSort(p, 'verb') && !hasSort(p, 'noun') && !hasSort(p, 'glue')))
  );
}

/** "Scanning with Robin and tip 5 in surgery 2": where no verb of motion is said, a place belongs to the clause before. */
function isAdjunct(alone: Interpretation, before: Interpretation): boolean {
  const verb = alone.clause.parts[alone.result.verb];
  const still =
    verb === undefined ||
    verb.entity !== undefined ||
    !verb.senses.some((s) => s.sort === 'verb' && s.tag !== 'be');
  return (
    still &&
    alone.frame.name === 'moved' &&
    /^(scan|used|load-started|found|departed)/.test(before.frame.name)
  );
}

/** The joint of a draft as a part, so that what stands on both sides is kept apart. */
function jointOf(draft: Draft): Part {
  return /^[a-z]/.test(draft.joint) || draft.joint === '&' || draft.joint === '+'
    ? { ...JOINT, text: draft.joint, senses: [GLUE], mark: false }
    : JOINT;
}

const GLUE = { sort: 'glue', tag: 'glue', form: '', ref: '' } as const;

/** A mark that keeps what stands on both sides apart. */
const JOINT: Part = { from: 0, to: 0, text: ',', senses: [], mark: true, unknown: false };

/** True where the frame uses a mention from `from` on. */
function takesIn(read: Interpretation, from: number): boolean {
  return (
    read.clause.parts.some(
      (part, i) =>
        i >= from && part.entity !== undefined && part.entity.is !== 'time' && read.clause.used.has(i),
    ) ||
    read.clause.parts.every((part, i) => i < from || part.entity === undefined || part.entity.is === 'time')
  );
}

/** "Cleaned the lens on green and the base on Robin", "used 4 on blue and 5 on green": the same done to another. */
function separate(read: Interpretation, next: Draft, scope: NoteScope): boolean {
  const verb = read.clause.parts[read.result.verb];
  if (verb === undefined || verb.entity !== undefined) return false;
  const things = (parts: readonly Part[]) =>
    parts.filter(
      (p) => p.entity?.is === 'tips' || p.entity?.is === 'scanner' || hasTag(p, 'lens') || hasTag(p, 'base'),
    ).length;
  if (things(next.parts) < 2 || things(read.clause.parts) < 2) return false;
  return interpret([verb, ...next.parts], scope) !== null;
}

/** "Niamh wiped and covered Pepper": what is done is said before what it is done to. */
function readAhead(
  own: readonly Part[],
  next: Draft | undefined,
  draft: Draft,
  scope: NoteScope,
): Interpretation | null {
  if (
    next === undefined ||
    next.sentence !== draft.sentence ||
    !/^(and|&|\+|n|,|then|and then)$/.test(next.joint)
  )
    return null;
  if (own.some((p) => p.entity !== undefined && p.entity.is !== 'person' && p.entity.is !== 'time'))
    return null;
  const objects = next.parts.filter((p) => p.entity?.is === 'scanner' || p.entity?.is === 'tips');
  return objects.length === 0 ? null : interpret([...own, ...objects], scope);
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

/** "Mind and …", "please remember and …": a request that the words after it carry out. */
function asksOnly(parts: readonly Part[]): boolean {
  return (
    parts.some((p) => p.entity === undefined && hasTag(p, 'request')) &&
    parts.every((p) => p.mark || hasSort(p, 'glue') || hasSort(p, 'mood'))
  );
}

/** "Arvo all,": a part of the day that greets. */
function isGreeting(parts: readonly Part[], span: TimeSpan): boolean {
  return (
    span.part !== undefined &&
    span.days.length === 0 &&
    span.clocks.length === 0 &&
    span.to - span.from === 1 &&
    parts.some((p) => p.entity === undefined && !p.mark)
  );
}

/** Segments that say nothing by themselves are joined to the clause they belong to. */
function merged(
  drafts: readonly Draft[],
  sentences: readonly Sentence[],
  scope: NoteScope,
  out: Output,
): Draft[] {
  const list: Draft[] = [];
  for (const draft of drafts) {
    const last = list[list.length - 1];
    if (draft.sort === 'time') {
      const span = draft.parts.find((p) => p.entity?.is === 'time')?.entity;
      if (last === undefined && span?.is === 'time') {
        if (out.empty && list.length === 0 && !isGreeting(draft.parts, span.span)) scope.headTime = span.span;
        continue;
      }
    }
    if (
      draft.sort === 'time' &&
      last !== undefined &&
      last.sentence === draft.sentence &&
      sentences.length === 1 &&
      draft.joint === ',' &&
      list.length > 1 &&
      list.every((d) => !d.parts.some((p) => p.entity?.is === 'time'))
    ) {
      const span = draft.parts.find((p) => p.entity?.is === 'time')?.entity;
      if (span?.is === 'time') scope.headTime = span.span;
      continue;
    }
    if (
      last !== undefined &&
      last.sort === 'talk' &&
      last.sentence === draft.sentence &&
      draft.joint === 'and' &&
      asksOnly(last.parts)
    ) {
      list[list.length - 1] = { ...draft, parts: [...last.parts, ...draft.parts], joint: last.joint };
      continue;
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
  if (
    last.parts.some(
      (p) =>
        hasTag(p, 'magnifier') || hasTag(p, 'inspection') || (hasTag(p, 'check') && p.entity === undefined),
    ) &&
    isVerdict(draft.parts)
  )
    return true;
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
  if (
    last.parts.some((p) => hasTag(p, 'spore')) &&
    draft.sort !== 'act' &&
    draft.parts.some((p) => hasTag(p, 'result')) &&
    !draft.parts.some((p) => p.unknown)
  )
    return true;
  if (draft.parts.some((p) => hasTag(p, 'samept')) && draft.sort !== 'act') return true;
  if (last.sort !== 'act' && last.parts.some((p) => hasTag(p, 'samept'))) return true;
  if (last.sort === 'entities' && draft.sort === 'outcome' && last.sentence === draft.sentence) return true;
  return false;
}

/** "It's not clean", "both spotless", "bit of gunk on it still": what an inspection showed. */
function isVerdict(parts: readonly Part[]): boolean {
  const words = parts.filter((p) => !p.mark);
  if (words.length > 8 || words.some((p) => p.entity !== undefined && p.entity.is !== 'time')) return false;
  return (
    words.some((p) => hasTag(p, 'clean') || hasTag(p, 'debris') || hasTag(p, 'pass') || hasTag(p, 'fail')) &&
    words.every(
      (p) =>
        hasSort(p, 'glue') ||
        hasSort(p, 'mood') ||
        ['clean', 'debris', 'pass', 'fail', 'be', 'have', 'see', 'do'].some((tag) => hasTag(p, tag)),
    )
  );
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
  out.weighIn(found.evidence.strength, found.evidence.cost, strangeIn(clause.parts));
  const ahead = liesAhead(clause, result.verb);
  const verb = Math.max(result.verb, 0);
  let mood = moodOf(clause, verb, ahead);
  if (result.anyMood && (mood === 'void' || mood === 'planned')) mood = 'stated';
  if (mood === 'void' || mood === 'asked') return 0;
  if (mood === 'doubted') {
    if (clause.scope.strange <= 2 || found.evidence.strength >= 3.4) out.doubted(found);
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
  const who = scope.memory.by ?? scope.signature;
  if (who !== null) more.by = who;
  if (clause.has('samept')) more.samePatient = true;
  out.clause(found, mood === 'planned', more, (site) =>
    whenOf(clause, site, mood === 'planned' ? 'forward' : 'back'),
  );
  return taken;
}

/** A scanner or tip that was filled in is spoken of as well. */
function rememberFacts(read: Interpretation, memory: Memory): void {
  const ids = read.result.made.flatMap(({ entry }) =>
    typeof entry.scanner === 'string' ? [entry.scanner] : [],
  );
  if (ids.length > 0) memory.scanners = [...new Set(ids)];
}

function together(first: TipsSaid | null, more: TipsSaid): TipsSaid {
  return first === null ? more : { ...first, ids: [...new Set([...first.ids, ...more.ids])] };
}

/** Keeps what the clause spoke of, for those after it that leave it out. */
function remember(parts: readonly Part[], memory: Memory): void {
  const items: string[] = [];
  const scanners = parts.flatMap((p) => (p.entity?.is === 'scanner' ? p.entity.ids : []));
  if (scanners.length > 0) {
    memory.scanners = [...new Set(scanners)];
    items.push(...memory.scanners.map((id) => `scanner:${id}`));
  }
  let tips: TipsSaid | null = null;
  for (const part of parts) {
    const { entity } = part;
    if (entity?.is === 'tips' && (entity.ids.length > 0 || entity.which !== undefined)) {
      tips = together(tips, entity);
      memory.tips = tips;
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
