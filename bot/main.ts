import { createInterface } from 'node:readline';
import { PlainError } from './plain-error.ts';

const out = (line: string) => {
  process.stdout.write(`${line}\n`);
};
const err = (line: string) => {
  process.stderr.write(`${line}\n`);
};
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
  try {
    return await command(named.args);
  } catch (error) {
    if (!(error instanceof Error) || !isPlain(error)) throw error;
    err(error.message);
    return 1;
  }
}

/** Mistakes that a person can put right are shown as one line; everything else is ours and keeps its stack. */
function isPlain(error: Error): boolean {
  const code = 'code' in error ? String(error.code) : '';
  return error instanceof PlainError || /^Store/.test(error.name) || code.startsWith('ERR_PARSE_ARGS');
}
