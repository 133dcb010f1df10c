import { type Draft, saidIn } from './clauses.ts';
import type { Interpretation } from './interpret.ts';
import { hasSort, hasTag, meantWord, type Part } from './part.ts';

/**
 * "Trent passed calibration, Wagtail did not", "5 and 8 fine under the magnifier, 6 still soiled", "helix: Agnes passed,
 * Dorothy failed": what the same look, test or calibration showed of another, as parts that can be read by themselves; `null`
 * where the draft names no other, or says nothing of how it came out.
 */
export function contrasted(draft: Draft, previous: Interpretation | null): readonly Part[] | null {
  const head = previous === null ? undefined : HEADS[previous.frame.name];
  if (previous === null || head === undefined || draft.joint === '') return null;
  const parts = saidIn(draft);
  const things = parts.filter((p) => p.entity !== undefined && THINGS.has(p.entity.is));
  if (things.length === 0 || parts.length > 8 || !parts.every(mayStand)) return null;
  // "It was Heron I calibrated, not Otter" says nothing of Otter.
  if (parts.findIndex((p) => DENIES.test(p.text)) === 0 || parts[0]?.text === 'but') return null;
  if (things.some((p) => previous.clause.parts.includes(p)) || !sameSort(things, previous)) return null;
  const outcome = outcomeIn(parts, previous);
  if (outcome === null) return null;
  const told = previous.clause.parts.find(
    (p) => p.entity === undefined && head.tags.some((tag) => hasTag(p, tag)),
  );
  const times = parts.filter((p) => p.entity?.is === 'time');
  const looked = told ?? head.meant;
  return [...(looked === undefined ? [] : [looked]), ...things, outcome, ...times];
}

interface Head {
  /** Tags of the word that tells what was looked at or tested. */
  readonly tags: readonly string[];
  /** The word put there where none was said; a load is one by its name. */
  readonly meant?: Part;
}

const HEADS: Readonly<Record<string, Head>> = {
  inspected: {
    tags: ['magnifier', 'inspection'],
    meant: meantWord('mag', { sort: 'noun', tag: 'magnifier', form: 'b' }),
  },
  calibrated: {
    tags: ['calibrate'],
    meant: meantWord('calibration', { sort: 'verb', tag: 'calibrate', form: 'n' }),
  },
  'autoclave-test': {
    tags: ['penetration', 'control', 'leak'],
    meant: meantWord('helix', { sort: 'noun', tag: 'penetration', form: 'b' }),
  },
  'spore-test': { tags: ['spore'], meant: meantWord('spore', { sort: 'noun', tag: 'spore', form: 'b' }) },
  'load-finished': { tags: [] },
};

const THINGS: ReadonlySet<string> = new Set(['tips', 'scanner', 'autoclave', 'load']);
const PASSED = meantWord('passed', { sort: 'verb', tag: 'pass', form: 'd' });
const FAILED = meantWord('failed', { sort: 'verb', tag: 'fail', form: 'd' });

/** Nothing else is told: the things, when, how they came out, and small words. */
function mayStand(part: Part): boolean {
  if (part.entity !== undefined) return THINGS.has(part.entity.is) || part.entity.is === 'time';
  return (
    hasSort(part, 'glue') ||
    hasTag(part, 'neg') ||
    part.text === 'soiled' ||
    ['result', 'pass', 'fail', 'debris', 'clean', 'be', 'have', 'do', 'use'].some((tag) => hasTag(part, tag))
  );
}

/** Tips beside tips, a scanner beside a scanner, an autoclave or a load beside theirs. */
function sameSort(things: readonly Part[], previous: Interpretation): boolean {
  const before = new Set(previous.clause.parts.map((p) => p.entity?.is).filter((is) => is !== undefined));
  return things.every((p) => p.entity !== undefined && before.has(p.entity.is));
}

/** What is said of it: its own result, or with a bare denial the other of what the first had. */
function outcomeIn(parts: readonly Part[], previous: Interpretation): Part | null {
  const denied = parts.some((p) => p.entity === undefined && DENIES.test(p.text));
  const words = parts.filter((p) => p.entity === undefined);
  if (
    words.some(
      (p) => hasTag(p, 'fail') || hasTag(p, 'debris') || /^(soiled|dirty|mucky|unclean|wet)$/.test(p.text),
    )
  )
    return denied ? null : FAILED;
  if (words.some((p) => /^(positive|growth|pos|\+ve)$/.test(p.text))) return denied ? null : FAILED;
  if (words.some((p) => hasTag(p, 'pass') || /^(clean|negative|neg|clear|no growth|-ve)$/.test(p.text)))
    return denied ? FAILED : PASSED;
  if (!denied || words.some((p) => YET.test(p.text))) return null;
  // "Severn's calibrated, Trent isn't": not done yet, where nothing was said of how it went.
  const judged = previous.clause.parts.some(
    (p) =>
      p.entity === undefined && ['pass', 'fail', 'debris', 'clean', 'result'].some((tag) => hasTag(p, tag)),
  );
  if (!judged) return null;
  const first = previous.result.made[0]?.entry.outcome;
  return first === 'passed' ? FAILED : first === 'failed' ? PASSED : null;
}

const DENIES =
  /^(not|n't|did not|didn't|didnt|hasn't|hasnt|haven't|havent|wasn't|wasnt|weren't|isn't|isnt|aren't)$/;

/** "Wagtail not yet": nothing was done to it so far. */
const YET = /^(yet|not yet|still|done|not done|to|to do|still to)$/;

/** "5 wasn't used, 6 was": what was denied of one is told of another. */
export function affirmed(draft: Draft, previous: Interpretation | null): readonly Part[] | null {
  const verb = previous?.clause.parts[previous.result.verb];
  if (previous === null || verb === undefined || verb.entity !== undefined || !TOLD.has(previous.frame.name))
    return null;
  const parts = saidIn(draft);
  const things = parts.filter((p) => p.entity !== undefined && THINGS.has(p.entity.is));
  const last = parts.at(-1);
  const denied = previous.clause.parts
    .slice(0, previous.result.verb)
    .some((p) => p.entity === undefined && hasTag(p, 'neg'));
  const plain = parts.every(
    (p) => things.includes(p) || /^(was|were|has|have|is|are|did|'s|only|tip|tips|but)$/.test(p.text),
  );
  if (
    !denied ||
    !plain ||
    things.length === 0 ||
    last?.entity !== undefined ||
    !/^(was|were|has|have|is|are|did)$/.test(last?.text ?? '')
  )
    return null;
  return sameSort(things, previous) ? [...things, verb] : null;
}

const TOLD: ReadonlySet<string> = new Set([
  'used',
  'washed',
  'bagged',
  'sent',
  'wiped',
  'calibrated',
  'covered',
  'removed',
]);
