import { countsIt } from './another-act.ts';
import type { NoteScope } from './clause.ts';
import type { Draft } from './clauses.ts';
import { affirmed, contrasted } from './contrast.ts';
import { grow, jointOf, MOST_TAKEN } from './growth.ts';
import { type Interpretation, interpret } from './interpret.ts';
import { leftOut } from './left-out.ts';
import { hasTag, meantWord, type Part } from './part.ts';

export interface Read {
  readonly read: Interpretation;
  /** How many of the drafts after it were taken in. */
  readonly taken: number;
}

/** Reads a draft with what it needs of its neighbours: names before it, names and places after it. */
export function clauseFrom(
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
  const grown = grow({ parts, read, taken: 0 }, draft, drafts.slice(at + 1, at + 1 + MOST_TAKEN), scope);
  const found = grown.read ?? readAhead(own, namingDraft(drafts, at), draft, scope);
  return found === null ? null : { read: found, taken: grown.taken };
}

/** "Washed bagged and sent 3": the first draft after this one that names what all of it was done to. */
function namingDraft(drafts: readonly Draft[], at: number): Draft | undefined {
  let i = at + 1;
  while (i < at + 4 && drafts[i]?.sort === 'act' && drafts[i]?.parts.every((p) => p.entity === undefined))
    i++;
  return drafts[i];
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
  // "They're sterile, except 4": the one that is not.
  if (leftOut(next.parts)) return null;
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
    !countsIt(draft) &&
    goesOnBarely(draft) &&
    previous !== null &&
    verb !== undefined &&
    draft.joint !== '' &&
    !/^(as|because|since|which|who|after|while|so|hence|therefore)$/.test(draft.joint) &&
    draft.joint !== 'but' &&
    !leftOut(parts) &&
    verb.entity === undefined &&
    !(
      (verb.text === 'off' || previous.frame.name === 'fault') &&
      parts.some((p) => p.entity === undefined && p.text === 'on')
    );
  const other = contrasted(draft, previous) ?? affirmed(draft, previous);
  if (other !== null) {
    const own = interpret(parts, scope);
    if (own?.frame === previous?.frame && own !== null) return own;
    const another = interpret(other, scope);
    if (another !== null) return another;
  }
  const alike =
    bare &&
    previous.frame.name === 'used' &&
    draft.joint === 'and' &&
    previous.result.made.some((m) => 'scanner' in m.entry);
  const alone = alike ? null : interpret(parts, scope);
  if (alone === null && previous?.frame.name === 'inspected' && isVerdictOnTips(parts))
    return interpret([LOOKED, ...parts], scope);
  if (alone !== null || !bare) return alone;
  return interpret(proVerb(parts, verb) ?? [verb, ...parts], scope);
}

/** Nothing but things and small words: "Trent's still bare", "rerun as 311" have something of their own to say. */
function goesOnBarely(draft: Draft): boolean {
  return draft.parts.every(
    (p) =>
      p.entity !== undefined ||
      p.mark ||
      (!p.unknown && !p.senses.some((s) => s.sort === 'verb' && s.form === 'd' && !OPEN_VERBS.has(s.tag))),
  );
}

/** Verbs that stand for any other, and results. */
const OPEN_VERBS = new Set(['be', 'have', 'do', 'finish', 'pass', 'fail', 'get', 'come', 'go']);

/** "Kofi wiped Otter and Bríd did Heron": who did the same to another. */
function proVerb(parts: readonly Part[], verb: Part): readonly Part[] | null {
  const did = parts[1];
  const who = parts[0]?.entity?.is === 'person' || /^(i|we)$/.test(parts[0]?.text ?? '');
  const told = who && did?.entity === undefined && /^(did|has|had|have|done)$/.test(did?.text ?? '');
  return told ? [...parts.slice(0, 1), verb, ...parts.slice(2)] : null;
}

/** "Tip 6 had residue; tip 4 was clean": what the same look showed of another. */
function isVerdictOnTips(parts: readonly Part[]): boolean {
  const verdict = ['pass', 'fail', 'debris', 'clean'].some((tag) => parts.some((p) => hasTag(p, tag)));
  return verdict && parts.some((p) => p.entity?.is === 'tips');
}

const LOOKED = meantWord('mag', { sort: 'noun', tag: 'magnifier', form: 'b' });
