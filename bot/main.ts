import { createInterface } from 'node:readline';
import { howToCall, usageOf } from './commands/usage.ts';
import { PlainError } from './plain-error.ts';

const out = (line: string) => {
  process.stdout.write(`${line}\n`);
};
const err = (line: string) => {
  process.stderr.write(`${line}\n`);
};
// Whoever reads may stop early, as `head` does: that is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(0);
});
const lines = () => createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });

/** Commands by name; each is loaded only when it is asked for, so that `read` starts fast. */
const COMMANDS: Readonly<Record<string, (args: string[]) => Promise<number>>> = {
  room: async (args) => (await import('./commands/open-room.ts')).run(args),
  matrix: async (args) => (await import('./commands/matrix.ts')).run(args, { out, err }),
  homeserver: async (args) => (await import('./commands/homeserver.ts')).run(args, { out, err }),
  read: async (args) => (await import('./commands/read.ts')).run(args, { input: lines(), out, err }),
  rehearse: async (args) => (await import('./commands/rehearse.ts')).run(args, { input: lines(), out, err }),
  demo: async (args) => (await import('./commands/demo.ts')).run(args, { out }),
  rules: async (args) => (await import('./commands/rules.ts')).run(args, { out, err }),
  health: async (args) => (await import('./commands/health.ts')).run(args, { out, err }),
  verify: async (args) => (await import('./commands/verify.ts')).run(args, { out, err }),
  repair: async (args) => (await import('./commands/repair.ts')).run(args, { out, err }),
  backup: async (args) => (await import('./commands/backup.ts')).run(args, { out, err }),
  restore: async (args) => (await import('./commands/restore.ts')).run(args, { out, err }),
  rebuild: async (args) => (await import('./commands/rebuild.ts')).run(args, { out, err }),
  forget: async (args) => (await import('./commands/forget.ts')).run(args, { out, err }),
  'close-months': async (args) => (await import('./commands/close-months.ts')).run(args, { out, err }),
  export: async (args) => (await import('./commands/export.ts')).run(args, { out, err }),
};

/** Which chat, which store, which clock: runs the command that was asked for and gives its exit code. */
export async function main(args: string[]): Promise<number> {
  const [first = 'room', ...rest] = args;
  const named = first.startsWith('-') ? { name: 'room', args } : { name: first, args: rest };
  const command = COMMANDS[named.name];
  if (command === undefined) {
    err(`"${first}" is not a command. There are: ${Object.keys(COMMANDS).join(', ')}.`);
    return 2;
  }
  if (named.args.some((arg) => arg === '--help' || arg === '-h')) {
    for (const line of usageOf(named.name)) out(line);
    return 0;
  }
  try {
    return await command(named.args);
  } catch (error) {
    if (!(error instanceof Error) || !isPlain(error)) throw error;
    err(inPlainWords(error, named.name));
    return 1;
  }
}

/** Node's own words for options say little: ours say where the options are listed. */
function inPlainWords(error: Error, command: string): string {
  const code = 'code' in error ? String(error.code) : '';
  if (!code.startsWith('ERR_PARSE_ARGS')) return error.message;
  const [, what = ''] = /'([^']+)'/.exec(error.message) ?? [];
  const wrong = code.endsWith('INVALID_OPTION_VALUE')
    ? `${what.split(/[ ,]/).find((word) => word.startsWith('--')) ?? 'An option'} is not complete.`
    : `"${what}" is not known here.`;
  return `${wrong} ${howToCall(command)} -- --help lists what there is.`;
}

/** Mistakes that a person can put right are shown as one line; everything else is ours and keeps its stack. */
function isPlain(error: Error): boolean {
  const code = 'code' in error ? String(error.code) : '';
  return error instanceof PlainError || /^Store/.test(error.name) || code.startsWith('ERR_PARSE_ARGS');
}
