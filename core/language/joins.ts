import type { NoteScope } from './clause.ts';
import { type Draft, isOutcomeOnly, sortOf } from './clauses.ts';
import { jointOf } from './neighbours.ts';
import type { Output } from './output.ts';
import { hasSort, hasTag, type Part } from './part.ts';
import type { Sentence } from './segments.ts';
import type { TimeSpan } from './times/time-span.ts';

/** "Arvo all,": a part of the day that greets. */
function isGreeting(parts: readonly Part[], span: TimeSpan): boolean {
  return (
    span.part !== undefined &&
    span.days.every(({ first }) => first.sort === 'offset' && first.days === 0) &&
    span.clocks.length === 0 &&
    span.to - span.from === 1 &&
    parts.some((p) => p.entity === undefined && !p.mark)
  );
}

/** Segments that say nothing by themselves are joined to the clause they belong to. */
export function merged(
  drafts: readonly Draft[],
  sentences: readonly Sentence[],
  scope: NoteScope,
  out: Output,
): Draft[] {
  const list: Draft[] = [];
  for (const draft of drafts) {
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

/** "0920 tip 2 used, tip 2 washed": a clock time that opens the note covers what follows too. */
function headTimeOf(draft: Draft, scope: NoteScope, out: Output): void {
  const entity = draft.parts[0]?.entity;
  if (entity?.is !== 'time' || !out.empty || entity.span.clocks.length !== 1) return;
  if (entity.span.range === undefined && entity.span.shift === undefined) scope.headTime ??= entity.span;
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

/** "Two scans on Saturday, 9.15 and 10.45": figures and times behind bookings are when they are. */
function isBookedTimes(last: Draft, draft: Draft): boolean {
  if (last.sentence !== draft.sentence) return false;
  const scans = last.parts.some((p) => p.entity === undefined && /^scans$/.test(p.text));
  return (
    scans &&
    last.parts.some((p) => p.entity?.is === 'time') &&
    !last.parts.some((p) => p.entity?.is === 'scanner') &&
    draft.parts.every(
      (p) =>
        p.mark ||
        p.entity?.is === 'time' ||
        (p.entity?.is === 'number' && !p.unknown) ||
        (p.entity?.is === 'tips' && !p.entity.named && p.entity.which === undefined) ||
        (p.entity === undefined && p.text === 'at'),
    )
  );
}

/** "BI positive. Ran Tuesday.": the day a test ran, as a sentence of its own. */
function isRunDay(last: Draft, draft: Draft): boolean {
  return (
    last.parts.some((p) => hasTag(p, 'spore')) &&
    draft.parts.length <= 5 &&
    draft.parts.some((p) => p.entity?.is === 'time' && p.entity.span.days.length > 0) &&
    draft.parts.every(
      (p) => p.mark || p.entity?.is === 'time' || hasTag(p, 'run') || /^(it|was|on|from)$/.test(p.text),
    )
  );
}

/** "224 passed, printout stapled in, strip turned": what the strip showed is the load's, past an aside of other things. */
function beforeAside(list: readonly Draft[], draft: Draft): boolean {
  const [aside, load] = [list[list.length - 1], list[list.length - 2]];
  if (aside?.sort !== 'talk' || load === undefined || load.sentence !== draft.sentence) return false;
  if (load.sentence !== aside.sentence || !isLoadDetail(draft.parts)) return false;
  return joinsTo(load, draft) && !aside.parts.some((p) => p.entity !== undefined);
}

function spanIn(draft: Draft): TimeSpan | null {
  const entity = draft.parts.find((p) => p.entity?.is === 'time')?.entity;
  return entity?.is === 'time' ? entity.span : null;
}

/** "Wiped, cover on, at quarter past two": a time set off at the end is of every clause before it. */
function coversAll(list: readonly Draft[], draft: Draft): boolean {
  const last = list[list.length - 1];
  if (last?.sentence !== draft.sentence || draft.joint !== ',' || list.length < 2) return false;
  return list.every((d) => d.parts.every((p) => p.entity?.is !== 'time'));
}

/** "Mind and put the cover on": the request goes on with what follows it. */
function carriesOver(last: Draft, draft: Draft): boolean {
  return (
    last.sort === 'talk' && last.sentence === draft.sentence && draft.joint === 'and' && asksOnly(last.parts)
  );
}

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
  if (draft.sort === 'time' || isBookedTimes(last, draft) || isRunDay(last, draft)) return true;
  if (namesTheOne(last, draft) || isLoadOfOutcome(last, draft)) return true;
  if (draft.sort === 'outcome' && isOutcomeOnly(draft.parts)) return takesResult(last.parts);
  if (last.parts.some(isLook) && isVerdict(draft.parts)) return true;
  if (speaksOfLoad(last.parts) && (isLoadDetail(draft.parts) || isLoadVerdict(draft.parts))) return true;
  if (isDoubtAfter(last, draft)) return !draft.parts.some((p) => p.unknown);
  return isSporeResult(last, draft) || isSamePatient(last, draft) || isBareOutcome(last, draft);
}

function isLook(part: Part): boolean {
  if (hasTag(part, 'magnifier') || hasTag(part, 'inspection')) return true;
  return hasTag(part, 'check') && part.entity === undefined;
}

/** A load or its figures; a number alone or an autoclave only beside a result. */
function speaksOfLoad(parts: readonly Part[]): boolean {
  if (parts.some((p) => p.entity?.is === 'load' || p.entity?.is === 'cycle')) return true;
  const may = parts.some(
    (p) => (p.entity?.is === 'tips' && p.entity.unknown.length > 0) || p.entity?.is === 'autoclave',
  );
  return may && parts.some((p) => hasTag(p, 'pass') || hasTag(p, 'fail'));
}

/** "Tip 4 went off, I think". */
function isDoubtAfter(last: Draft, draft: Draft): boolean {
  const doubts = draft.parts.some((p) => p.entity === undefined && hasTag(p, 'doubt'));
  return draft.sort === 'talk' && doubts && last.sentence === draft.sentence;
}

function isSporeResult(last: Draft, draft: Draft): boolean {
  if (draft.sort === 'act' || draft.parts.some((p) => p.unknown)) return false;
  return last.parts.some((p) => hasTag(p, 'spore')) && draft.parts.some((p) => hasTag(p, 'result'));
}

function isSamePatient(last: Draft, draft: Draft): boolean {
  const says = (one: Draft) => one.sort !== 'act' && one.parts.some((p) => hasTag(p, 'samept'));
  return says(draft) || says(last);
}

function isBareOutcome(last: Draft, draft: Draft): boolean {
  return last.sort === 'entities' && draft.sort === 'outcome' && last.sentence === draft.sentence;
}

/** "All used ones - in the autoclave - not 5": those left out of a set, set off by a mark. */
function sparesOf(list: readonly Draft[], draft: Draft): boolean {
  const speaking = list.findLast((one) => one.parts.some((p) => p.entity?.is === 'tips'));
  const words = draft.parts.filter((p) => !p.mark);
  return (
    speaking?.sentence === draft.sentence &&
    speaking.parts.some(isOpenSet) &&
    /^(except|bar|apart|excluding|minus|but|barring|not|other than|except for|save)$/.test(
      words[0]?.text ?? '',
    ) &&
    words.some((p) => p.entity?.is === 'tips' && p.entity.which === undefined) &&
    words.every(
      (p) =>
        p.entity?.is === 'tips' ||
        (p.entity === undefined && (hasSort(p, 'glue') || hasTag(p, 'neg') || hasTag(p, 'tip'))),
    )
  );
}

function isOpenSet(part: Part): boolean {
  return part.entity?.is === 'tips' && part.entity.which !== undefined && part.entity.except.length === 0;
}

/** "Took the tip off, it was 6": which one, told after. */
function namesTheOne(last: Draft, draft: Draft): boolean {
  const silent = last.parts.some((p) => hasTag(p, 'tip')) && !last.parts.some((p) => p.entity?.is === 'tips');
  const words = draft.parts.filter((p) => !p.mark);
  return (
    silent &&
    last.sentence === draft.sentence &&
    words.some((p) => p.entity?.is === 'tips') &&
    words.every(
      (p) =>
        p.entity?.is === 'tips' ||
        (p.entity === undefined && /^(it|that|was|is|it's|that's|number|no|'s|this)$/.test(p.text)),
    )
  );
}

/** "Passed - load 305": the load behind its result. */
function isLoadOfOutcome(last: Draft, draft: Draft): boolean {
  const load = draft.parts.some((p) => p.entity?.is === 'load');
  return load && last.sort === 'outcome' && draft.sort === 'entities' && last.sentence === draft.sentence;
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

/** "Load is failed", "so that's a fail": the verdict on the load just named. */
function isLoadVerdict(parts: readonly Part[]): boolean {
  const words = parts.filter((p) => !p.mark);
  return (
    words.length <= 5 &&
    words.some((p) => hasTag(p, 'fail') || (hasTag(p, 'pass') && /pass/.test(p.text))) &&
    words.every(
      (p) =>
        p.entity === undefined &&
        (hasSort(p, 'glue') || ['load', 'pass', 'fail', 'be', 'have'].some((tag) => hasTag(p, tag))),
    )
  );
}

const DRYNESS =
  /^((bone |all |nice and )?dry|dried|(still )?wet|wet through|damp|soaked|soaking|soaking wet|soakin|soggy|moist)$/;

/** What belongs to a load's result: figures, indicator, dry or wet packs. */
function isLoadDetail(parts: readonly Part[]): boolean {
  let detail = false;
  for (const part of parts) {
    const is = part.entity?.is;
    if (is === 'cycle') detail = true;
    else if (is !== undefined && is !== 'time' && is !== 'number') return false;
    else if (is === undefined && (hasTag(part, 'strip') || hasTag(part, 'pouch') || DRYNESS.test(part.text)))
      detail = true;
    else if (part.unknown) return false;
  }
  return detail;
}

/** "Mind and …", "please remember and …": a request that the words after it carry out. */
function asksOnly(parts: readonly Part[]): boolean {
  return (
    parts.some((p) => p.entity === undefined && hasTag(p, 'request')) &&
    parts.every((p) => p.mark || hasSort(p, 'glue') || hasSort(p, 'mood'))
  );
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
