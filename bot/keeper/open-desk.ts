import type { Desk } from '../../core/desk/desk.ts';
import type { Turn } from '../../core/desk/turn.ts';
import { NeedsWholeRecord } from '../../core/record/timeline.ts';
import type { JournalLine, Store } from '../store/store.ts';

/** A desk as the record has it, and what its owner should be told of how it came about. */
export interface OpenedDesk {
  readonly desk: Desk;
  readonly notice: string | null;
}

const THROWN_AWAY = 'The snapshot was of no use to this version. The record was read from its first line.';

/** The desk from the snapshot and the lines after it; from the whole journal where there is no snapshot that loads. */
export function openDesk(store: Store, make: () => Desk): OpenedDesk {
  const kept = store.snapshot();
  if (kept === null) return { desk: wholeDesk(store.lines(), make), notice: null };
  const desk = goneOn(store, kept, make);
  if (desk !== null) return { desk, notice: null };
  return { desk: wholeDesk(store.lines(), make), notice: THROWN_AWAY };
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

/** `null` where the snapshot does not load, or what came after it needs what is not in it. */
function goneOn(store: Store, kept: { n: number; value: unknown }, make: () => Desk): Desk | null {
  const desk = make();
  if (!loads(desk, kept)) return null;
  try {
    for (const line of store.lines(kept.n)) desk.replay(line.n, turnOf(line));
    return desk;
  } catch (error) {
    if (error instanceof NeedsWholeRecord) return null;
    throw error;
  }
}

function loads(desk: Desk, kept: { n: number; value: unknown }): boolean {
  try {
    return desk.restore(kept.value) && desk.turns === kept.n;
  } catch (error) {
    // Anything that another build wrote: whatever it trips over, the journal has it all.
    if (error instanceof Error) return false;
    throw error;
  }
}
