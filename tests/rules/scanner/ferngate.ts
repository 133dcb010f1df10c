import type { Message } from '../../../core/words/message.ts';
import { wordsOf } from '../../../core/words/message.ts';
import { Given } from '../given.ts';

/** An invented practice of three sites in three zones, one half an hour off; Mondays shut at the third. */
export const FERNGATE = `practice: Ferngate Dental
timezone: Europe/London
sites:
  - id: quay
    name: Quay Street
    rooms: [{id: s1, name: Surgery 1}, {id: s2, name: Surgery 2}]
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: [08:30-12:30, 13:30-17:30], thu: 08:30-17:30, fri: 08:30-16:00}
    closed: [2026-12-25, 2026-12-28]
  - id: north
    name: North Clinic
    rooms: [{id: n1, name: Surgery 1}]
    hours: {mon: 09:00-17:00, tue: 09:00-17:00, wed: 09:00-17:00, thu: 09:00-17:00, fri: 09:00-17:00}
  - id: hill
    name: Hill House
    timezone: Asia/Kolkata
    rooms: [{id: h1, name: Room 1}]
    hours: {tue: 09:00-17:00, wed: 09:00-17:00, thu: 09:00-17:00, fri: 09:00-17:00}
scanners:
  - id: A
    name: blue scanner
    home: quay
    notes: {set-up: [The base goes on the left of the bracket.], pack: [Spare lens cap.], calibrate: [Twist until it clicks.]}
  - {id: B, name: red scanner, home: quay}
  - {id: C, name: green scanner, home: hill}
tips:
  - {ids: 1-12, home: quay}
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
  - {name: Tom, id: "@tom:example.org"}
chat:
  - {room: "!quay:example.org", sites: [quay]}
  - {room: "!north:example.org", sites: [north]}
  - {room: "!hill:example.org", sites: [hill]}
  - {room: "!all:example.org", sites: [quay, north, hill]}
`;

/** Ferngate with every scanner calibrated in the week before Monday 23 November 2026. */
export function calibrated(zone = 'Europe/London'): Given {
  const given = new Given(FERNGATE, zone);
  given.note('2026-11-18 10:30', passed('A', 'B', 'C'));
  return given;
}

export function passed(...scanners: readonly string[]) {
  return scanners.map((scanner) => ({ kind: 'calibrated', scanner, outcome: 'passed' }) as const);
}

/** The words of a message, a line each; steps are numbered. */
export function words(message: Message): readonly string[] {
  return message.flatMap((block) => {
    if ('line' in block) return [block.line.map(wordsOf).join('')];
    if ('points' in block) return block.points.map((line) => `• ${line.map(wordsOf).join('')}`);
    return block.steps.map((line, index) => `${index + 1}. ${line.map(wordsOf).join('')}`);
  });
}
