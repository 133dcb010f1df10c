import { parsePractice } from '../../core/practice/parse.ts';
import type { Practice } from '../../core/practice/practice.ts';

/** A small practice file without mistakes; the tests change a line of it. */
export const BASE = `practice: Ferngate Dental
timezone: Europe/London
sites:
  - id: quay
    name: Quay Street
    also: [main, quay]
    rooms:
      - {id: s1, name: Surgery 1, also: [room 1]}
      - {id: steri, name: Steri room}
    hours: {mon: 08:30-17:30, wed: [08:30-12:30, 13:30-17:30]}
    closed: [2026-12-25]
  - id: north
    name: North Clinic
    rooms: [{id: s1, name: Surgery 1}]
    hours: {mon: 09:00-17:00}
scanners:
  - {id: A, name: blue scanner, also: [blue], home: quay}
  - {id: B, name: green scanner, also: [green], home: north}
autoclaves:
  - {id: big, name: big autoclave, site: quay, cycles: [{celsius: 134, minutes: 3.5}]}
tips:
  - {ids: 1-12, home: quay, cycles: 100, cyclesSoFar: 0}
  - {ids: [N1, N2], home: north}
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
  - {name: Tom}
chat:
  - {room: "!quay:example.org", sites: [quay]}
  - {room: "!north:example.org", sites: [north]}
dates: day-first
rules: {loadTable: uk}
`;

/** The base file with one text in it replaced. Throws where it is not in the file, so that no test changes nothing. */
export function baseWith(...changes: readonly (readonly [string, string])[]): string {
  let text = BASE;
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`not in the base file: ${from}`);
    text = text.replace(from, () => to);
  }
  return text;
}

/** The practice in a text. Throws with the mistakes where there are any. */
export function practiceIn(text: string): Practice {
  const parsed = parsePractice(text);
  if ('practice' in parsed) return parsed.practice;
  throw new Error(parsed.mistakes.map(({ line, wrong }) => `${line}: ${wrong}`).join('\n'));
}
