import type { Part } from '../part.ts';

/** Words that speak of something else, or of nothing that is known. */
export function strangeIn(parts: readonly Part[]): number {
  let count = 0;
  for (const part of parts) {
    if (part.unknown) count += 1;
    else if (part.entity === undefined && part.senses.some((s) => s.sort === 'other')) count += 1.5;
    else if (part.entity?.is === 'number') count += 0.5;
  }
  return count;
}
