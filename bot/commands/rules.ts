import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { ruleSections } from '../../core/defaults/rule-table.ts';
import { PlainError } from '../plain-error.ts';
import { loadPractice } from './practice-file.ts';
import { ruleLines, siteLines } from './rule-lines.ts';

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
    io.out(
      'Each line: rule, value, where it comes from, what it is for. "Assumed" is a default of ours: check that it suits you.',
    );
    io.out("Makers' instructions, the autoclave's validated cycles and local codes come first.");
    for (const [title, section] of Object.entries(ruleSections)) {
      io.out('');
      io.out(title);
      for (const line of ruleLines(practice, section)) io.out(line);
    }
    const assumed = siteLines(practice);
    if (assumed.length > 0) io.out('');
    for (const line of assumed) io.out(line);
    return 0;
  } catch (error) {
    if (!(error instanceof PlainError)) throw error;
    io.err(error.message);
    return 1;
  }
}
