import type { NewTurn } from './burst.ts';
import type { Head } from './chain.ts';
import type { Closing } from './close-months.ts';
import { makeFolders } from './folder.ts';
import type { Forgetting, ForgetWhat } from './forget.ts';
import { type FsLike, machineFs } from './fs-port.ts';
import type { History } from './history/history.ts';
import type { JournalLine } from './line.ts';
import { lockFolder } from './lock.ts';
import { OpenFolder } from './open-folder.ts';
import type { Transport } from './transport.ts';
import { plainly } from './trouble.ts';

export type { JournalLine, NewTurn };

/** The record of one practice, in one folder, held by one process. */
export interface Store {
  readonly folder: string;
  /** The last line; number 0 and 64 zeros when there is none. */
  readonly head: Head;
  /** Why nothing can be recorded, in plain words; null while it can. */
  readonly readOnly: string | null;
  /** What happened at opening, to be said once. */
  readonly notices: readonly string[];
  /** Appends turns as lines with one synced write. Throws StoreTrouble, nothing half done, when it cannot. */
  append(turns: readonly NewTurn[]): JournalLine[];
  /** The lines after number `afterN`, in order, with people and texts put back. */
  lines(afterN?: number): Iterable<JournalLine>;
  /** One line, or null. */
  line(n: number): JournalLine | null;
  /** The lines whose turn lists this item (`scanner:A`, `load:118`, …) in `turn.items`, in order. */
  linesAbout(item: string): Iterable<JournalLine>;
  /** The number of the line that an event of the chat (`turn.cause.id`) brought, or null. */
  lineOfEvent(eventId: string): number | null;
  /** The state kept at a line, only where it fits the journal. */
  snapshot(): { n: number; hash: string; value: unknown } | null;
  /** Keeps the state at the present head. */
  saveSnapshot(value: unknown): void;
  /** Erases a person's name, or the free text of one line, the snapshot and the history; the chain still verifies. */
  forget(what: ForgetWhat): Forgetting;
  /** The number of the last line in the files of months before `month` (2019-01); 0 when there is none. */
  lastBefore(month: string): number;
  /**
   * Closes the months before `month` (2019-01): erases what was typed and said in their lines, and the names of people
   * whom no later line names. Export them first. The chain still verifies and the state stays as it is.
   */
  closeMonths(month: string): Closing;
  /** What is only history, beside the snapshot: it fits that one alone whose line it was committed at. */
  readonly history: History;
  readonly transport: Transport;
  close(): void;
}

/** How to open a folder. */
export interface StoreOptions {
  fs?: FsLike;
  /** Look only: no lock is taken and nothing is written. */
  readOnly?: boolean;
}

/**
 * Opens a practice's folder, making it where it is not there. Throws StoreBusy when another process has it,
 * StoreTooNew when a newer version wrote it, StoreTrouble when the disk will not.
 */
export function openStore(folder: string, options: StoreOptions = {}): Store {
  const fs = options.fs ?? machineFs;
  if (options.readOnly === true) return new OpenFolder(fs, folder, null);
  plainly(`The folder ${folder} could not be made`, () => makeFolders(fs, folder));
  return new OpenFolder(fs, folder, lockFolder(folder));
}
