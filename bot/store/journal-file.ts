import type { FsLike } from './fs-port.ts';
import { syncFolder, writeAll } from './fs-whole.ts';
import { journalFolder, monthPath } from './months.ts';
import type { Place } from './scan.ts';
import { plainCause, StoreTrouble } from './trouble.ts';

/** The growing end of the journal. */
export interface JournalFile {
  /** Where the next line starts; null before the first. */
  readonly end: Place | null;
  /** Why nothing more can be appended until the next start, in plain words; null while it can. */
  readonly broken: string | null;
  /**
   * Appends and syncs bytes to the file of `month`, or of the newest month where that is later (a closed month is
   * never gone back to). Gives where they start. On failure takes back what was written and throws StoreTrouble.
   */
  append(bytes: Uint8Array, month: string): Place;
  /** Appends nothing more until the next start: something could not be taken back. */
  breakOff(cause: unknown): void;
  close(): void;
}

/** Opens the journal for appending after `end`, which is known to be the end of the newest file. */
export function openJournalFile(fs: FsLike, folder: string, end: Place | null): JournalFile {
  let fd = -1;
  let writesThrough = false;
  let open: string | null = null;
  let at = end;
  let broken: string | null = null;

  const openMonth = (month: string, size: number): void => {
    if (open === month) return;
    const isNew = !fs.exists(monthPath(folder, month));
    const next = fs.openToAppend(monthPath(folder, month));
    try {
      if (fs.size(next.fd) !== size) throw new StoreTrouble(`${month}.jsonl was changed by something else`);
      if (isNew) syncFolder(fs, journalFolder(folder));
    } catch (cause) {
      fs.close(next.fd);
      throw cause;
    }
    if (fd !== -1) fs.close(fd);
    ({ fd, writesThrough } = next);
    open = month;
  };
  const breakOff = (cause: unknown): void => {
    broken = `The record could not be written and could not be put back (${plainCause(cause)}). Nothing more is recorded until Scanward is started again.`;
  };
  const takeBack = (size: number): void => {
    try {
      fs.truncate(fd, size);
      fs.datasync(fd);
    } catch (cause) {
      breakOff(cause);
    }
  };

  return {
    get end() {
      return at;
    },
    get broken() {
      return broken;
    },
    append(bytes, wanted) {
      if (broken !== null) throw new StoreTrouble(broken);
      const month = at === null || wanted > at.month ? wanted : at.month;
      const size = at?.month === month ? at.offset : 0;
      let started = false;
      try {
        openMonth(month, size);
        started = true;
        writeAll(fs, fd, bytes);
        if (!writesThrough) fs.datasync(fd);
      } catch (cause) {
        if (started) takeBack(size);
        throw new StoreTrouble(
          `The record could not be written: ${plainCause(cause)}. Nothing was recorded.`,
          { cause },
        );
      }
      at = { month, offset: size + bytes.length };
      return { month, offset: size };
    },
    breakOff,
    close() {
      if (fd !== -1) fs.close(fd);
      fd = -1;
    },
  };
}
