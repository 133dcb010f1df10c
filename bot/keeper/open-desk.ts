import type { Desk } from '../../core/desk/desk.ts';
import type { Turn } from '../../core/desk/turn.ts';
import type { Archive } from '../../core/record/archive.ts';
import { stampOf } from '../store/snapshot.ts';
import type { JournalLine, Store } from '../store/store.ts';
import { isTrouble } from '../store/trouble.ts';

/** A desk as the record has it, and what its owner should be told of how it came about. */
export interface OpenedDesk {
  readonly desk: Desk;
  readonly notice: string | null;
}

const OTHER_BUILD = 'The snapshot was of no use to this version. The record was read from its first line.';
const OTHER_HISTORY =
  'history.db, which is only worked out from the record, was damaged or did not fit it. It was thrown away, and the record was read from its first line. Nothing is lost.';
const NOT_KEPT = 'history.db, which is only worked out from the record, could not be kept on the disk.';
const IN_MEMORY =
  'The record itself is whole. What is only history is kept in memory until the next start, which takes longer and more memory.';

/** Makes an empty desk that keeps there what is only history. */
export type MakeDesk = (archive: Archive) => Desk;

/**
 * The desk from the snapshot and the lines after it; from the whole journal where there is no snapshot that loads, or the
 * history beside it is damaged or another one. Where the disk will not keep the history, it is in memory.
 */
export function openDesk(store: Store, make: MakeDesk): OpenedDesk {
  const { history } = store;
  const fromFirstLine = () => wholeDesk(store.lines(), () => make(history));
  const isHopeless = history.isHopeless;
  if (isHopeless || !history.lasts) history.toMemory();
  try {
    const { desk, notice } = fromSnapshot(store, make);
    if (desk !== null) return { desk, notice };
    if (isHopeless) return { desk: fromFirstLine(), notice: `${NOT_KEPT} ${IN_MEMORY}` };
    if (history.lasts) history.clear();
    else history.toMemory();
    return { desk: fromFirstLine(), notice };
  } catch (error) {
    if (!isTrouble(error)) throw error;
    history.toMemory();
    return { desk: fromFirstLine(), notice: `${error.message} ${IN_MEMORY}` };
  }
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

type Kept = NonNullable<ReturnType<Store['snapshot']>>;

/** No desk where there is no snapshot, or it does not load, or the history beside it is damaged or not what it was then. */
function fromSnapshot(store: Store, make: MakeDesk): { desk: Desk | null; notice: string | null } {
  const kept = store.snapshot();
  if (kept === null) return { desk: null, notice: null };
  const { history } = store;
  try {
    history.rollBack();
    const desk = make(history);
    if (!loads(desk, kept)) return { desk: null, notice: OTHER_BUILD };
    if (desk.needsArchive && history.stamp !== stampOf(kept)) return { desk: null, notice: OTHER_HISTORY };
    for (const line of store.lines(kept.n)) desk.replay(line.n, turnOf(line));
    return { desk, notice: null };
  } catch (error) {
    if (!history.isDamaged) throw error;
    return { desk: null, notice: OTHER_HISTORY };
  }
}

function loads(desk: Desk, kept: Kept): boolean {
  try {
    return desk.restore(kept.value) && desk.turns === kept.n;
  } catch (error) {
    // Anything that another build wrote: whatever it trips over, the journal has it all.
    if (error instanceof Error) return false;
    throw error;
  }
}
