import { type FsLike, machineFs } from '../../bot/store/fs-port.ts';

/** Files in memory to read from, by path; anything else is refused. A file can be changed between two readings. */
export function memoryFs(files: Map<string, Buffer>): FsLike {
  const open: (Buffer | null)[] = [];
  const refuse = (): never => {
    throw new Error('These files are only read.');
  };
  return {
    ...machineFs,
    open: (path) => {
      const file = files.get(path);
      if (file === undefined) throw Object.assign(new Error(path), { code: 'ENOENT' });
      return open.push(file) - 1;
    },
    close: (fd) => {
      open[fd] = null;
    },
    read: (fd, into, length, position) => open[fd]?.copy(into, 0, position, position + length) ?? 0,
    size: (fd) => open[fd]?.length ?? 0,
    exists: (path) => files.has(path) || [...files.keys()].some((each) => each.startsWith(`${path}/`)),
    list: (folder) =>
      [...files.keys()]
        .filter((each) => each.startsWith(`${folder}/`))
        .map((each) => each.slice(folder.length + 1)),
    write: refuse,
    rename: refuse,
    remove: refuse,
    makeFolder: refuse,
    truncate: refuse,
  };
}
