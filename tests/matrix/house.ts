import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { vi } from 'vitest';
import { type LocalServer, localServer, type ServerChoice } from '../../bot/chat/matrix/local/server.ts';
import { factOf } from '../../bot/chat/matrix/matrix-db.ts';
import { PlainError } from '../../bot/plain-error.ts';
import { practiceText } from './practice-text.ts';

// A real homeserver on a busy machine: the patience is long, no test measures by it.
vi.setConfig({ testTimeout: 90_000, hookTimeout: 120_000 });

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const PASSWORD = 'only on this machine';

/** A homeserver with staff and the bot's account, and the bot as a process of its own. */
export class House {
  readonly server: LocalServer;
  readonly folder: string;
  readonly store: string;
  bot: ChildProcess | null = null;
  /** What the bot printed. */
  printed = '';

  private constructor(server: LocalServer, folder: string) {
    this.server = server;
    this.folder = folder;
    this.store = join(folder, 'store');
  }

  static async open(choice: Partial<ServerChoice> = {}): Promise<House> {
    const folder = mkdtempSync(join(tmpdir(), 'scanward-matrix-'));
    const server = await localServer(
      { name: 'example.org', folder: join(folder, 'server'), ...choice },
      () => undefined,
    );
    for (const user of ['scanward', 'priya', 'dan', 'tom']) await server.account(user, PASSWORD);
    return new House(server, folder);
  }

  /** Another bot's folder on the same homeserver. */
  static inside(house: House): House {
    return new House(house.server, mkdtempSync(join(house.folder, 'another-')));
  }

  get password(): string {
    return PASSWORD;
  }

  /** The recovery key that the bot showed last; empty where it showed none. */
  get recoveryKey(): string {
    return /^ {2}(\w{4}(?: \w{2,4})+)$/m.exec(this.printed)?.[1] ?? '';
  }

  /** The practice file, with chat rooms that exist. Open day and night, so that no test depends on the hour. */
  practice(rooms: readonly string[], more = ''): string {
    const path = join(this.folder, 'practice.yaml');
    writeFileSync(path, practiceText(rooms, more));
    return path;
  }

  /** Starts the bot; resolves when it listens. */
  async startBot(
    practice: string,
    environment: Record<string, string> = {},
    more: readonly string[] = [],
  ): Promise<void> {
    const bot = spawn(
      process.execPath,
      ['bot/entry.js', 'matrix', '--practice', practice, '--store', this.store, ...more],
      {
        cwd: ROOT,
        env: {
          ...process.env,
          SCANWARD_HOMESERVER: this.server.url,
          SCANWARD_USER: 'scanward',
          SCANWARD_PASSWORD: PASSWORD,
          ...environment,
        },
      },
    );
    this.bot = bot;
    await new Promise<void>((resolve, reject) => {
      const hear = (chunk: Buffer) => {
        this.printed += chunk.toString('utf8');
        if (this.printed.includes('is listening')) resolve();
      };
      this.printed = '';
      bot.stdout.on('data', hear);
      bot.stderr.on('data', hear);
      bot.once('exit', (code) => reject(new Error(`the bot ended (${code}): ${this.printed}`)));
    });
  }

  /** The bot's device as it is kept in its folder. */
  session(): Record<string, string> {
    return JSON.parse(this.fact('session') || '{}');
  }

  /** What the bot remembers in `matrix.db` under a name, as text; empty where it does not. */
  fact(name: string): string {
    const db = new DatabaseSync(join(this.store, 'matrix.db'), { readOnly: true, timeout: 1000 });
    const text = factOf(db, name) ?? '';
    db.close();
    return text;
  }

  /** Ends the bot: `SIGKILL` as a power cut would. Gives its exit code. */
  async endBot(signal: NodeJS.Signals): Promise<number | null> {
    const { bot } = this;
    this.bot = null;
    if (bot === null || bot.exitCode !== null || bot.signalCode !== null) return bot?.exitCode ?? null;
    const gone = new Promise<number | null>((resolve) => bot.once('exit', resolve));
    bot.kill(signal);
    return gone;
  }

  async close(): Promise<void> {
    await this.endBot('SIGKILL');
    await this.server.kill();
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/**
 * Whether a homeserver can be had on this machine. A person's machine without PyPI leaves these tests out and says so;
 * where `CI` is set they must run, and the failure is the test's.
 */
export async function houseIfPossible(choice: Partial<ServerChoice> = {}): Promise<House | null> {
  try {
    return await House.open(choice);
  } catch (error) {
    if (!(error instanceof PlainError) || process.env.CI) throw error;
    console.warn(`LEFT OUT, no homeserver on this machine: ${error.message}`);
    return null;
  }
}
