import { Clause, type NoteScope } from './clause.ts';
import { type Evidence, holds, weigh } from './evidence/evidence.ts';
import { bearsOutside } from './evidence/patience.ts';
import { strangeIn } from './evidence/strange.ts';
import { frames } from './frames/all.ts';
import type { Frame } from './frames/frame.ts';
import type { Part } from './part.ts';
import type { Result } from './result.ts';
import { withoutSpared } from './spared.ts';
import { mayLackVerb } from './stray.ts';

export interface Interpretation {
  readonly clause: Clause;
  readonly frame: Frame;
  readonly result: Result;
  readonly evidence: Evidence;
}

/** A clause of more parts than this is no note: nobody types one, and every step stays linear. */
export const LONGEST_CLAUSE = 80;

/** What a frame is tried on (a sense's tag, a mention's kind, a bare word) → places of the frames. */
const byTag = new Map<string, number[]>();
const byWord = new Map<string, number[]>();
for (const [i, frame] of frames.entries()) {
  for (const on of frame.on) {
    const word = on.startsWith('word:');
    const key = word ? on.slice('word:'.length) : on;
    const places = word ? byWord : byTag;
    places.set(key, [...(places.get(key) ?? []), i]);
  }
}

/** The frames that something in the clause calls for, in their order: four of some thirty for most clauses. */
function tried(parts: readonly Part[]): readonly Frame[] {
  const called = new Uint8Array(frames.length);
  const call = (places: readonly number[] | undefined) => {
    if (places !== undefined) for (const i of places) called[i] = 1;
  };
  for (const part of parts) {
    call(part.entity === undefined ? byWord.get(part.text) : byTag.get(part.entity.is));
    for (const sense of part.senses) call(byTag.get(sense.tag));
  }
  return frames.filter((_, i) => called[i] === 1);
}

/** The frame that explains the clause best, `null` where none does well enough. */
export function interpret(parts: readonly Part[], scope: NoteScope): Interpretation | null {
  if (parts.length === 0 || parts.length > LONGEST_CLAUSE) return null;
  let best: Interpretation | null = null;
  let bestScore = Number.NEGATIVE_INFINITY;
  for (const frame of tried(parts)) {
    const clause = new Clause(parts, scope);
    const told = frame.read(clause);
    const result = told === null ? null : withoutSpared(clause, told);
    if (result === null || result.made.length === 0 || lacksItems(result) || mayLackVerb(clause, result))
      continue;
    useMood(clause, result);
    const raw = weigh(clause);
    const evidence = {
      strength: raw.strength + (result.bonus ?? 0) + carried(result) + asking(clause, result),
      cost: raw.cost,
    };
    if (
      !holds(evidence) ||
      !bearsOutside(clause, scope.strange - strangeIn(parts) - (carried(result) > 1 ? 3 : 0), scope.listing)
    )
      continue;
    if (result.missing !== undefined && !worthAsking(clause, frame.name, evidence.strength)) continue;
    const score = evidence.strength - 2 * evidence.cost;
    if (score > bestScore + 0.001) {
      best = { clause, frame, result, evidence };
      bestScore = score;
    }
  }
  return best;
}

const ASKED_BARE = new Set([
  'sent',
  'used',
  'washed',
  'bagged',
  'removed',
  'fitted',
  'sterile',
  'retired',
  'load-finished',
]);

/** "Took the tip off", "wiped the scanner": said of one of ours, only which is left out. */
function asking(clause: Clause, result: Result): number {
  if (result.missing === undefined || clause.scope.strange > 0 || clause.parts.length > 7) return 0;
  const verb = clause.parts[result.verb];
  const done =
    verb?.senses.some((s) => s.sort === 'verb' && ASKED_VERBS.has(s.tag)) === true || verb?.text === 'off';
  return done && clause.has('tip', 'scanner', 'wipe') ? 0.9 : 0;
}

const ASKED_VERBS = new Set([
  'use',
  'wash',
  'bag',
  'fit',
  'remove',
  'take',
  'wipe',
  'calibrate',
  'sterilise',
  'send',
  'put',
  'clean',
  'check',
  'cover',
  'move',
  'scan',
]);

/** A question is put only where the note is plainly one for us. */
function worthAsking(clause: Clause, frame: string, strength: number): boolean {
  const named = [...clause.used].some((i) => {
    const entity = clause.parts[i]?.entity;
    return (
      (entity?.is === 'tips' && entity.named) ||
      entity?.is === 'load' ||
      (entity?.is === 'scanner' && entity.named === 'name') ||
      entity?.is === 'no-scanner'
    );
  });
  if (named) return true;
  if (clause.entities('tips').length > 0)
    return clause.scope.strange === 0 && clause.parts.length <= 6 && ASKED_BARE.has(frame);
  return strength >= 1.8 && clause.scope.strange <= 1;
}

/** A set alone cannot stand where items are named. */
function lacksItems(result: Result): boolean {
  return (
    result.missing === undefined &&
    result.made.some(({ entry }) => Array.isArray(entry.items) && entry.items.length === 0)
  );
}

/** What the clause before spoke of, and the only scanner there is, are evidence too. */
function carried(result: Result): number {
  let more = 0;
  for (const said of Object.values(result.made[0]?.said ?? {})) {
    if (typeof said !== 'string') continue;
    if (said.endsWith('just before')) more = Math.max(more, 1.5);
    else if (said === 'the only scanner') more = Math.max(more, 0.7);
  }
  return more;
}

/** Times, and people who did it, are explained by every frame. */
function useMood(clause: Clause, _result: Result): void {
  for (const { at } of clause.entities('time')) clause.use(at);
  clause.use(clause.at('samept'));
}
