import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** A bot that runs; resolves when it says that it listens. */
export async function begin(args: readonly string[], account: Record<string, string>): Promise<ChildProcess> {
  const bot = spawn(process.execPath, args, { cwd: ROOT, env: { ...process.env, ...account } });
  await new Promise<void>((resolve, reject) => {
    let printed = '';
    const hear = (chunk: Buffer) => {
      printed += chunk.toString('utf8');
      if (printed.includes('is listening')) resolve();
    };
    bot.stdout.on('data', hear);
    bot.stderr.on('data', hear);
    bot.once('exit', (code) => reject(new Error(`${args[0]} ended (${code}): ${printed}`)));
  });
  return bot;
}

/** Ends it as a service manager would. */
export async function end(bot: ChildProcess): Promise<void> {
  const gone = new Promise((resolve) => bot.once('exit', resolve));
  bot.kill('SIGTERM');
  await gone;
}

/** Memory that a process holds (resident), MiB; NaN where the system does not say it this way. */
export function residentMib({ pid }: ChildProcess): number {
  try {
    const [, kib] = /^VmRSS:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? [];
    return Number(kib) / 1024;
  } catch {
    return Number.NaN;
  }
}

/** Processor time that a process has used, ms; NaN where the system does not say it this way. */
export function processorMs({ pid }: ChildProcess): number {
  try {
    const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]?.split(' ') ?? [];
    // Fields 14 and 15 of proc(5), in ticks of 10 ms.
    return (Number(fields[11]) + Number(fields[12])) * 10;
  } catch {
    return Number.NaN;
  }
}
