const KEYS = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
const NEIGHBOURS = new Map<string, string>();
for (const [row, keys] of KEYS.entries()) {
  for (const [i, key] of [...keys].entries()) {
    const near = [keys[i - 1], keys[i + 1]];
    for (const other of [KEYS[row - 1], KEYS[row + 1]]) near.push(other?.[i - 1], other?.[i], other?.[i + 1]);
    NEIGHBOURS.set(key, near.filter((k) => k !== undefined).join(''));
  }
}

/**
 * How near a slip is to a word: 4 letters changed about or one left out or doubled, 3 a neighbouring key, 2 another
 * letter too many or wrong, 0 more than one slip away.
 */
export function closeness(typed: string, word: string): number {
  const gap = typed.length - word.length;
  let from = 0;
  while (from < typed.length && typed[from] === word[from]) from++;
  let end = 0;
  while (
    end < Math.min(typed.length, word.length) - from &&
    typed[typed.length - 1 - end] === word[word.length - 1 - end]
  )
    end++;
  const [a, b] = [typed.length - from - end, word.length - from - end];
  if (gap === 0 && a === 2 && typed[from] === word[from + 1] && typed[from + 1] === word[from]) return 5;
  if (gap === -1 && a === 0 && b === 1) return from === 0 ? 3 : 4;
  if (gap === 1 && a === 1 && b === 0)
    return typed[from] === typed[from - 1] || typed[from] === typed[from + 1] ? 4 : 3;
  if (gap === 0 && a === 1 && b === 1)
    return NEIGHBOURS.get(word[from] ?? '')?.includes(typed[from] ?? '?') === true
      ? 3
      : from === 0 && word.length < 6
        ? 0
        : 2;
  return 0;
}
