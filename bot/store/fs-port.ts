import {
  closeSync,
  constants,
  existsSync,
  fdatasyncSync,
  fstatSync,
  fsyncSync,
  ftruncateSync,
  mkdirSync,
  openSync,
  readdirSync,
  readSync,
  renameSync,
  unlinkSync,
  writeSync,
} from 'node:fs';

/** The file system calls that the store makes, one by one, so that a test can let each of them fail. */
export interface FsLike {
  /** Opens a file; `a` appends and makes the file, `w` empties it, `r+` reads and cuts. */
  open(path: string, flags: 'r' | 'r+' | 'a' | 'w'): number;
  /**
   * Opens a file to append to it. `writesThrough`: what is written is on the disk when the write comes back, as after
   * `datasync` (O_DSYNC), where the system has that; it saves a call and some 10 µs a line.
   */
  openToAppend(path: string): { fd: number; writesThrough: boolean };
  close(fd: number): void;
  /** Reads up to `length` bytes at `position` of the file into `into` from its start; returns how many came. */
  read(fd: number, into: Uint8Array, length: number, position: number): number;
  /** Writes at the end (or the running position) and returns how many bytes were taken, perhaps fewer. */
  write(fd: number, bytes: Uint8Array): number;
  /** Content on the disk (fdatasync). */
  datasync(fd: number): void;
  /** Content and names on the disk (fsync); also for a folder. */
  sync(fd: number): void;
  truncate(fd: number, length: number): void;
  size(fd: number): number;
  rename(from: string, to: string): void;
  remove(path: string): void;
  makeFolder(path: string): void;
  list(folder: string): string[];
  exists(path: string): boolean;
}

/** The machine's own file system. Files are made for their owner alone: the record names people. */
export const machineFs: FsLike = {
  open: (path, flags) => openSync(path, flags, 0o600),
  openToAppend: (path) => {
    const { O_APPEND, O_CREAT, O_DSYNC, O_WRONLY } = constants;
    // Windows has no such flag, and Node then no such number.
    const writesThrough = Number.isInteger(O_DSYNC) && O_DSYNC > 0;
    if (!writesThrough) return { fd: openSync(path, 'a', 0o600), writesThrough };
    return { fd: openSync(path, O_APPEND | O_CREAT | O_WRONLY | O_DSYNC, 0o600), writesThrough };
  },
  close: (fd) => closeSync(fd),
  read: (fd, into, length, position) => readSync(fd, into, 0, length, position),
  write: (fd, bytes) => writeSync(fd, bytes),
  datasync: (fd) => fdatasyncSync(fd),
  sync: (fd) => fsyncSync(fd),
  truncate: (fd, length) => ftruncateSync(fd, length),
  size: (fd) => fstatSync(fd).size,
  rename: (from, to) => renameSync(from, to),
  remove: (path) => unlinkSync(path),
  makeFolder: (path) => {
    mkdirSync(path, { recursive: true, mode: 0o700 });
  },
  list: (folder) => readdirSync(folder),
  exists: (path) => existsSync(path),
};
