/** Another process holds the folder. */
export class StoreBusy extends Error {
  override readonly name = 'StoreBusy';
}

/** The disk would not do what was asked, or the record may not be written; nothing was half done. */
export class StoreTrouble extends Error {
  override readonly name = 'StoreTrouble';
}

/** Whether that is what the disk would not do, told in plain words. */
export function isTrouble(error: unknown): error is Error & { readonly name: 'StoreTrouble' } {
  return error instanceof Error && error.name === 'StoreTrouble';
}

/** The folder was written by a newer version than this one. */
export class StoreTooNew extends Error {
  override readonly name = 'StoreTooNew';
}

/** The journal does not read as it was written. */
export class StoreDamage extends Error {
  override readonly name = 'StoreDamage';
}

const plainWords: ReadonlyMap<string, string> = new Map([
  ['ENOSPC', 'the disk is full: make room'],
  ['EDQUOT', 'this account has used up its share of the disk: make room'],
  ['EIO', 'the disk reported a fault: check it, and copy the folder somewhere safe'],
  ['EACCES', 'this account may not use it: give it the right to read and write there'],
  ['EPERM', 'this account may not use it: give it the right to read and write there'],
  ['EROFS', 'the disk can only be read: make it writable'],
  ['EMFILE', 'too many files are open'],
  ['ENFILE', 'too many files are open'],
  ['ENOENT', 'it is not there'],
  ['ENOTDIR', 'it is a file, not a folder'],
]);

/** What went wrong with the disk, in plain words, from the system's code (ENOSPC, EIO, …). */
export function plainCause(cause: unknown): string {
  const code = codeOf(cause);
  const words = code === null ? undefined : plainWords.get(code);
  if (words !== undefined) return `${words} (${code})`;
  return cause instanceof Error ? cause.message : String(cause);
}

function codeOf(cause: unknown): string | null {
  if (typeof cause !== 'object' || cause === null || !('code' in cause)) return null;
  return typeof cause.code === 'string' ? cause.code : null;
}

/** What the disk threw as a StoreTrouble that says `doing` and why; our own errors, and a mistake in code, as they are. */
export function asTrouble(doing: string, cause: unknown): unknown {
  if (codeOf(cause) === null) return cause;
  if (sqliteKind(cause) !== null) return sqliteTrouble(doing, cause);
  return new StoreTrouble(`${doing}: ${plainCause(cause)}.`, { cause });
}

/** Runs one piece of work on the disk; what the disk throws comes out as a StoreTrouble that says `doing` and why. */
export function plainly<T>(doing: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    throw asTrouble(doing, cause);
  }
}

// SQLite's own numbers (sqlite.org/rescode.html).
const sqliteWords: ReadonlyMap<number, string> = new Map([
  [8, 'the file can only be read: give this account the right to write there'],
  [10, 'the disk reported a fault: check it, and copy the folder somewhere safe'],
  [11, 'the file is damaged'],
  [13, 'the disk is full: make room'],
  [14, 'the file cannot be opened: give this account the right to read and write there'],
  [26, 'the file is damaged'],
]);

/** SQLite's number for the kind of failure, or null where it is none of SQLite's. */
export function sqliteKind(cause: unknown): number | null {
  if (codeOf(cause) !== 'ERR_SQLITE_ERROR') return null;
  const number = typeof cause === 'object' && cause !== null && 'errcode' in cause ? cause.errcode : 0;
  return Number(number) & 0xff; // what is above the lower byte says where in SQLite
}

/** A failure of SQLite as a StoreTrouble in plain words; anything else as it is. */
export function sqliteTrouble(doing: string, cause: unknown): unknown {
  const kind = sqliteKind(cause);
  if (kind === null) return cause;
  const words = sqliteWords.get(kind) ?? (cause instanceof Error ? cause.message : '');
  return new StoreTrouble(`${doing}: ${words}.`, { cause });
}
