import type { Token } from './token.ts';

/** "…on scanner one period tip four is off period": a dictating machine that wrote out the marks. */
export function withSpokenMarks(tokens: readonly Token[]): readonly Token[] {
  const said = tokens.filter((token) => token.text === 'period').length;
  const ends = tokens[tokens.length - 1]?.text === 'period' && tokens.length > 2;
  if (said < 2 && !ends) return tokens;
  return tokens.map((token, i) =>
    token.text === 'period' && !OWNED.test(tokens[i - 1]?.text ?? '')
      ? { ...token, text: '.', kind: 'mark' as const }
      : token,
  );
}

/** "The period", "this period" is a stretch of time. */
const OWNED = /^(the|a|this|that|my|her|per|same|last|next|up|notice|every|each)$/;
