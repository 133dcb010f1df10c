import { toText } from '../../../bot/show/text.ts';
import type { Finding } from '../../../core/record/finding.ts';
import { loadSpeak } from '../../../core/rules/loads/speak.ts';
import type { View } from '../../../core/rules/matter.ts';
import type { Speech } from '../../../core/rules/speech.ts';
import { tipSpeak } from '../../../core/rules/tips/speak.ts';
import { Given, type Told } from '../given.ts';

/** An invented practice of two sites, with two autoclaves at one of them. Tom is staff, Dan the deputy. */
export const FERNGATE = `practice: Ferngate Dental
timezone: Europe/London
sites:
  - id: quay
    name: Quay Street
    rooms: [{id: s1, name: Surgery 1}, {id: s2, name: Surgery 2}]
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: 08:30-17:30, thu: 08:30-17:30, fri: 08:30-16:00}
  - id: north
    name: North Clinic
    rooms: [{id: n1, name: Surgery 1}]
    hours: {mon: 09:00-17:00, tue: 09:00-17:00, wed: 09:00-17:00}
scanners:
  - {id: A, name: blue scanner, home: quay}
  - {id: B, name: red scanner, home: north}
autoclaves:
  - {id: big, name: big autoclave, site: quay, cycles: [{celsius: 134, minutes: 3.5}]}
  - {id: small, name: small autoclave, site: quay}
tips:
  - {ids: 1-8, home: quay, cycles: 100}
  - {ids: 9-10, home: north, cycles: 100}
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
  - {name: Dan, id: "@dan:example.org", part: deputy}
  - {name: Mo, id: "@mo:example.org", part: manager}
  - {name: Tom, id: "@tom:example.org"}
chat:
  - {room: "!quay:example.org", sites: [quay]}
  - {room: "!north:example.org", sites: [north]}
rules: {loadTable: uk}
`;

export const TOM = { from: '@tom:example.org' } as const;

/** Ferngate with its tips counted on Friday 20 November 2026: all sterile. */
export function counted(text = FERNGATE): Given {
  const given = new Given(text);
  given.note('2026-11-20 09:00', { kind: 'sterile', tips: ['1', '2', '3', '4', '5', '6', '7', '8'] });
  given.note('2026-11-20 09:00', { kind: 'sterile', tips: ['9', '10'] }, { room: '!north:example.org' });
  return given;
}

/** What is said at once of a note typed at that local time: "about @whom", then its words. */
export function heard(
  given: Given,
  local: string,
  told: Told | readonly Told[],
  parts: Parameters<Given['note']>[2] = {},
): readonly string[] {
  return speechesOf(given, local, told, parts).map(inWords);
}

/** The speeches themselves. */
export function speechesOf(
  given: Given,
  local: string,
  told: Told | readonly Told[],
  parts: Parameters<Given['note']>[2] = {},
): readonly Speech[] {
  const turn = given.note(local, told, parts);
  const view = given.view(parts.noted ?? local);
  return view.state.history.findings
    .recent()
    .filter(({ mark }) => mark.entry.startsWith(`${turn}.`))
    .flatMap((finding) => speechesFor(finding, view));
}

function speechesFor(finding: Finding, view: View): readonly Speech[] {
  for (const [kind, speak] of Object.entries({ ...tipSpeak, ...loadSpeak })) {
    // Each table entry takes the finding of its own kind.
    if (kind === finding.kind)
      return (speak as (finding: Finding, view: View) => readonly Speech[])(finding, view);
  }
  return [];
}

/** "warning @rosa: words, a line each". */
export function inWords({ about, mentions, message }: Speech): string {
  const whom = mentions.map((id) => ` ${id.replace(/:.*/, '')}`).join('');
  return `${about}${whom}\n${toText(message)}`;
}
