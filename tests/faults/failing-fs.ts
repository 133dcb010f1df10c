import { type FsLike, machineFs } from '../../bot/store/fs-port.ts';

/** How a call fails: with a system's code, once or from then on, or by writing half and then saying the disk is full. */
export type Failure = { code: string; forGood: boolean } | 'short write' | 'half a write, then full';

/** The machine's files, with the call of number `failAt` (counted from 0) failing. */
export class FailingFs {
  calls = 0;
  failed: string | null = null;
  readonly fs: FsLike;
  readonly #failAt: number;
  readonly #failure: Failure;

  constructor(failAt: number, failure: Failure) {
    this.#failAt = failAt;
    this.#failure = failure;
    this.fs = {
      open: (path, flags) => this.#call('open', () => machineFs.open(path, flags)),
      // Where every call fails in turn, syncing is one by itself, as on a system that does not write through.
      openToAppend: (path) =>
        typeof failure === 'string'
          ? machineFs.openToAppend(path)
          : { fd: this.#call('open', () => machineFs.open(path, 'a')), writesThrough: false },
      close: (fd) => machineFs.close(fd),
      read: (fd, into, length, position) =>
        this.#call('read', () => machineFs.read(fd, into, length, position)),
      write: (fd, bytes) => this.#write(fd, bytes),
      datasync: (fd) => this.#call('datasync', () => machineFs.datasync(fd)),
      sync: (fd) => this.#call('sync', () => machineFs.sync(fd)),
      truncate: (fd, length) => this.#call('truncate', () => machineFs.truncate(fd, length)),
      size: (fd) => this.#call('size', () => machineFs.size(fd)),
      rename: (from, to) => this.#call('rename', () => machineFs.rename(from, to)),
      remove: (path) => this.#call('remove', () => machineFs.remove(path)),
      makeFolder: (path) => this.#call('makeFolder', () => machineFs.makeFolder(path)),
      list: (folder) => this.#call('list', () => machineFs.list(folder)),
      exists: (path) => machineFs.exists(path),
    };
  }

  #due(): boolean {
    const number = this.calls++;
    if (number === this.#failAt) return true;
    return typeof this.#failure === 'object' && this.#failure.forGood && number > this.#failAt;
  }

  #call<T>(name: string, work: () => T): T {
    // Where only writes are to fail, only writes are counted.
    if (typeof this.#failure === 'string' || !this.#due()) return work();
    this.failed ??= name;
    throw coded(this.#failure.code);
  }

  #write(fd: number, bytes: Uint8Array): number {
    if (typeof this.#failure !== 'string') return this.#call('write', () => machineFs.write(fd, bytes));
    if (!this.#due()) return machineFs.write(fd, bytes);
    this.failed ??= 'write';
    const half = machineFs.write(fd, bytes.subarray(0, Math.max(1, bytes.length >> 1)));
    if (this.#failure === 'short write') return half;
    throw coded('ENOSPC');
  }
}

function coded(code: string): Error {
  return Object.assign(new Error(`${code}: made to fail`), { code });
}
