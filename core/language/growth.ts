import {
  countsIt,
  hasOwnResult,
  isAnotherAct,
  isToldNext,
  staysBehind,
  tellsOfItself,
} from './another-act.ts';
import type { NoteScope } from './clause.ts';
import type { Draft } from './clauses.ts';
import { affirmed } from './contrast.ts';
import { type Interpretation, interpret } from './interpret.ts';
import { isOpenSet } from './joins-of-tips.ts';
import { leftOut } from './left-out.ts';
import { hasTag, type Part } from './part.ts';
import { supposition } from './supposition.ts';

interface Growing {
  readonly parts: readonly Part[];
  readonly read: Interpretation | null;
  readonly taken: number;
}

/** A clause takes in no more drafts than this. */
export const MOST_TAKEN = 12;

/** Takes in the names, places and numbers that follow, as long as they are explained with it and not by themselves. */
export function grow(start: Growing, draft: Draft, after: readonly Draft[], scope: NoteScope): Growing {
  let grown = start;
  for (const next of after) {
    const { parts, read } = grown;
    if (read !== null && isToldNext(after[grown.taken + 1])) break;
    if (!mayTake(next, draft, read, scope) && !goesOnAsList(parts, read, next, draft)) break;
    const longer: readonly Part[] = [...parts, jointOf(next), ...next.parts];
    const both = interpret(longer, scope);
    if (both === null || !takesIn(both, parts.length + 1)) break;
    if (read !== null && separate(read, next, scope)) break;
    grown = { parts: longer, read: both, taken: grown.taken + 1 };
  }
  return grown;
}

function mayTake(next: Draft, draft: Draft, read: Interpretation | null, scope: NoteScope): boolean {
  if (read !== null && (countsIt(next) || tellsOfItself(next) || affirmed(next, read) !== null)) return false;
  if (next.quoted || supposition(next.parts) >= 0) return false;
  if (read !== null && (leftOut(next.parts) || (!fillsLoad(read, next) && isAnotherAct(next, read))))
    return false;
  if (fillsLoad(read, next) || wearsTip(read, next, draft)) return true;
  if (next.sort !== 'entities' || next.sentence !== draft.sentence) return false;
  // "All sterile but 4" leaves it out; of one thing nothing is left out, so "sent 3, but 4 …" begins anew.
  if (next.joint === 'but' && read?.clause.parts.some(isOpenSet) !== true) return false;
  if (read !== null && hasOwnResult(next, read)) return false;
  const alone = interpret(next.parts, scope);
  return alone === null || (read !== null && isAdjunct(alone, read));
}

/** "Moved blue and green to north": what does not read yet ends with a thing, and the next begins with another. */
function goesOnAsList(
  parts: readonly Part[],
  read: Interpretation | null,
  next: Draft,
  draft: Draft,
): boolean {
  if (read !== null || next.quoted || next.sort !== 'entities' || next.sentence !== draft.sentence)
    return false;
  if (!/^(?:and|&|\+|,|n|plus)$/.test(next.joint) || leftOut(next.parts) || staysBehind(next)) return false;
  const people = parts.some((p) => hasTag(p, 'show'));
  const isThing = (part: Part | undefined) =>
    part?.entity?.is === 'scanner' ||
    part?.entity?.is === 'tips' ||
    (people && part?.entity?.is === 'person');
  return (
    isThing(parts[parts.length - 1]) &&
    isThing(next.parts.find((part) => !part.mark && !hasTag(part, 'glue')))
  );
}

/** "Started load 41! It's got tips 2, 3 and 6 in it": what a load was started with. */
function fillsLoad(read: Interpretation | null, next: Draft): boolean {
  const lacks = read?.frame.name === 'load-started' && read.result.missing?.about === 'tip';
  return lacks && next.parts.some((p) => p.entity?.is === 'tips');
}

/** "Scanning with Wilde, M4 on": the tip that it is with. */
function wearsTip(read: Interpretation | null, next: Draft, draft: Draft): boolean {
  if (read?.frame.name !== 'scan-started' || next.sentence !== draft.sentence || next.joint !== ',')
    return false;
  const [tip, on, more] = next.parts;
  return (
    tip?.entity?.is === 'tips' &&
    on?.text === 'on' &&
    more === undefined &&
    !('tip' in (read.result.made[0]?.entry ?? {}))
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
export function jointOf(draft: Draft): Part {
  return /^[a-z]/.test(draft.joint) || draft.joint === '&' || draft.joint === '+'
    ? { ...JOINT, text: draft.joint, senses: [GLUE], mark: false }
    : JOINT;
}

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
  const timed = (parts: readonly Part[]) => parts.some((p) => p.entity?.is === 'time');
  const both =
    read.frame.name !== 'booked' && timed(next.parts) && timed(read.clause.parts) && things(next.parts) === 1;
  // "Wiped Severn and the base of Trent": a part of another.
  const part =
    next.parts.some((p) => hasTag(p, 'lens') || hasTag(p, 'base')) &&
    next.parts.some((p) => p.entity?.is === 'scanner');
  if (!both && (things(next.parts) < 2 || (things(read.clause.parts) < 2 && !part))) return false;
  return interpret([verb, ...next.parts], scope) !== null;
}

const GLUE = { sort: 'glue', tag: 'glue', form: '', ref: '' } as const;

/** A mark that keeps what stands on both sides apart. */
const JOINT: Part = { from: 0, to: 0, text: ',', senses: [], mark: true, unknown: false };
