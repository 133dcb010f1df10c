import { expect, test } from 'vitest';
import { makeReader } from '../../core/language/reader.ts';
import { parsePractice } from '../../core/practice/parse.ts';
import { hamLines, speaksOurWords } from './ham-lines.ts';

/** Names that are common words: the worst case for telling talk from notes. */
const COMMON = `
practice: Common words
timezone: Europe/London
sites:
  - {id: mill, name: Mill, also: [the mill], rooms: [{id: one, name: Room 1}, {id: two, name: Room 2}]}
  - {id: north, name: North, rooms: [{id: one, name: Room 1}]}
scanners:
  - {id: G, name: green, home: mill}
  - {id: B, name: blue, home: north}
tips: [{ids: 1-24, home: mill}]
people: [{name: May, id: "@may:example.org", part: lead}, {name: Will, id: "@will:example.org"}]
`;

function commonPractice() {
  const parsed = parsePractice(COMMON);
  if ('mistakes' in parsed) throw new Error(JSON.stringify(parsed.mistakes));
  return parsed.practice;
}

/** Lines that were read as facts, for the report. */
function factsIn(lines: readonly string[]): readonly string[] {
  const read = makeReader(commonPractice());
  const at = Date.parse('2026-11-23T10:15:00Z');
  return lines.filter((line) => read(line, { at }).reading.facts.length > 0);
}

// SpamAssassin ham, see ham-lines.ts: some 95,000 lines, of which over a thousand use words of ours.
test('ordinary English: at most one fact in some 95,000 lines, with a practice whose names are common words', () => {
  const lines = hamLines();
  expect(lines.length).toBeGreaterThan(90_000);
  const ours = lines.filter(speaksOurWords);
  expect(ours.length).toBeGreaterThan(600);
  expect(factsIn(lines).length, factsIn(lines).join('\n')).toBeLessThanOrEqual(1);
}, 120_000);
