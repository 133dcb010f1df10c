import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { passwordLogin } from '../password-login.ts';

/** A phone's screen in points. */
const WIDTH = 390;
const HEIGHT = 844;

/** What has to be there: a Matrix client, a screen without a monitor, a hand, a camera (Debian's packages of these names). */
const NEEDED = ['nheko', 'Xvfb', 'openbox', 'xdotool', 'import', 'dbus-run-session'];

/** Which of the programs needed are not on this machine. */
export function missingPrograms(): readonly string[] {
  return NEEDED.filter((name) => {
    try {
      execFileSync('which', [name], { stdio: 'ignore' });
      return false;
    } catch {
      return true;
    }
  });
}

/** Who looks, and how. */
export interface Onlooker {
  readonly url: string;
  readonly user: string;
  readonly password: string;
  readonly theme: 'light' | 'dark';
  /** Of its own for each, in which the client keeps what it keeps. */
  readonly folder: string;
  readonly display: number;
}

/** A real client on a screen of a phone's size that nobody sees. */
export class Screen {
  readonly #display: string;
  readonly #children: ChildProcess[] = [];

  constructor(display: number) {
    this.#display = `:${display}`;
  }

  /** Starts the client, at its first time with a new device that is signed in by writing its settings. One at a time. */
  static async open(onlooker: Onlooker): Promise<Screen> {
    const screen = new Screen(onlooker.display);
    const environment = await settled(onlooker);
    screen.#begin('Xvfb', [screen.#display, '-screen', '0', `${WIDTH}x${HEIGHT}x24`], environment);
    await wait(1500);
    screen.#begin('openbox', [], environment);
    screen.#begin('dbus-run-session', ['--', 'nheko'], environment);
    for (let tries = 0; tries < 120; tries++) {
      await wait(1000);
      try {
        const window = screen.hand('search', '--onlyvisible', '--class', 'nheko').trim().split('\n')[0] ?? '';
        screen.hand('windowsize', window, String(WIDTH), String(HEIGHT), 'windowmove', window, '0', '0');
        break;
      } catch {
        // No window yet.
      }
    }
    return screen;
  }

  /** Clicks, types or presses keys, as xdotool has it; gives what that prints. */
  hand(...args: readonly string[]): string {
    return execFileSync('xdotool', args, {
      env: { ...process.env, DISPLAY: this.#display },
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  }

  /** Takes a picture of the whole screen once it has come to rest. */
  async picture(path: string): Promise<void> {
    await wait(2500);
    execFileSync('import', ['-display', this.#display, '-window', 'root', path]);
  }

  /** Ends the client and its screen; what the client keeps stays for the next time. */
  async close(): Promise<void> {
    for (const { pid } of this.#children.reverse()) {
      // Each has begun a group of its own: what it began ends with it.
      if (pid !== undefined) process.kill(-pid, 'SIGTERM');
      await wait(1000);
    }
  }

  #begin(program: string, args: readonly string[], environment: Record<string, string>): void {
    const env = { ...process.env, ...environment, DISPLAY: this.#display };
    this.#children.push(spawn(program, args, { env, stdio: 'ignore', detached: true }));
  }
}

async function settled({ url, user, password, theme, folder }: Onlooker): Promise<Record<string, string>> {
  const config = join(folder, 'config');
  const environment = {
    HOME: folder,
    XDG_CONFIG_HOME: config,
    XDG_DATA_HOME: join(folder, 'data'),
    XDG_CACHE_HOME: join(folder, 'cache'),
    QT_QUICK_BACKEND: 'software',
    LIBGL_ALWAYS_SOFTWARE: '1',
  };
  // The same device as the last time.
  if (existsSync(config)) return environment;
  const { access_token, device_id, user_id } = await passwordLogin(url, user, password, `phone, ${theme}`);
  mkdirSync(join(config, 'nheko'), { recursive: true });
  const settings = `[General]
run_without_secure_secrets_service=true
disable_certificate_validation=true

[auth]
access_token=${access_token}
device_id=${device_id}
home_server=${url}
user_id=${user_id}

[user]
theme=${theme}
font_size=11
mobile_mode=false
alert_on_notification=false
desktop_notifications=false
currentProfile=
`;
  writeFileSync(join(config, 'nheko', 'nheko.conf'), settings, { mode: 0o600 });
  return environment;
}
