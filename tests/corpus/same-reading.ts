import type { Reading } from '../../core/reading/reading.ts';

/** Whether `got` is what the corpus expects: exact but for `reason`, `choices` and `of` (FORMAT.md). */
export function matches(expected: Reading, got: Reading): boolean {
  return loosely(expected, got);
}

function loosely(gold: unknown, got: unknown): boolean {
  if (Array.isArray(gold)) {
    return Array.isArray(got) && gold.length === got.length && gold.every((g, i) => loosely(g, got[i]));
  }
  if (!isRecord(gold) || !isRecord(got)) return gold === got;
  const free = 'about' in gold ? ['choices', 'of'].filter((slot) => !(slot in gold)) : [];
  const slots = new Set([...Object.keys(gold), ...Object.keys(got)]);
  return [...slots].every((slot) => {
    if (free.includes(slot)) return true;
    if (slot === 'reason') return sameWords(gold.reason, got.reason);
    return loosely(gold[slot], got[slot]);
  });
}

function sameWords(gold: unknown, got: unknown): boolean {
  if (typeof gold !== 'string' || typeof got !== 'string') return gold === got;
  const [a, b] = [folded(gold), folded(got)];
  return a !== '' && b !== '' && (a.includes(b) || b.includes(a));
}

function folded(text: string): string {
  return text
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
