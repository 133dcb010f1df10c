/** The known word that a mistyped one is nearest to, or `null` when none is near enough to be meant. */
export function nearest(word: string, known: readonly string[]): string | null {
  const wanted = word.toLowerCase();
  let best: string | null = null;
  // A third of the letters may be wrong, one at least: "lime" is no slip of "name".
  let bestDistance = Math.max(1, Math.floor(wanted.length / 3)) + 1;
  for (const candidate of known) {
    const distance = editDistance(wanted, candidate.toLowerCase(), bestDistance);
    if (distance < bestDistance) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best ?? beginningLike(wanted, known);
}

/** The one known word that begins with what was written (four letters at least): `settleTau` is `settleTauMinutes`. */
function beginningLike(wanted: string, known: readonly string[]): string | null {
  const longer =
    wanted.length < 4 ? [] : known.filter((candidate) => candidate.toLowerCase().startsWith(wanted));
  return longer.length === 1 ? (longer[0] ?? null) : null;
}

/** Insertions, deletions, substitutions and swaps of neighbours; `limit` when it is that or more. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1];
      let cost = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) cost = Math.min(cost, (beforeLast[column - 2] ?? 0) + 1);
      current.push(cost);
    }
    beforeLast = last;
    last = current;
  }
  return Math.min(last[b.length] ?? limit, limit);
}
