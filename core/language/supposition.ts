import { hasSort, hasTag, type Part } from './part.ts';

/** Where "if", "in case", "until" begins; −1 where nothing is supposed. */
export function supposition(parts: readonly Part[]): number {
  const at = parts.findIndex(
    (p) => p.entity === undefined && hasTag(p, 'suppose') && !p.senses.some((s) => s.sort === 'verb'),
  );
  if (at < 0) return onceDone(parts);
  const before = parts.slice(0, at);
  return before.every((p) => p.mark || (p.entity === undefined && (hasSort(p, 'glue') || hasSort(p, 'mood'))))
    ? 0
    : at;
}

/** "Once load 80 passes": what is still to come. */
function onceDone(parts: readonly Part[]): number {
  const at = parts.findIndex((p) => !p.mark);
  const ahead =
    parts[at]?.entity === undefined && parts[at]?.text === 'once' && parts[at + 1]?.entity !== undefined;
  return ahead && parts.some((p) => p.senses.some((s) => s.form === 's')) ? 0 : -1;
}
