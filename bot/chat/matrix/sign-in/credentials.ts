import { readFileSync, statSync } from 'node:fs';
import { PlainError } from '../../../plain-error.ts';

/** Where the account is and how to sign in to it. A token is that of a device made by hand. */
export interface Credentials {
  readonly homeserver: string | null;
  readonly user: string | null;
  readonly password: string | null;
  readonly token: string | null;
  /** The recovery key that was shown once: brings a new device its trust and the keys of what was said before. */
  readonly recoveryKey: string | null;
}

const NAMES = [
  'SCANWARD_HOMESERVER',
  'SCANWARD_USER',
  'SCANWARD_PASSWORD',
  'SCANWARD_TOKEN',
  'SCANWARD_RECOVERY_KEY',
] as const;

/**
 * Account and secret from the environment, or from a file of `NAME=value` lines (`SCANWARD_SECRETS`, or `file`) that its
 * owner alone can read. What the environment says wins. Throws PlainError on a file that others can read.
 */
export function readCredentials(
  environment: Readonly<Record<string, string | undefined>>,
  file: string | undefined = environment.SCANWARD_SECRETS,
): Credentials {
  const inFile = file === undefined ? new Map<string, string>() : readSecrets(file);
  const value = (name: (typeof NAMES)[number]): string | null => {
    const found = environment[name] ?? inFile.get(name);
    return found === undefined || found === '' ? null : found;
  };
  const homeserver = value('SCANWARD_HOMESERVER');
  return {
    homeserver: homeserver === null ? null : withScheme(homeserver),
    user: value('SCANWARD_USER'),
    password: value('SCANWARD_PASSWORD'),
    token: value('SCANWARD_TOKEN'),
    recoveryKey: value('SCANWARD_RECOVERY_KEY'),
  };
}

function readSecrets(path: string): Map<string, string> {
  let text: string;
  try {
    // Windows knows no such bits: there the folder's own rights have to do.
    if (process.platform !== 'win32' && (statSync(path).mode & 0o077) !== 0) {
      throw new PlainError(`Others on this machine can read ${path}. Run: chmod 600 ${path}`);
    }
    text = readFileSync(path, 'utf8');
  } catch (error) {
    if (error instanceof PlainError) throw error;
    throw new PlainError(`The file of secrets ${path} cannot be read.`);
  }
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !line.trimStart().startsWith('#'));
  return new Map(
    lines.map((line, index) => {
      const [, name, value] = /^\s*(?:export\s+)?(\w+)\s*=\s*(.*?)\s*$/.exec(line) ?? [];
      if (name === undefined || !NAMES.some((known) => known === name)) {
        throw new PlainError(
          `Line ${index + 1} of the file of secrets is none of ${NAMES.join(', ')} with = and a value.`,
        );
      }
      return [name, (value ?? '').replace(/^(["'])(.*)\1$/, '$2')];
    }),
  );
}

function withScheme(homeserver: string): string {
  const url = /^https?:\/\//.test(homeserver) ? homeserver : `https://${homeserver}`;
  return url.replace(/\/+$/, '');
}
