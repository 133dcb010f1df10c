import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toText } from '../../bot/show/text.ts';
import { lines, type Message, struck } from '../../core/words/message.ts';
import { standingMessage } from './any-message.ts';

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

  it.each<[string, Message, string]>([
    [
      'a reminder',
      [{ line: [{ strong: 'Wipe down blue:' }, ' scan ended 09:10.'] }, { points: [['Scanner and base.']] }],
      'Done by Dan, 09:24: wipe down blue',
    ],
    [
      'several reminders in one post',
      [{ points: [['Calibrate green: weekly.'], ['Calibrate blue: weekly.']] }],
      'Done by Dan, 09:24: calibrate green; calibrate blue',
    ],
    [
      'more than three',
      [{ points: [['Send tip 1'], ['Send tip 2'], ['Send tip 3'], ['Send tip 4'], ['Send tip 5']] }],
      'Done by Dan, 09:24: send tip 1; send tip 2; send tip 3; and 2 more',
    ],
    [
      'a warning keeps what it stopped',
      lines('Stop: tip 3 must not be used. Fitted 11:05.', 'Why: used.'),
      'Done by Dan, 09:24: stop: tip 3 must not be used',
    ],
    [
      'a question',
      lines('Did tip 3 reach a patient? Answer yes or no.'),
      'Done by Dan, 09:24: did tip 3 reach a patient?',
    ],
    ['a name keeps its capital', lines('Larkspur is held: cracked.'), 'Done by Dan, 09:24: Larkspur is held'],
    ['nothing left of it', [], 'Done by Dan, 09:24'],
  ])('what no longer holds is one line: %s', (_, post, text) => {
    expect(toText([{ line: [{ strong: 'Done' }, ' by Dan, 09:24'] }, ...struck(post)])).toBe(text);
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
      fc.property(standingMessage, (message) => {
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
