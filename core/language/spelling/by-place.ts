import type { Token } from '../token.ts';
import { PLACE_RULES, type PlaceRule } from './by-place-rules.ts';
import { closeness } from './closeness.ts';

/** What was typed → the rules that know it. */
const KNOWN = new Map<string, PlaceRule[]>();
for (const rule of PLACE_RULES) {
  for (const typed of rule.typed?.split(' ') ?? []) KNOWN.set(typed, [...(KNOWN.get(typed) ?? []), rule]);
}
const BY_CLOSENESS = PLACE_RULES.filter((rule) => rule.near !== undefined);

/** The word meant by what stands at `at` between its neighbours, `null` where the place tells nothing. `isWord`: what was typed is one. */
export function byPlace(tokens: readonly Token[], at: number, isWord: boolean): string | null {
  const text = tokens[at]?.text ?? '';
  for (const rule of KNOWN.get(text) ?? []) if (stands(rule, tokens, at)) return rule.word;
  if (text.length < 2 || text.length > 6 || isWord) return null;
  for (const rule of BY_CLOSENESS) {
    if (closeness(text, rule.word) >= (rule.near ?? 5) && stands(rule, tokens, at)) return rule.word;
  }
  return null;
}

function stands({ before, after, further }: PlaceRule, tokens: readonly Token[], at: number): boolean {
  return (
    (before === undefined || before.test(beside(tokens[at - 1]))) &&
    (after === undefined || after.test(beside(tokens[at + 1]))) &&
    (further === undefined || further.test(beside(tokens[at + 2])))
  );
}

/** A neighbour as the rules write it. */
function beside(token: Token | undefined): string {
  if (token === undefined || /^[.!?;\n]$/.test(token.text)) return '';
  if (token.kind !== 'number') return token.text;
  return Number(token.text) < 100 ? '#' : '##';
}
