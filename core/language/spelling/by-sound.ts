import type { Token } from '../token.ts';
import { closeness } from './closeness.ts';
import type { Mended } from './mended.ts';

/** What was typed or taken down for its sound: "2day", "ok 2 use", "tip 4 is off full stop". */
export function bySound(tokens: readonly Token[], at: number, token: Token): Mended | null {
  return heard(tokens, at, token) ?? figured(token, tokens[at - 1], tokens[at + 1]);
}

/** A mark that was dictated, in the place of its words. */
function heard(tokens: readonly Token[], i: number, token: Token): Mended | null {
  const spoken = spokenMark(token.text, tokens[i + 1]?.text);
  if (spoken === null) return null;
  const end = tokens[i + spoken.taken - 1]?.end ?? token.end;
  return { tokens: [{ ...token, text: spoken.mark, kind: 'mark', end }], taken: spoken.taken };
}

/** Punctuation that a phone wrote out when it was dictated. */
function spokenMark(text: string, next: string | undefined): { mark: string; taken: number } | null {
  const mark = next === 'mark' || (next !== undefined && text.length > 7 && closeness(next, 'mark') > 2);
  if (text === 'question' && mark) return { mark: '?', taken: 2 };
  if (text === 'full' && next === 'stop') return { mark: '.', taken: 2 };
  if (text === 'exclamation' && (mark || next === 'point')) return { mark: '!', taken: 2 };
  if (text === 'new' && (next === 'line' || next === 'paragraph')) return { mark: '\n', taken: 2 };
  if (next === 'mark' && text.length > 6 && closeness(text, 'question') > 2) return { mark: '?', taken: 2 };
  return text === 'comma' || (text.length > 3 && text.startsWith('com') && closeness(text, 'comma') > 3)
    ? { mark: ',', taken: 1 }
    : null;
}

/** A figure typed for its sound, as the word. */
function figured(token: Token, before: Token | undefined, next: Token | undefined): Mended | null {
  const figure = figureWord(token, before, next);
  if (figure === null) return null;
  const end = figure.taken === 2 ? (next?.end ?? token.end) : token.end;
  return { tokens: [{ ...token, text: figure.text, kind: 'word', end }], taken: figure.taken };
}

const BEFORE_TO = new Set(
  'ok okay fine good safe ready going gonna need want able moved gone went taken took sent back over way off got ready alright happy'.split(
    ' ',
  ),
);

/** "Left 4 the wharf", "thanks 4 that". */
const BEFORE_FOR = new Set(
  'left leaving off gone heading headed bound thanks thx ta cheers ready good ok sorry waiting looking asking'.split(
    ' ',
  ),
);
const AFTER_FOR = /^(the|that|me|us|my|our|this|u|you|now|a|letting|everything)$/;

function figureWord(
  token: Token,
  before: Token | undefined,
  next: Token | undefined,
): { text: string; taken: number } | null {
  if (
    token.text === '4' &&
    before?.kind === 'word' &&
    BEFORE_FOR.has(before.text) &&
    next?.kind === 'word' &&
    next.spaced
  )
    return AFTER_FOR.test(next.text) ? { text: 'for', taken: 1 } : null;
  if (token.text !== '2' || token.kind !== 'number') return null;
  if (next?.kind === 'word' && !next.spaced) {
    const whole = { day: 'today', moro: 'tomorrow', morrow: 'tomorrow', moz: 'tomorrow', nite: 'tonight' }[
      next.text
    ];
    return whole === undefined ? null : { text: whole, taken: 2 };
  }
  if (before?.kind !== 'word' || next?.kind !== 'word' || !BEFORE_TO.has(before.text)) return null;
  return /^(min|mins|minutes|hours?|scans?|tips?|and|more|of|days?|pm|am|to|thru|through)$/.test(next.text)
    ? null
    : { text: 'to', taken: 1 };
}
