import type { Part } from '../part.ts';

/** Words that speak of something else, or of nothing that is known. */
export function strangeIn(parts: readonly Part[]): number {
  let count = 0;
  for (const part of parts) {
    if (part.unknown) count += 1;
    else if (part.entity === undefined && isOfAnother(part)) count += 1.5;
    else if (part.entity?.is === 'number') count += 0.5;
  }
  return count;
}

/** A thing of somebody else's, but for a word that is a small one too ("till"). */
function isOfAnother({ senses }: Part): boolean {
  return (
    senses.some((s) => s.sort === 'other') && !senses.some((s) => s.sort === 'glue' || s.sort === 'mood')
  );
}
