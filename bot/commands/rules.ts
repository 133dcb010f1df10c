import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { ruleLines } from '../../core/answers/rule-lines.ts';
import { PlainError } from '../plain-error.ts';
import { loadPractice } from './practice-file.ts';

/** Where a command writes: one call, one line. */
export interface CommandIo {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

const USAGE = 'Usage: rules --practice FILE';
const EXAMPLE = fileURLToPath(new URL('../../config/practices/example.yaml', import.meta.url));

/** Prints every rule in force for a practice (`--practice FILE`, else the example) with where it comes from. Exit code: 0, 1 (bad file), 2 (bad use). */
export async function run(args: string[], io: CommandIo): Promise<number> {
  let file: string | undefined;
  try {
    const { values } = parseArgs({
      args,
      options: { practice: { type: 'string' }, help: { type: 'boolean' } },
    });
    if (values.help) {
      io.out(USAGE);
      return 0;
    }
    file = values.practice;
  } catch (error) {
    io.err(error instanceof Error ? error.message : String(error));
    io.err(USAGE);
    return 2;
  }
  try {
    const { practice } = loadPractice(file ?? EXAMPLE);
    io.out(`Rules in force at ${practice.name}${file === undefined ? ' (the example practice)' : ''}`);
    for (const line of ruleLines(practice)) io.out(line);
    return 0;
  } catch (error) {
    if (!(error instanceof PlainError)) throw error;
    io.err(error.message);
    return 1;
  }
}
