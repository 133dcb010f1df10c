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
 * How near a slip is to a word: 5 letters changed about, 4 one left out or doubled, 3 a neighbouring key or the first
 * letter left out, 2 another letter wrong, 0 more than one slip away.
 */
export function closeness(typed: string, word: string): number {
  const gap = typed.length - word.length;
  if (gap < -1 || gap > 1) return 0;
  const from = sameHead(typed, word);
  const end = sameTail(typed, word, from);
  const extra = typed.length - from - end;
  const lacking = word.length - from - end;
  if (gap === -1) return extra === 0 && lacking === 1 ? (from === 0 ? 3 : 4) : 0;
  if (gap === 1) return extra === 1 && lacking === 0 ? inserted(typed, from) : 0;
  if (extra === 2 && typed[from] === word[from + 1] && typed[from + 1] === word[from]) return 5;
  return extra === 1 ? replaced(typed, word, from) : 0;
}

function sameHead(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return at;
}

function sameTail(a: string, b: string, from: number): number {
  const most = Math.min(a.length, b.length) - from;
  let count = 0;
  while (count < most && a[a.length - 1 - count] === b[b.length - 1 - count]) count++;
  return count;
}

/** A letter too many: likelier where it is its neighbour's twin. */
function inserted(typed: string, at: number): number {
  return typed[at] === typed[at - 1] || typed[at] === typed[at + 1] ? 4 : 3;
}

/** A wrong letter: likelier from a neighbouring key; a short word with another first letter is another word. */
function replaced(typed: string, word: string, at: number): number {
  if (NEIGHBOURS.get(word[at] ?? '')?.includes(typed[at] ?? '?') === true) return 3;
  return at === 0 && word.length < 6 ? 0 : 2;
}
