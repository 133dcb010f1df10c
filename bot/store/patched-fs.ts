import type { FsLike } from './fs-port.ts';

/** One byte of a file, as it ought to be. */
export interface Patch {
  path: string;
  offset: number;
  byte: number;
}

/** The same files, read as if patches were made already: what a repair would give can be read before it is done. */
export function patchedFs(fs: FsLike, patches: readonly Patch[]): FsLike {
  const paths = new Map<number, string>();
  return {
    ...fs,
    open: (path, flags) => {
      const fd = fs.open(path, flags);
      paths.set(fd, path);
      return fd;
    },
    read: (fd, into, length, position) => {
      const got = fs.read(fd, into, length, position);
      for (const { path, offset, byte } of patches) {
        if (path === paths.get(fd) && offset >= position && offset < position + got)
          into[offset - position] = byte;
      }
      return got;
    },
  };
}
