import { mkdirSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { PlainError } from '../plain-error.ts';
import { plainCause } from '../store/trouble.ts';

/** Makes a folder where there is none, and those above it. Throws PlainError with what stands in the way. */
export function makeFolder(path: string): void {
  const folder = resolve(path);
  const there = statSync(folder, { throwIfNoEntry: false });
  if (there?.isDirectory() === true) return;
  if (there !== undefined)
    throw new PlainError(`${path} is a file, not a folder. Name a folder with --store.`);
  // One by one: Node's own "recursive" never ends where the system refuses with ENOENT, as under /proc.
  makeFolder(dirname(folder));
  try {
    mkdirSync(folder);
  } catch (cause) {
    throw new PlainError(
      `The folder ${path} cannot be made: ${plainCause(cause)}. Name another with --store.`,
    );
  }
}
