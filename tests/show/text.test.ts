import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toText } from '../../bot/show/text.ts';
import { lines, type Message, struck } from '../../core/answers/message.ts';
import { anyMessage } from './any-message.ts';

describe('a message as plain text', () => {
  it('points with dots, steps with numbers, what no longer holds between tildes', () => {
    const message: Message = [
      { line: [{ strong: '2 due' }, ':'] },
      { points: [['wipe green'], [{ struck: 'cover blue' }]] },
      { steps: [['yes'], ['no']] },
    ];
    expect(toText(message)).toBe('2 due:\n• wipe green\n• ~cover blue~\n1. yes\n2. no');
  });

  it('struck through as a whole', () => {
    expect(toText(struck([{ line: ['a', { strong: 'b' }] }, { points: [['c']] }, { steps: [['d']] }]))).toBe(
      '~ab~\n• ~c~\n1. ~d~',
    );
  });

  it('line breaks and marks that turn the direction do not tear a line apart', () => {
    expect(toText(lines('held (cracked\r\nmirror)', 'tip \u202E4\u202C', 'a\u0000b'))).toBe(
      'held (cracked mirror)\ntip  4 \na b',
    );
  });

  it('half a character is shown as the sign for it', () => {
    expect(toText(lines('tip \uD83D'))).toBe('tip \uFFFD');
  });

  it('as many lines as there are to read, each with all its words', () => {
    fc.assert(
      fc.property(anyMessage, (message) => {
        const wanted = message.reduce((count, block) => {
          if ('line' in block) return count + (block.line.length === 0 ? 0 : 1);
          return count + ('points' in block ? block.points.length : block.steps.length);
        }, 0);
        const text = toText(message);
        expect(wanted === 0 ? 0 : text.split('\n').length).toBe(wanted);
        expect(text).not.toMatch(/[\u202A-\u202E\u2066-\u2069\r]/);
      }),
    );
  });
});
