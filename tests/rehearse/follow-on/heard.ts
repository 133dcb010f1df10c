import { type Did, end, PRACTICE, play, type Short, script } from '../play.ts';

const COUNTED: Short = ['08:00', 'rosa', 'tips 1 to 8 are sterile and on the shelf'];

/** A room of North's, for what is told elsewhere. */
export const NORTH = { room: '!north:example.org' };

/** A line of a script that is no note: a restart. */
export interface Between {
  readonly at: string;
  readonly restart: true;
  readonly back?: string;
}

/** Plays notes after a count of Quay's tips; ids are `$2`, `$3`, … in order. `at`: scripts lines between, in order of time. */
export async function heard(
  lines: readonly Short[],
  between: readonly Between[] = [],
  practice = PRACTICE,
): Promise<readonly Did[]> {
  const all = [...(script([COUNTED, ...lines]) as { readonly at: string }[]), ...between];
  // A stable sort: what is scripted between stands behind a note of the same instant.
  all.sort((one, other) => Date.parse(one.at) - Date.parse(other.at));
  return await play([...all, end('12:00')], practice);
}

/** What was said or marked under the note with that id, in order. */
export function under(did: readonly Did[], note: string): readonly string[] {
  return did.flatMap((one) => {
    if (one.does === 'react' && one.to === note) return [one.key ?? ''];
    return one.does === 'post' && one.replyTo === note ? [one.text ?? ''] : [];
  });
}

/** What was said or marked under the last of those notes. */
export async function underLast(...lines: readonly Short[]): Promise<readonly string[]> {
  return under(await heard(lines), `$${lines.length + 1}`);
}

/**
 * Those of the words that drew a mark or a post, each typed a minute after that note and eleven minutes after the words
 * before, so that one says nothing about the next; with an empty note nothing stands before them.
 */
export async function answeredAfter(note: string, words: readonly string[]): Promise<readonly string[]> {
  const clock = (minutes: number) =>
    `${String(8 + Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
  const lines = words.flatMap((text, n): Short[] => {
    const at = 30 + 12 * n;
    const before: Short = [clock(at), 'tom', note];
    return [...(note === '' ? [] : [before]), [clock(at + 1), 'tom', text]];
  });
  const did = await play([...script([COUNTED, ...lines]), end('16:00')]);
  return lines.flatMap(([, , text], n) =>
    text !== note && under(did, `$${n + 2}`).length > 0 ? [text] : [],
  );
}
