import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { PlainError } from '../../../plain-error.ts';
import { makeAccount } from './accounts.ts';
import { synapsePython } from './install.ts';
import { logSettings, type ServerSettings, serverSettings } from './settings.ts';

/** A homeserver on this machine. */
export interface LocalServer {
  readonly url: string;
  readonly name: string;
  /** Makes an account where it is not there yet. */
  account(user: string, password: string): Promise<void>;
  /** Ends it without warning, as a power cut would. */
  kill(): Promise<void>;
  start(): Promise<void>;
  stop(): Promise<void>;
}

/** What may be chosen; the rest is the same for every homeserver of ours. */
export type ServerChoice = Omit<ServerSettings, 'secret' | 'port'> & { readonly port?: number };

/**
 * A real Synapse in a folder, bound to 127.0.0.1, started and answering. Accounts are made by shared secret.
 * Throws PlainError where it cannot be set up or does not start.
 */
export async function localServer(choice: ServerChoice, say: (line: string) => void): Promise<LocalServer> {
  const python = await synapsePython(say);
  const { folder } = choice;
  mkdirSync(folder, { recursive: true });
  const port = choice.port ?? (await freePort());
  const secret = `local-${choice.name}`; // guards nothing: the server listens to this machine alone
  const config = join(folder, 'homeserver.yaml');
  writeFileSync(config, serverSettings({ ...choice, port, secret }));
  writeFileSync(join(folder, 'log.yaml'), logSettings(folder));
  const synapse = ['-m', 'synapse.app.homeserver', '-c', config];
  if (!existsSync(join(folder, 'signing.key'))) {
    spawnSync(python, [...synapse, '--generate-keys'], { cwd: folder });
  }
  const url = `http://127.0.0.1:${port}`;
  let child: ChildProcess | null = null;
  const end = async (signal: NodeJS.Signals) => {
    const ending = child;
    child = null;
    if (ending === null || ending.exitCode !== null || ending.signalCode !== null) return;
    const gone = new Promise((resolve) => ending.once('exit', resolve));
    ending.kill(signal);
    await gone;
  };
  const start = async () => {
    child = spawn(python, synapse, { cwd: folder, stdio: 'ignore' });
    await answering(url, child, folder);
  };
  await start();
  return {
    url,
    name: choice.name,
    account: (user, password) => makeAccount(url, secret, user, password),
    kill: () => end('SIGKILL'),
    start,
    stop: () => end('SIGTERM'),
  };
}

async function answering(url: string, child: ChildProcess, folder: string): Promise<void> {
  for (let tries = 0; tries < 600; tries++) {
    if (child.exitCode !== null) throw new PlainError(`The homeserver did not start.${lastWords(folder)}`);
    const answered = await fetch(`${url}/_matrix/client/versions`).then(
      (response) => response.ok,
      () => false,
    );
    if (answered) return;
    await wait(100);
  }
  throw new PlainError(`The homeserver did not answer within a minute.${lastWords(folder)}`);
}

function lastWords(folder: string): string {
  const log = join(folder, 'homeserver.log');
  return existsSync(log) ? ` Its log ends: ${readFileSync(log, 'utf8').trim().split('\n').at(-1)}` : '';
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.on('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      const port = typeof address === 'object' && address !== null ? address.port : 0;
      server.close(() => resolve(port));
    });
  });
}
