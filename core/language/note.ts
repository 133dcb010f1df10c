import { readAct } from './acts/acts.ts';
import { readAsks } from './asks/read-asks.ts';
import { Clause, type Memory, type NoteScope } from './clause.ts';
import { Output } from './output.ts';
import { hasSort, type Part } from './part.ts';
import type { NoteRead } from './read.ts';
import { type Sentence, sentencesOf } from './segments.ts';
import { readStatements } from './statements.ts';

/** A reading and how well it explains the note. */
export interface Scored {
  readonly read: NoteRead;
  readonly score: number;
}

function scored(out: Output, scope: NoteScope): Scored {
  return { read: out.done(), score: out.score - 1.2 * Math.max(0, scope.strange - out.explained) };
}

type Shared = Omit<NoteScope, 'memory' | 'headTime'>;

/** Reads a note that has been cut into parts: acts, asks, then clause by clause what happened; `onlyActs` stops after the first. */
export function readNote(
  allParts: readonly Part[],
  shared: Shared,
  spaced: (part: Part) => boolean,
  onlyActs = false,
): Scored {
  const memory: Memory = {
    tips: null,
    named: [],
    scanners: [],
    load: null,
    autoclave: null,
    items: [],
    by: null,
    days: [],
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
  if (actsOf(parts, sentences, scope, out) || onlyActs) return scored(out, scope);
  const statements: Sentence[] = [];
  for (const sentence of sentences) {
    const rest = sentence.quoted ? null : readAsks(sentence, scope, out);
    if (rest === null) continue;
    statements.push(rest);
  }
  // What a question looked back to is no antecedent of statements: they remember for themselves.
  memory.load = null;
  memory.tips = null;
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
      sentence.question,
    );
    const glue = sentence.segments.every(
      (s) =>
        s.parts.length <= 4 &&
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
