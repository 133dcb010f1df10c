import { type Draft, saidIn } from './clauses.ts';
import { hasSort, hasTag, meantWord, type Part } from './part.ts';

/** Words that a second time may stand among and say nothing else: "then again 9:20", "finished at ten to 12", "passed at 10.40". */
function onlyTimed(draft: Draft, verbs: RegExp): boolean {
  const own = saidIn(draft);
  return (
    own.some((p) => p.entity?.is === 'time' && p.entity.span.clocks.length > 0) &&
    own.some((p) => p.entity === undefined && verbs.test(p.text)) &&
    own.every(
      (p) =>
        p.entity?.is === 'time' || (p.entity === undefined && (verbs.test(p.text) || hasSort(p, 'glue'))),
    )
  );
}

/** "Calibrated blue at 9, failed, again 9:20, passed", "started 11:30, finished 11:50": the second time is of an act of its own. */
export function timedTwice(drafts: readonly Draft[]): readonly Draft[] {
  const list: Draft[] = [];
  for (const draft of drafts) {
    const first = list.findLast(
      (one) => one.sentence === draft.sentence && saidIn(one).some((p) => p.entity?.is === 'time'),
    );
    const told = list.filter((one) => one.sentence === draft.sentence).flatMap(saidIn);
    list.push(first === undefined ? draft : secondAct(first, draft, told));
  }
  return list;
}

function secondAct(first: Draft, draft: Draft, told: readonly Part[]): Draft {
  const timed = saidIn(first).some((p) => p.entity?.is === 'time' && p.entity.span.clocks.length > 0);
  if (!timed) return draft;
  const load = saidIn(first).find((p) => p.entity?.is === 'load');
  const act = told.find((p) => p.entity === undefined && (hasTag(p, 'calibrate') || hasTag(p, 'scan')));
  if (
    load !== undefined &&
    onlyTimed(draft, /^(passed|failed|finished|done|out)$/) &&
    saidIn(first).some((p) => /^(on|in|started)$/.test(p.text))
  )
    return {
      ...draft,
      parts: [load, ...saidIn(first).filter((p) => p.entity?.is === 'autoclave'), ...draft.parts],
      sort: 'act',
    };
  if (act === undefined) return draft;
  if (hasTag(act, 'scan') && onlyTimed(draft, /^(finished|done|ended|over)$/))
    return { ...draft, parts: [SCAN, ...draft.parts], sort: 'act' };
  const scanner = told.find((p) => p.entity?.is === 'scanner' || hasTag(p, 'scanner'));
  if (
    hasTag(act, 'calibrate') &&
    scanner !== undefined &&
    onlyTimed(draft, /^(again|tried again|tried|redid|redone|retried)$/)
  )
    return {
      ...draft,
      parts: [act, scanner, ...draft.parts.filter((p) => p.entity !== undefined)],
      sort: 'act',
    };
  return draft;
}

const SCAN = meantWord('scan', { sort: 'verb', tag: 'scan', form: 'n' });
