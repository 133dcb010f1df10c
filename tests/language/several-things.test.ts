import { describe, expect, test } from 'vitest';
import { makeReader } from '../../core/language/reader.ts';
import { practiceIn } from '../practice/base-file.ts';
import { FERNGATE } from '../rules/loads/heard.ts';

const read = makeReader(practiceIn(FERNGATE));
const at = Date.parse('2026-11-24T11:00:00Z');

/** What a note says has moved, with where: "scanner:A scanner:B north". */
function moved(text: string): readonly string[] {
  const { facts } = read(text, { at, room: '!quay:example.org' }).reading;
  return facts.map((fact) => (fact.kind === 'moved' ? `${fact.items.join(' ')} ${fact.site}` : fact.kind));
}

describe('several things moved in one go are all moved', () => {
  test.each([
    ['moved blue scanner and red scanner to north clinic', ['scanner:A scanner:B north']],
    ['moved the blue scanner, the red scanner to north clinic', ['scanner:A scanner:B north']],
    ['took red scanner & blue scanner to north clinic', ['scanner:B scanner:A north']],
    ['moved blue scanner and tip 4 to north clinic', ['scanner:A tip:4 north']],
    ['blue scanner and red scanner moved to north clinic', ['scanner:A scanner:B north']],
    [
      'moved blue scanner to surgery 2 and red scanner to north clinic',
      ['scanner:A quay', 'scanner:B north'],
    ],
  ])('%s', (text, expected) => {
    expect(moved(text)).toEqual(expected);
  });
});
