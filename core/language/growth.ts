import type { NoteScope } from './clause.ts';
import type { Draft } from './clauses.ts';
import { affirmed } from './contrast.ts';
import { type Interpretation, interpret } from './interpret.ts';
import { isOpenSet } from './joins-of-tips.ts';
import { hasTag, type Part } from './part.ts';
import { LEAVING_OUT } from './spared.ts';
import { supposition } from './supposition.ts';

/** "Wiped blue, not red", "blue's calibrated, red still to do": what was not done to another is none of the clause before. */
export function leftOut(parts: readonly Part[]): boolean {
  const things = parts.some(
    (p) => (p.entity !== undefined && LEAVABLE.has(p.entity.is)) || hasTag(p, 'lens') || hasTag(p, 'base'),
  );
  const first = parts.find((p) => !p.mark);
  if (things && first?.entity === undefined && LEAVING_OUT.test(first?.text ?? '')) return true;
  return (
    things &&
    parts.some(
      (p) =>
        p.entity === undefined &&
        (/^(next|later|afterwards)$/.test(p.text) ||
          ['neg', 'oblige', 'intend', 'doubt'].some((tag) => hasTag(p, tag))),
    )
  );
}

const LEAVABLE: ReadonlySet<string> = new Set(['scanner', 'tips', 'autoclave', 'load']);

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

/** "With Wanda and tip 3 also removed": what follows with no thing of its own speaks of the one before it. */
function isToldNext(following: Draft | undefined): boolean {
  return (
    following?.joint === 'also' &&
    following.sort === 'act' &&
    following.parts.length <= 2 &&
    following.parts.every((p) => p.entity === undefined)
  );
}

/** "Retired 17, it's done 100": a number told of it is none of its kind. */
/** "Covered Severn, Trent's still bare": a thing with a word of its own that nobody knows. */
function tellsOfItself(next: Draft): boolean {
  const thing = next.parts.findIndex((p) => p.entity?.is === 'scanner');
  return (
    thing >= 0 &&
    next.parts.slice(thing + 1).some((p) => p.unknown) &&
    next.parts.some((p) => /^('s|is|are|still|was)$/.test(p.text))
  );
}

export function countsIt(next: Draft): boolean {
  return (
    /^(it|he|she|that|this|they)$/.test(next.parts[0]?.text ?? '') &&
    next.parts.some((p) => p.entity?.is === 'tips' && !p.entity.named && p.entity.ids.length === 0)
  );
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

/** What goes on, comes off or stands there is told by the draft itself, though it has no weighty verb. */
function isAnotherAct(next: Draft, read: Interpretation): boolean {
  const says = (words: RegExp) => next.parts.some((p) => p.entity === undefined && words.test(p.text));
  const tips = next.parts.some((p) => p.entity?.is === 'tips');
  // "Sent 3 and 5, kept 7 back", "Kofi wiped Otter and Bríd did Heron".
  if (staysBehind(next)) return true;
  if (
    next.parts.some(
      (p, i) =>
        (p.entity?.is === 'person' || (i === 0 && /^(i|we)$/.test(p.text))) &&
        /^(did|has|had|have|took|used|wiped|washed|done)$/.test(next.parts[i + 1]?.text ?? ''),
    )
  )
    return true;
  // "Took 4 off blue, put 9 on": another tip.
  if (read.frame.name === 'removed' && says(/^on$/)) return true;
  // "Blue is in surgery 2, tip 4's on it"; "moved blue to surgery 4 and put 7 on her".
  // "Starting a scan with blue and tip 5 on it" tells which tip it is with.
  if (read.frame.name === 'scan-started' && says(/^on (it|her|him)$/)) return false;
  if (tips && says(/^on (it|her|him)$/) && !next.parts.some((p) => hasTag(p, 'debris'))) return true;
  if (tips && says(/^on$/) && next.parts.some((p) => hasTag(p, 'put'))) return true;
  // "M4 bagged, M3 back in the sink".
  if (
    tips &&
    /^(washed|bagged|used|sent|inspected)$/.test(read.frame.name) &&
    says(/^(back|back in|back on|still in|in)$/) &&
    !says(/^(autoclave|steri)$/)
  )
    return true;
  // "2 and 3 bagged and in the steriliser".
  const steri = next.parts.some(
    (p) => p.entity?.is === 'autoclave' || hasTag(p, 'autoclave') || hasTag(p, 'steri'),
  );
  if (!tips && steri && /^(washed|bagged|used|removed)$/.test(read.frame.name) && says(/^(in|into|to)$/))
    return true;
  // "3 fogging, 5 on instead".
  if (
    tips &&
    says(/^on$/) &&
    /^(fault|used|washed|retired|missing|held|bagged|inspected)$/.test(read.frame.name)
  )
    return true;
  // "Scan done on blue, 8's off": the tip is the next act's.
  if (read.frame.name.startsWith('scan') && says(/^off$/)) return true;
  // "19 in surgery 1, put blue in there" speaks back of the place.
  return says(/^(in |over )?there$/);
}

/** "Kept 7 back", "Otter stays here": what was not done to it. */
function staysBehind(next: Draft): boolean {
  return next.parts.some((p) => p.entity === undefined && STAYS.test(p.text));
}

const STAYS = /^(kept|left|saved|skipped|missed|stays?|stayed|staying|remains|remained)$/;

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

/** "Lefty failed calibration, Biscuit passed", "debris on 3, 8 is fine": another's result. */
function hasOwnResult(next: Draft, read: Interpretation): boolean {
  const result = next.parts.some((p) => hasTag(p, 'pass') || hasTag(p, 'fail') || hasTag(p, 'debris'));
  if (read.frame.name === 'inspected' && read.result.made.some((m) => 'outcome' in m.entry))
    return result && next.parts.some((p) => p.entity?.is === 'tips');
  return result && next.parts.some((p) => p.entity?.is === 'scanner' || p.entity?.is === 'load');
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
