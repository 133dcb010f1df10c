import type { Head } from './chain.ts';
import { hashOfLine, headOf, parseLine } from './line.ts';
import { type Indexed, openLineIndex } from './line-index.ts';
import type { Place } from './scan.ts';
import { sqliteTrouble } from './trouble.ts';

/** The journal's lines as the index takes them in. */
export interface IndexSource {
  head(): Head;
  /** Texts and places of the lines from a place on (the start when null). */
  texts(from: Place | null): Iterable<{ text: string; place: Place }>;
}

/** Finds lines by item or number; takes in what is new when it is asked. */
export interface RecordIndex {
  about(item: string): number[];
  near(n: number): Place | null;
  /** Takes in the lines since the last time. */
  catchUp(): void;
  close(): void;
}

/** An index over a journal, kept at `path`. One that cannot be opened or does not fit is made anew. */
export function recordIndex(
  path: string,
  noneYet: Head,
  source: IndexSource,
  discard: () => void,
): RecordIndex {
  let index: ReturnType<typeof openLineIndex> | null = null;
  const open = (): ReturnType<typeof openLineIndex> => {
    if (index !== null) return index;
    try {
      index = openLineIndex(path, noneYet);
    } catch {
      discard();
      index = openLineIndex(path, noneYet);
    }
    if (!fits(index, source)) index.clear();
    return index;
  };
  const catchUp = (): void => {
    const into = open();
    const through = into.through();
    if (through.n >= source.head().n) return;
    let last = through;
    const fresh = function* (): Generator<Indexed> {
      for (const { text, place } of source.texts(into.near(through.n))) {
        const n = headOf(text)?.n ?? 0;
        if (n <= through.n) continue;
        last = { n, hash: '' };
        yield { n, place, items: itemsOf(text) };
      }
    };
    into.take(fresh(), () => ({ n: last.n, hash: source.head().hash }));
  };
  const tell = <T>(work: () => T): T => {
    try {
      return work();
    } catch (cause) {
      throw sqliteTrouble('The index of the record could not be kept', cause);
    }
  };
  return {
    about: (item) =>
      tell(() => {
        catchUp();
        return open().about(item);
      }),
    near: (n) => tell(() => (index === null ? null : index.near(n))),
    catchUp: () => tell(catchUp),
    close: () => index?.close(),
  };
}

function fits(index: ReturnType<typeof openLineIndex>, source: IndexSource): boolean {
  const { n, hash } = index.through();
  if (n === 0) return true;
  if (n > source.head().n) return false;
  for (const { text } of source.texts(index.near(n))) {
    const at = headOf(text)?.n ?? 0;
    if (at >= n) return at === n && hashOfLine(text) === hash;
  }
  return false;
}

/** What a line is found by: its turn's items, and the event of the chat that brought it (`turn.cause.id`). */
function itemsOf(text: string): string[] {
  const turn = parseLine(text)?.turn;
  if (typeof turn !== 'object' || turn === null) return [];
  const items = 'items' in turn && Array.isArray(turn.items) ? turn.items : [];
  const names = items.filter((item) => typeof item === 'string');
  const cause = 'cause' in turn ? turn.cause : null;
  if (typeof cause === 'object' && cause !== null && 'id' in cause && typeof cause.id === 'string') {
    names.push(eventItem(cause.id));
  }
  return names;
}

/** The name an event of the chat goes by in the index. */
export function eventItem(eventId: string): string {
  return `event ${eventId}`;
}
