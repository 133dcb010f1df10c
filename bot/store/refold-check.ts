import canonicalize from 'canonicalize';
import type { filesOf } from './folder.ts';
import type { FsLike } from './fs-port.ts';
import { type HistoryLook, lookAtHistory } from './history/look.ts';
import type { JournalLine } from './line.ts';
import { openSnapshot, type Snapshot, stampOf } from './snapshot.ts';
import { openStore } from './store.ts';

/** What the lines up to the snapshot's give. */
export interface Refolded {
  /** As the snapshot's value is. */
  value: unknown;
  /** Whether history.db belongs to it. */
  needsHistory: boolean;
  /** What is wrong with the history.db that fits the snapshot, in plain words, or null. */
  historyFault: string | null;
}

/** Works out the state from the lines up to the snapshot's. `found`: the history.db that fits it, where there is one. */
export type Refold = (lines: Iterable<JournalLine>, found: HistoryLook | null) => Refolded;

/** The snapshot and the history.db that fits it: a program that runs writes one just after the other. */
export function lookAtBoth(
  fs: FsLike,
  files: ReturnType<typeof filesOf>,
  withHistory: boolean,
): { snapshot: Snapshot | null; history: HistoryLook | null } {
  for (let tries = 0; ; tries++) {
    const history = withHistory ? lookAtHistory(files.history) : null;
    const snapshot = openSnapshot(fs, files.snapshot).data;
    if (history === null || snapshot === null || history.stamp === stampOf(snapshot))
      return { snapshot, history };
    history.close();
    if (tries === 5) return { snapshot, history: null };
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
  }
}

/**
 * The first fault of a snapshot, and of the history.db beside it, held against what the lines before them give; `history`:
 * whether there was one to be held against them.
 */
export function refoldFault(
  fs: FsLike,
  folder: string,
  { snapshot, history, refold }: { snapshot: Snapshot; history: HistoryLook | null; refold: Refold },
): { fault: string | null; history: boolean } {
  const store = openStore(folder, { fs, readOnly: true });
  try {
    const { value, needsHistory, historyFault } = refold(upTo(store.lines(), snapshot.n), history);
    const found = { fault: null, history: needsHistory && history !== null };
    if (canonicalize(value) !== canonicalize(snapshot.value))
      return { ...found, fault: `snapshot.json is not what lines 1 to ${snapshot.n} of the record give.` };
    if (!needsHistory) return found;
    if (history === null)
      return {
        ...found,
        fault: 'history.db does not fit the snapshot. It is worked out again at the next start.',
      };
    if (historyFault === null) return found;
    const fault = `history.db: ${historyFault}. Run "rebuild": it is worked out from the record, which is whole.`;
    return { ...found, fault };
  } finally {
    store.close();
  }
}

function* upTo(lines: Iterable<JournalLine>, n: number): Generator<JournalLine> {
  for (const line of lines) {
    if (line.n > n) return;
    yield line;
  }
}
