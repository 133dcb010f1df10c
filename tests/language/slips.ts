/** The four single errors of typing: over 80 in 100 misspelt words have just one (Damerau, CACM 1964;7(3):171-176). */
export const OPERATIONS = ['insertion', 'omission', 'substitution', 'transposition'] as const;
export type Operation = (typeof OPERATIONS)[number];

/** Keys beside each key of a QWERTY keyboard (ISO 9995 letter block with the digit row), from memory. */
const ROWS = ['1234567890', 'qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
const BESIDE: ReadonlyMap<string, string> = new Map(
  ROWS.flatMap((row, y) =>
    [...row].map((key, x): [string, string] => {
      const [above, below] = [ROWS[y - 1] ?? '', ROWS[y + 1] ?? ''];
      const near = [row[x - 1], row[x + 1], above[x], above[x + 1], below[x - 1], below[x]];
      return [key, near.filter((other) => other !== undefined).join('')];
    }),
  ),
);

/** Numbers in [0, 1) that are the same for the same seed (mulberry32; Tommy Ettinger's generator, public domain). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** One slip in a word: a neighbour's key too many or instead, a letter left out, or two changed about; never the word itself. */
export function slip(word: string, operation: Operation, chance: () => number): string | null {
  const at = Math.floor(chance() * (word.length - (operation === 'transposition' ? 1 : 0)));
  const key = word[at] ?? '';
  const near = BESIDE.get(key.toLowerCase()) ?? '';
  const other = near[Math.floor(chance() * near.length)] ?? key;
  const [before, after] = [word.slice(0, at), word.slice(at + 1)];
  const made = {
    insertion: before + key + other + after,
    omission: before + after,
    substitution: before + other + after,
    transposition: before + (after[0] ?? '') + key + after.slice(1),
  }[operation];
  return made === word || made === '' ? null : made;
}
