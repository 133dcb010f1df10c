import type { Person } from '../person.ts';

const ZONE = 'Europe/London';

/** Local time of the practice, HH:MM, so many minutes from now. */
export function clock(minutes: number): string {
  const at = new Date(Date.now() + minutes * 60_000);
  return at.toLocaleTimeString('en-GB', { timeZone: ZONE, hour: '2-digit', minute: '2-digit' });
}

/** A practice that opens in a moment, so that its brief falls due while somebody looks. */
export function practiceFor(rooms: readonly [mill: string, north: string]): string {
  const hours = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']
    .map((day) => `${day}: ${clock(2)}-23:58`)
    .join(', ');
  return `practice: Larkfield Dental
timezone: ${ZONE}
sites:
  - {id: mill, name: Mill Lane, also: [mill], hours: {${hours}}, rooms: [{id: s1, name: Surgery 1}, {id: s2, name: Surgery 2}]}
  - {id: north, name: North Clinic, also: [north], hours: {${hours}}, rooms: [{id: s1, name: Surgery 1}]}
scanners:
  - {id: A, name: green scanner, also: [green], home: mill}
  - {id: B, name: blue scanner, also: [blue], home: mill}
  - {id: C, name: white scanner, also: [white], home: north}
tips:
  - {ids: 1-10, home: mill, cycles: 150}
  - {ids: 11-16, home: north, cycles: 150}
people:
  - {name: Priya, id: "@priya:example.org", part: lead}
  - {name: Dan, id: "@dan:example.org"}
chat:
  - {room: "${rooms[0]}", sites: [mill]}
  - {room: "${rooms[1]}", sites: [north]}
rules: {loadTable: uk, briefBeforeMinutes: 1, incidentLeadMinutes: 1}
`;
}

/** What is typed in a chat room of two scanners, one after another; each line is there to be looked at with its answer. */
export function notesOf(first: string, second: string, tip: number): readonly string[] {
  return [
    'help',
    `calibrated ${first} and ${second}, all good`,
    `at ${clock(-40)} tips ${tip} to ${tip + 3} sterile and on the shelf`,
    `load 118 on with tips ${tip + 4}, ${tip + 5}`,
    'load 118 passed, 134 for 3.5 min, indicator changed, dry',
    `scan done on ${first} with tip ${tip} at ${clock(-14)}`,
    `tip ${tip} on ${second}`,
    'wiped down the scanner',
    'how do I calibrate?',
    'show me how to calibrate',
    'next',
    `load 118 failed: where did those tips go?`,
    `what's happened with tip ${tip}?`,
    ...Array.from({ length: 9 }, () => `wiped down ${second}`),
    `what's happened with ${second}?`,
    'which tips are out?',
    "what's due today?",
  ];
}

/** Types them, each once the one before was dealt with. */
export async function typeAll(who: Person, room: string, notes: readonly string[]): Promise<void> {
  for (const text of notes) {
    const note = await who.say(room, text);
    await who.until(
      () => who.repliesTo(note).length + who.reactionsTo(note).length > 0,
      `anything to "${text}"`,
      30_000,
    );
  }
}
