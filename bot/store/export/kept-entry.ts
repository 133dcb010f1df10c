import type { JournalLine } from '../line.ts';

/** One fact or decision as a turn holds it, whatever its kind. */
export interface KeptEntry {
  /** `line.place`, as in 57.0. */
  id: string;
  /** The line it is in, and its place in that turn. */
  line: number;
  /** Kind and slots. */
  what: Record<string, unknown>;
  kind: string;
  /** Instants, ISO, UTC. */
  when: string;
  noted: string;
  by: string | null;
  room: string;
}

/** Which entries no longer hold, by the line they are in: the line that set them aside, and how. */
export interface Correction {
  by: number;
  /** Who made it, and when it was noted. */
  person: string | null;
  noted: string;
  how: string;
}

/** The entries of a line's turn, in order. What is not of a known shape is left out. */
export function entriesOf(line: JournalLine): KeptEntry[] {
  const found: KeptEntry[] = [];
  for (const [place, entry] of listAt(line.turn, 'entries').entries()) {
    const what = bagAt(entry, 'what');
    const kind = textAt(what, 'kind');
    if (what === null || kind === null) continue;
    found.push({
      id: `${line.n}.${place}`,
      line: line.n,
      what,
      kind,
      when: textAt(what, 'when') ?? line.at,
      noted: textAt(entry, 'noted') ?? line.at,
      by: textAt(what, 'by') ?? textAt(entry, 'by') ?? textAt(entry, 'from'),
      room: textAt(entry, 'room') ?? '',
    });
  }
  return found;
}

/** The lines whose entries this line sets aside, with how and by whom. */
export function correctionsIn(line: JournalLine): { of: number; correction: Correction }[] {
  const cause = bagAt(line.turn, 'cause');
  const correction = {
    by: line.n,
    person: textAt(cause, 'from'),
    noted: textAt(cause, 'noted') ?? line.at,
    how: textAt(line.turn, 'correction') ?? 'corrected',
  };
  return listAt(line.turn, 'setsAside')
    .filter((of) => typeof of === 'number')
    .map((of) => ({ of, correction }));
}

/** The practice file that this line takes into the record, or null. */
export function practiceIn(line: JournalLine): string | null {
  const cause = bagAt(line.turn, 'cause');
  return textAt(cause, 'sort') === 'practice' ? textAt(cause, 'file') : null;
}

/** A member that is a list; none reads as empty. */
export function listAt(value: unknown, key: string): readonly unknown[] {
  const member = isBag(value) ? value[key] : undefined;
  return Array.isArray(member) ? member : [];
}

/** A member that is a text that says something, or null. */
export function textAt(value: unknown, key: string): string | null {
  const member = isBag(value) ? value[key] : undefined;
  return typeof member === 'string' && member !== '' ? member : null;
}

function bagAt(value: unknown, key: string): Record<string, unknown> | null {
  const member = isBag(value) ? value[key] : undefined;
  return isBag(member) ? member : null;
}

function isBag(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
