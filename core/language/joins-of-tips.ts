import type { Draft } from './clauses.ts';
import { hasSort, hasTag, meantWord, type Part } from './part.ts';

/** True for a word of looking at tips. */
export function isLook(part: Part): boolean {
  if (hasTag(part, 'magnifier') || hasTag(part, 'inspection')) return true;
  return hasTag(part, 'check') && part.entity === undefined;
}

/** "All used tips are washed, only tip 7 not": told of what is left out in another order. */
export function asSpared(draft: Draft): Draft {
  const words = draft.parts.filter((p) => !p.mark);
  const last = words.at(-1);
  const turned =
    words.length >= 3 &&
    /^(only|just|but|but only|but just)$/.test(words[0]?.text ?? '') &&
    last?.entity === undefined &&
    /^(not|not yet|isn't|aren't|wasn't|weren't|hasn't|haven't)$/.test(last?.text ?? '') &&
    words
      .slice(1, -1)
      .every(
        (p) =>
          p.entity?.is === 'tips' ||
          hasTag(p, 'tip') ||
          /^(and|&|,|is|are|was|were|has|have|number|the)$/.test(p.text),
      );
  return turned
    ? { ...draft, parts: [EXCEPT, ...words.slice(1, -1).filter((p) => p.entity?.is === 'tips')] }
    : draft;
}

const EXCEPT = meantWord('except', { sort: 'glue', tag: 'glue', form: '' });

/** "All used ones - in the autoclave - not 5": those left out of a set, set off by a mark. */
export function sparesOf(list: readonly Draft[], draft: Draft): boolean {
  const speaking = list.findLast((one) => one.parts.some((p) => p.entity?.is === 'tips'));
  const words = draft.parts.filter((p) => !p.mark);
  return (
    speaking !== undefined &&
    (speaking.sentence === draft.sentence ||
      /^(except|bar|apart|excluding|barring|except for)$/.test(words[0]?.text ?? '')) &&
    speaking.parts.some(isOpenSet) &&
    /^(except|bar|apart|excluding|minus|but|barring|not|other than|except for|save|besides|aside|apart from)$/.test(
      words[0]?.text ?? '',
    ) &&
    words.some((p) => p.entity?.is === 'tips' && p.entity.which === undefined) &&
    words.every(
      (p, i) =>
        i === 0 ||
        p.entity?.is === 'tips' ||
        (p.entity === undefined && (hasSort(p, 'glue') || hasTag(p, 'neg') || hasTag(p, 'tip'))),
    )
  );
}

/** "All the used tips", with nobody left out yet. */
export function isOpenSet(part: Part): boolean {
  return part.entity?.is === 'tips' && part.entity.which !== undefined && part.entity.except.length === 0;
}

/** "Took the tip off, it was 6": which one, told after. */
export function namesTheOne(last: Draft, draft: Draft): boolean {
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

/** "It's not clean", "both spotless", "bit of gunk on it still": what an inspection showed. */
export function isVerdict(parts: readonly Part[]): boolean {
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
