import { type Did, play } from '../play.ts';

const SITES = `
practice: Larkmoor Dental
timezone: Europe/London
sites:
  - id: mill
    name: Mill Road
    rooms:
      - {id: m1, name: Surgery 1}
      - {id: m2, name: Surgery 2}
    hours: {mon: 08:30-17:30, tue: 08:30-17:30, wed: 08:30-17:30, thu: 08:30-17:30, fri: 08:30-17:30}
  - id: hill
    name: Hill Clinic
    also: [hill]
    rooms: [{id: h1, name: Hill 1}]
    hours: {mon: 09:00-17:00, tue: 09:00-17:00, wed: 09:00-17:00, thu: 09:00-17:00, fri: 09:00-17:00}
scanners:
  - {id: K, name: coral scanner, also: [coral], home: mill}
  - {id: L, name: lime scanner, also: [lime], home: mill}
people:
  - {name: Ines, id: "@ines:example.org", part: lead}
  - {name: Paul, id: "@paul:example.org", part: deputy}
  - {name: Greta, id: "@greta:example.org", part: manager}
  - {name: Sam, id: "@sam:example.org"}
  - {name: Joy, id: "@joy:example.org"}
chat:
  - {room: "!mill:example.org", sites: [mill]}
  - {room: "!hill:example.org", sites: [hill]}
`;

const TIPS = `
tips:
  - {ids: 1-9, home: mill, cycles: 60}
  - {ids: 20-23, home: hill}
`;

/** One unnamed autoclave, the UK table. */
export const LARKMOOR = `${SITES}${TIPS}rules: {loadTable: uk}\n`;

/** Two autoclaves at Mill Road, one at Hill Clinic. */
export const THREE_AUTOCLAVES = `${SITES}${TIPS}autoclaves:
  - {id: big, name: big autoclave, also: [the big one], site: mill, cycles: [{celsius: 134, minutes: 3.5}]}
  - {id: small, name: small autoclave, also: [the small one], site: mill}
  - {id: hc, name: hill autoclave, site: hill}
rules: {loadTable: uk}
`;

/** Tips whose numbers share a prefix, three cycles short of their limit; unwrapped ones are good for the day. */
export const PREFIXED = `${SITES}
tips:
  - {ids: [T1, T2, T3, T4, T5, T6], home: mill, cycles: 20, cyclesSoFar: 17}
rules: {loadTable: uk, wrapped: noted}
`;

/** The practice with other rules in place of `loadTable: uk`. */
export function withRules(rules: string, practice = LARKMOOR): string {
  return practice.replace('rules: {loadTable: uk}', `rules: ${rules}`);
}

export const COUNTED = '08:31 sam: tips 1 to 9 are sterile and on the shelf';
export const CALIBRATED = '08:35 sam: calibrated coral and lime, all good';

/**
 * Plays notes such as "09:05 joy: tip 4 on coral" (or "2026-11-25 09:05 joy@hill: …") of Tuesday 24 November 2026 and what
 * follows, ending at the last time, which stands alone. Ids are $1, $2, … in order; `[$3]` behind a text replies to a
 * note, `[last question]` to the latest post about that, and `[edits $3]` edits one.
 */
export async function day(notes: readonly string[], practice = LARKMOOR): Promise<readonly Did[]> {
  let date = '2026-11-24';
  let id = 0;
  const lines = notes.map((note) => {
    const parts =
      /^(?:(\d{4}-\d\d-\d\d) )?(\d\d:\d\d)(?: (\w+)(?:@(\w+))?: (.*?)(?: \[(edits |last )?([$\w-]+)\])?)?$/.exec(
        note,
      );
    if (parts === null) throw new Error(`not a note of a script: ${note}`);
    const [, on, time, from, room = 'mill', text, how, target] = parts;
    date = on ?? date;
    const at = `${date}T${time}:00Z`;
    if (from === undefined) return { at, end: true };
    id += 1;
    const to =
      how === 'edits '
        ? { edits: target }
        : target === undefined
          ? {}
          : { replyTo: how === 'last ' ? { last: target } : target };
    return { at, room: `!${room}:example.org`, from: `@${from}:example.org`, id: `$${id}`, text, ...to };
  });
  return play(lines, practice);
}

/** Posts about something from that time on ("10:40"), the day's own posts (brief, close-out) among them where asked for. */
export function postsFrom(did: readonly Did[], time: string, about?: string): readonly Did[] {
  return did.filter(
    (one) =>
      one.does === 'post' && one.at.slice(11, 16) >= time && (about === undefined || one.about === about),
  );
}

/** Keys of reactions to a note, in order. */
export function marksOn(did: readonly Did[], note: string): readonly (string | undefined)[] {
  return did.filter((one) => one.does === 'react' && one.to === note).map(({ key }) => key);
}

/** The words of all those posts. */
export function words(posts: readonly Did[]): string {
  return posts.map(({ text }) => text).join('\n');
}

/** Where people are mentioned: `@ines:example.org`. */
export const [INES, PAUL, SAM, JOY] = ['ines', 'paul', 'sam', 'joy'].map((name) => `@${name}:example.org`);
