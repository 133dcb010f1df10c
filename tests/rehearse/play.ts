import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Rehearsal } from '../../bot/commands/rehearse.ts';
import { parseScriptLine } from '../../bot/commands/script-line.ts';

/** What the bot did, as `rehearse` prints it. */
export interface Did {
  readonly at: string;
  readonly does: string;
  readonly room?: string;
  readonly id?: string;
  readonly text?: string;
  readonly about?: string;
  readonly to?: string;
  readonly key?: string;
  readonly mentions?: readonly string[];
  readonly items?: readonly string[];
  readonly replyTo?: string;
  // biome-ignore lint/suspicious/noExplicitAny: the last line's state is read by tests as the contract shows it.
  readonly state?: any;
}

/** A practice of two sites for tests of whole days. */
export const PRACTICE = `
practice: Test practice
timezone: Europe/London
sites:
  - id: quay
    name: Quay Street
    also: [main, quay]
    rooms:
      - {id: s1, name: Surgery 1, also: [room 1]}
      - {id: s2, name: Surgery 2, also: [room 2]}
      - {id: steri, name: Steri room, also: [decon]}
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: 08:30-17:30, thu: 08:30-17:30, fri: 08:30-17:30}
  - id: north
    name: North Clinic
    also: [north]
    rooms: [{id: n1, name: North 1}]
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: 08:30-17:30, thu: 08:30-17:30, fri: 08:30-17:30}
scanners:
  - {id: A, name: blue scanner, also: [blue], home: quay}
  - {id: B, name: green scanner, also: [green], home: quay}
tips:
  - {ids: 1-8, home: quay, cycles: 100}
  - {ids: 9-12, home: north, cycles: 100}
people:
  - {name: Rosa, id: "@rosa:example.org", part: lead}
  - {name: Dan, id: "@dan:example.org", part: deputy}
  - {name: Tom, id: "@tom:example.org"}
chat:
  - {room: "!quay:example.org", sites: [quay]}
  - {room: "!north:example.org", sites: [north]}
rules: {loadTable: uk}
`;

/** Lines of a script in short: `['08:05', 'tom', 'used tip 4']`, in Quay's room unless the fourth says otherwise. */
export type Short = readonly [
  time: string,
  who: string,
  text: string,
  more?: Readonly<Record<string, unknown>>,
];

/** A script line for each, on a Monday; ids are `$1`, `$2`, … in order. */
export function script(lines: readonly Short[], day = '2026-11-23'): readonly object[] {
  return lines.map(([time, who, text, more], index) => ({
    at: `${day}T${time.length === 5 ? `${time}:00` : time}Z`,
    room: '!quay:example.org',
    from: `@${who}:example.org`,
    id: `$${index + 1}`,
    ...(text === '' ? {} : { text }),
    ...more,
  }));
}

/** Plays lines against the whole bot in a folder of its own and gives back everything that it did. */
export async function play(
  lines: readonly object[],
  practice = PRACTICE,
  folder?: string,
): Promise<readonly Did[]> {
  const did: Did[] = [];
  const own = folder ?? mkdtempSync(join(tmpdir(), 'scanward-test-'));
  const rehearsal = new Rehearsal(own, practice, (line) => did.push(JSON.parse(line)));
  try {
    for (const [index, line] of lines.entries())
      await rehearsal.play(parseScriptLine(JSON.stringify(line), index + 1));
  } finally {
    rehearsal.close();
    if (folder === undefined) rmSync(own, { recursive: true, force: true });
  }
  return did;
}

/** The end of a script at that time. */
export function end(time: string, day = '2026-11-23'): object {
  return { at: `${day}T${time}:00Z`, end: true };
}

/** Posts about something, in order. */
export function posts(did: readonly Did[], about: string): readonly Did[] {
  return did.filter((one) => one.does === 'post' && one.about === about);
}

/** The state at the end. */
export function stateOf(did: readonly Did[]) {
  return did.at(-1)?.state;
}
