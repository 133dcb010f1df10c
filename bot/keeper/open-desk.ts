import type { Desk } from '../../core/desk/desk.ts';
import type { Turn } from '../../core/desk/turn.ts';
import type { Archive } from '../../core/record/archive.ts';
import type { JournalLine, Store } from '../store/store.ts';

/** A desk as the record has it, and what its owner should be told of how it came about. */
export interface OpenedDesk {
  readonly desk: Desk;
  readonly notice: string | null;
}

const THROWN_AWAY = 'The snapshot was of no use to this version. The record was read from its first line.';

/** Makes an empty desk that keeps there what is only history. */
export type MakeDesk = (archive: Archive) => Desk;

/** What ties the history to a snapshot: the line that both are of. */
export function stampOf({ n, hash }: { n: number; hash: string }): string {
  return `${n} ${hash}`;
}

/** The desk from the snapshot and the lines after it; from the whole journal where there is no snapshot that loads. */
export function openDesk(store: Store, make: MakeDesk): OpenedDesk {
  const kept = store.snapshot();
  if (kept !== null) {
    const desk = goneOn(store, kept, make);
    if (desk !== null) return { desk, notice: null };
  }
  store.history.clear();
  const desk = wholeDesk(store.lines(), () => make(store.history));
  return { desk, notice: kept === null ? null : THROWN_AWAY };
}

/** The desk from every line of the journal. */
export function wholeDesk(lines: Iterable<JournalLine>, make: () => Desk): Desk {
  const desk = make();
  for (const line of lines) desk.replay(line.n, turnOf(line));
  return desk;
}

/** The turn in a line. The store has checked that the line stands as this program wrote it. */
export function turnOf(line: JournalLine): Turn {
  return line.turn as Turn;
}

/** `null` where the snapshot does not load, or the history beside it is not what it was then. */
function goneOn(store: Store, kept: Kept, make: MakeDesk): Desk | null {
  const { history } = store;
  history.rollBack();
  const desk = make(history);
  if (!loads(desk, kept) || (desk.needsArchive && history.stamp !== stampOf(kept))) return null;
  for (const line of store.lines(kept.n)) desk.replay(line.n, turnOf(line));
  return desk;
}

type Kept = NonNullable<ReturnType<Store['snapshot']>>;

function loads(desk: Desk, kept: { n: number; value: unknown }): boolean {
  try {
    return desk.restore(kept.value) && desk.turns === kept.n;
  } catch (error) {
    // Anything that another build wrote: whatever it trips over, the journal has it all.
    if (error instanceof Error) return false;
    throw error;
  }
}
