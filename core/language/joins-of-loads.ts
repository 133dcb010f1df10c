import type { Draft } from './clauses.ts';
import { hasSort, hasTag, type Part } from './part.ts';

/** True where a result set off behind these parts can belong to them: a load, a test, a look, a calibration. */
export function takesResult(parts: readonly Part[]): boolean {
  return parts.some(
    (p) =>
      p.entity?.is === 'load' ||
      p.entity?.is === 'cycle' ||
      RESULTS.some((tag) => hasTag(p, tag)) ||
      (p.entity?.is === 'tips' && !p.entity.named && p.entity.unknown.length > 0),
  );
}

/** A load or its figures; a number alone or an autoclave only beside a result. */
export function speaksOfLoad(parts: readonly Part[]): boolean {
  if (parts.some((p) => p.entity?.is === 'load' || p.entity?.is === 'cycle')) return true;
  const may = parts.some(
    (p) => (p.entity?.is === 'tips' && p.entity.unknown.length > 0) || p.entity?.is === 'autoclave',
  );
  return may && parts.some((p) => hasTag(p, 'pass') || hasTag(p, 'fail'));
}

/** "BI from Monday, negative": the result of the spore test just named. */
export function isSporeResult(last: Draft, draft: Draft): boolean {
  if (draft.sort === 'act' || draft.parts.some((p) => p.unknown)) return false;
  // "Positive on Etna, negative on Vesta": another's.
  if (last.parts.some((p) => hasTag(p, 'result')) && draft.parts.some((p) => p.entity?.is === 'autoclave'))
    return false;
  return last.parts.some((p) => hasTag(p, 'spore')) && draft.parts.some((p) => hasTag(p, 'result'));
}

/** "Passed - load 305": the load behind its result. */
export function isLoadOfOutcome(last: Draft, draft: Draft): boolean {
  const load = draft.parts.some((p) => p.entity?.is === 'load');
  return load && last.sort === 'outcome' && draft.sort === 'entities' && last.sentence === draft.sentence;
}

/** "Load is failed", "so that's a fail": the verdict on the load just named. */
export function isLoadVerdict(parts: readonly Part[]): boolean {
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
export function isLoadDetail(parts: readonly Part[]): boolean {
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
