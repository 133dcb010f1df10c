import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Rehearsal } from '../../bot/commands/rehearse.ts';
import { parseScriptLine } from '../../bot/commands/script-line.ts';

/** What a command printed, and the exit code it gave. */
export interface Printed {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

type Command = (
  args: string[],
  io: { out: (line: string) => void; err: (line: string) => void },
) => Promise<number>;

/** Runs a command as it is typed, and gives back what it printed. */
export async function typed(command: Command, ...args: string[]): Promise<Printed> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await command(args, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out: out.join('\n'), err: err.join('\n') };
}

/** A new folder under the machine's temporary one, and how to take it away. */
export function folderForTests(): { readonly path: string; remove(): void } {
  const path = mkdtempSync(join(tmpdir(), 'scanward-commands-'));
  return { path, remove: () => rmSync(path, { recursive: true }) };
}

/** Plays the demo's week into a folder: a record of some seventy turns by six people at two sites. */
export async function playWeek(folder: string): Promise<void> {
  const practice = readFileSync('config/practices/example.yaml', 'utf8');
  const rehearsal = new Rehearsal(folder, practice, () => undefined);
  try {
    for (const [index, line] of readFileSync('config/demo/week.jsonl', 'utf8').trim().split('\n').entries()) {
      const parsed = parseScriptLine(line, index + 1);
      if (!('end' in parsed)) await rehearsal.play(parsed);
    }
  } finally {
    rehearsal.close();
  }
}
