import { execFile } from 'node:child_process';
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { PlainError } from '../../../plain-error.ts';
import { type Lock, lockFolder } from '../../../store/lock.ts';
import { StoreBusy } from '../../../store/trouble.ts';

/** The homeserver for trying out and for the tests: Synapse, from PyPI, in a folder of this project's cache. */
const SYNAPSE = 'matrix-synapse==1.163.2';

const CACHE = fileURLToPath(new URL('../../../../.cache/synapse', import.meta.url));

const run = promisify(execFile);

/** How often it is looked whether another process has set it up by now, ms. */
const LOOK_MS = 500;

/**
 * The Python that has Synapse, set up at the first call (about a minute, 150 MB from PyPI); of several processes that ask
 * at once, one does it. Throws PlainError with the way out where it cannot be had.
 */
export async function synapsePython(say: (line: string) => void): Promise<string> {
  const python = join(CACHE, 'venv', 'bin', 'python');
  mkdirSync(CACHE, { recursive: true });
  for (;;) {
    if (existsSync(python) && (await has(python))) return python;
    const lock = lockOrNull();
    if (lock === null) {
      await wait(LOOK_MS);
      continue;
    }
    try {
      if (!existsSync(python) || !(await has(python))) await setUp(python, say);
    } finally {
      lock.release();
    }
  }
}

/** The system gives the lock back when a process ends, however it ends. */
function lockOrNull(): Lock | null {
  try {
    return lockFolder(CACHE);
  } catch (error) {
    if (error instanceof StoreBusy) return null;
    throw error;
  }
}

async function setUp(python: string, say: (line: string) => void): Promise<void> {
  say('Setting up a homeserver in .cache (Synapse from PyPI; once, about a minute) …');
  try {
    await run('python3', ['-m', 'venv', join(CACHE, 'venv')]);
    await run(python, ['-m', 'pip', 'install', '--quiet', '--disable-pip-version-check', SYNAPSE], {
      timeout: 600_000,
      maxBuffer: 16_000_000,
    });
  } catch (error) {
    const why = error instanceof Error ? error.message.trim().split('\n').at(-1) : String(error);
    throw new PlainError(
      `Synapse could not be set up (${why}). It needs python3 with venv (Debian: apt install python3-venv) and PyPI.`,
    );
  }
}

async function has(python: string): Promise<boolean> {
  const [, version = ''] = SYNAPSE.split('==');
  const code = `import importlib.metadata as m; print(m.version("matrix-synapse"))`;
  return run(python, ['-c', code]).then(
    ({ stdout }) => stdout.trim() === version,
    () => false,
  );
}
