import type { NoteScope } from './clause.ts';
import { type Draft, isOutcomeOnly, sortOf } from './clauses.ts';
import { jointOf } from './growth.ts';
import {
  isLoadDetail,
  isLoadOfOutcome,
  isLoadVerdict,
  isSporeResult,
  speaksOfLoad,
  takesResult,
} from './joins-of-loads.ts';
import { coversAll, headTimeOf, isBookedTimes, isGreeting, isRunDay, spanIn } from './joins-of-times.ts';
import { asSpared, isLook, isVerdict, namesTheOne, sparesOf } from './joins-of-tips.ts';
import type { Output } from './output.ts';
import { hasSort, hasTag, type Part } from './part.ts';
import type { Sentence } from './segments.ts';

/** Segments that say nothing by themselves are joined to the clause they belong to. */
export function merged(
  drafts: readonly Draft[],
  sentences: readonly Sentence[],
  scope: NoteScope,
  out: Output,
): Draft[] {
  const list: Draft[] = [];
  for (const said of drafts) {
    const draft = asSpared(said);
    const last = list[list.length - 1];
    const span = draft.sort === 'time' ? spanIn(draft) : null;
    if (span !== null && last === undefined) {
      // A time at the head of the note covers all its facts.
      if (out.empty && !isGreeting(draft.parts, span)) scope.headTime = span;
    } else if (span !== null && sentences.length === 1 && coversAll(list, draft)) {
      scope.headTime = span;
    } else if (!joined(list, draft)) list.push(draft);
    if (list.length === 1 && last === undefined) headTimeOf(draft, scope, out);
  }
  return list;
}

/** Puts a draft to the clause it belongs to; false where it stands by itself. */
function joined(list: Draft[], draft: Draft): boolean {
  const last = list[list.length - 1];
  if (last === undefined) return false;
  if (carriesOver(last, draft)) {
    list[list.length - 1] = { ...draft, parts: [...last.parts, ...draft.parts], joint: last.joint };
    return true;
  }
  const at = beforeAside(list, draft) ? list.length - 2 : list.length - 1;
  const own = list[at];
  if (own === undefined || (at === list.length - 1 && !joinsTo(own, draft) && !sparesOf(list, draft)))
    return false;
  const then = /then/.test(draft.joint) ? [{ ...jointOf(draft), text: 'then' }] : [];
  const parts = [...own.parts, ...then, ...draft.parts];
  list[at] = { ...own, parts, sort: sortOf(parts) };
  return true;
}

/** "224 passed, printout stapled in, strip turned": what the strip showed is the load's, past an aside of other things. */
function beforeAside(list: readonly Draft[], draft: Draft): boolean {
  const [aside, load] = [list[list.length - 1], list[list.length - 2]];
  if (aside?.sort !== 'talk' || load === undefined || load.sentence !== draft.sentence) return false;
  if (load.sentence !== aside.sentence || !isLoadDetail(draft.parts)) return false;
  return joinsTo(load, draft) && !aside.parts.some((p) => p.entity !== undefined);
}

/** "Mind and put the cover on": the request goes on with what follows it. */
function carriesOver(last: Draft, draft: Draft): boolean {
  return (
    last.sort === 'talk' && last.sentence === draft.sentence && draft.joint === 'and' && asksOnly(last.parts)
  );
}

function joinsTo(last: Draft, draft: Draft): boolean {
  if (draft.sort === 'time' || isBookedTimes(last, draft) || isRunDay(last, draft)) return true;
  if (namesTheOne(last, draft) || isLoadOfOutcome(last, draft)) return true;
  if (draft.sort === 'outcome' && isOutcomeOnly(draft.parts)) return takesResult(last.parts);
  if (last.parts.some(isLook) && isVerdict(draft.parts)) return true;
  if (speaksOfLoad(last.parts) && (isLoadDetail(draft.parts) || isLoadVerdict(draft.parts))) return true;
  if (isDoubtAfter(last, draft)) return !draft.parts.some((p) => p.unknown);
  return isSporeResult(last, draft) || isSamePatient(last, draft) || isBareOutcome(last, draft);
}

/** "Tip 4 went off, I think". */
function isDoubtAfter(last: Draft, draft: Draft): boolean {
  const doubts = draft.parts.some((p) => p.entity === undefined && hasTag(p, 'doubt'));
  return draft.sort === 'talk' && doubts && last.sentence === draft.sentence;
}

function isSamePatient(last: Draft, draft: Draft): boolean {
  const says = (one: Draft) => one.sort !== 'act' && one.parts.some((p) => hasTag(p, 'samept'));
  return says(draft) || says(last);
}

function isBareOutcome(last: Draft, draft: Draft): boolean {
  return last.sort === 'entities' && draft.sort === 'outcome' && last.sentence === draft.sentence;
}

/** "Mind and …", "please remember and …": a request that the words after it carry out. */
function asksOnly(parts: readonly Part[]): boolean {
  return (
    parts.some((p) => p.entity === undefined && hasTag(p, 'request')) &&
    parts.every((p) => p.mark || hasSort(p, 'glue') || hasSort(p, 'mood'))
  );
}
