import { type Draft, saidIn } from './clauses.ts';
import { hasSort, hasTag, type Part } from './part.ts';

/** Tests of an autoclave, by the tags of their words. */
export const TESTS = ['spore', 'penetration', 'control', 'leak'];

/** "Spore test, Dorothy, run Friday: no growth": how many drafts tell of one test, the test first; 0 where none do. */
export function testLine(drafts: readonly Draft[], from: number): number {
  const first = drafts[from];
  const head = saidIn(first);
  if (first === undefined || first.question || !TESTS.some((tag) => head.some((p) => hasTag(p, tag))))
    return 0;
  if (
    head.some((p) => p.entity !== undefined && p.entity.is !== 'autoclave' && p.entity.is !== 'time') ||
    hasResult(head)
  )
    return 0;
  let to = from + 1;
  let autoclaves = head.filter((p) => p.entity?.is === 'autoclave').length;
  while (to < drafts.length) {
    const draft = drafts[to];
    const own = saidIn(draft);
    if (
      draft?.sentence !== first.sentence ||
      !/^[-/,:]?$|^--$/.test(draft.joint) ||
      own.length > 5 ||
      !own.every(ofTest)
    )
      break;
    autoclaves += own.filter((p) => p.entity?.is === 'autoclave').length;
    if (autoclaves > 1) return 0;
    to++;
    if (hasResult(own)) return to - from >= 3 ? to - from : 0;
  }
  return 0;
}

function hasResult(parts: readonly Part[]): boolean {
  return parts.some(
    (p) => p.entity === undefined && (hasTag(p, 'result') || hasTag(p, 'pass') || hasTag(p, 'fail')),
  );
}

/** What a test may be told with: which autoclave, when it was run, how it came out. */
function ofTest(part: Part): boolean {
  if (part.entity !== undefined) return part.entity.is === 'autoclave' || part.entity.is === 'time';
  return (
    hasSort(part, 'glue') ||
    ['run', 'result', 'pass', 'fail', 'do', 'be', 'finish'].some((tag) => hasTag(part, tag))
  );
}
