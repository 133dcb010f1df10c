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

const DIGITS = ['oh', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const ORDINALS = ['', 'first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];
const ENDINGS = ['th', 'st', 'nd', 'rd'];
const ROOMS = /^(room|surgery|op|bay|operatory)$/;

/** "Room one oh two" as 102, "the twenty fifth" as 25th. */
export function withSpokenNumbers(tokens: readonly Token[]): readonly Token[] {
  if (!tokens.some(({ text }) => text === 'oh' || text === 'twenty' || text === 'thirty')) return tokens;
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i++) {
    const found = ordinalAt(tokens, i) ?? roomNumberAt(tokens, i);
    const token = tokens[i];
    if (found !== null) {
      out.push(...found.said);
      i = found.to - 1;
    } else if (token !== undefined) out.push(token);
  }
  return out;
}

interface Spoken {
  readonly said: readonly Token[];
  readonly to: number;
}

function ordinalAt(tokens: readonly Token[], i: number): Spoken | null {
  const [token, next] = [tokens[i], tokens[i + 1]];
  if (token === undefined || next === undefined) return null;
  const tens = token.text === 'twenty' ? 20 : token.text === 'thirty' ? 30 : 0;
  const unit = tens > 0 ? ORDINALS.indexOf(next.text) : -1;
  if (unit < 1) return null;
  const figure: Token = { ...token, text: String(tens + unit), kind: 'number' };
  return { said: [figure, { ...next, text: ENDINGS[unit] ?? 'th', spaced: false }], to: i + 2 };
}

function roomNumberAt(tokens: readonly Token[], i: number): Spoken | null {
  const [token, next, last] = [tokens[i], tokens[i + 1], tokens[i + 2]];
  if (token === undefined || next?.text !== 'oh' || last === undefined) return null;
  if (!ROOMS.test(tokens[i - 1]?.text ?? '')) return null;
  const [first, third] = [DIGITS.indexOf(token.text), DIGITS.indexOf(last.text)];
  if (first < 1 || third < 0) return null;
  return { said: [{ ...token, text: `${first}0${third}`, end: last.end, kind: 'number' }], to: i + 3 };
}
