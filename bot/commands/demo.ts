import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import type { Practice } from '../../core/practice/practice.ts';
import { toLocal } from '../../core/time/zone.ts';
import { nameOf } from '../chat/terminal/room.ts';
import { wrapped } from '../chat/terminal/wrap.ts';
import { loadPractice } from './practice-file.ts';
import { Rehearsal } from './rehearse.ts';
import { parseScriptLine } from './script-line.ts';

const PRACTICE = fileURLToPath(new URL('../../config/practices/example.yaml', import.meta.url));
const SCRIPT = fileURLToPath(new URL('../../config/demo/week.jsonl', import.meta.url));

/** Plays an invented week of the example practice and tells it as people in the chat would see it. */
export async function run(args: string[], io: { out: (line: string) => void }): Promise<number> {
  parseArgs({ args, options: {} });
  const { practice, text } = loadPractice(PRACTICE);
  const folder = mkdtempSync(join(tmpdir(), 'scanward-demo-'));
  const teller = new Teller(practice, io.out);
  const rehearsal = new Rehearsal(folder, text, (line) => teller.bot(JSON.parse(line)));
  io.out(`An invented week at ${practice.name}: two sites, three scanners, sixteen tips.`);
  try {
    const script = readFileSync(SCRIPT, 'utf8')
      .split('\n')
      .filter((line) => line !== '');
    for (const [index, line] of script.entries()) {
      const parsed = parseScriptLine(line, index + 1);
      await rehearsal.before(parsed.at);
      if (!('end' in parsed)) teller.person(JSON.parse(line));
      if (!('end' in parsed)) await rehearsal.play(parsed);
    }
    teller.flush();
  } finally {
    rehearsal.close();
    rmSync(folder, { recursive: true, force: true });
  }
  return 0;
}

interface Told {
  readonly at: string;
  readonly room: string;
  readonly [key: string]: unknown;
}

/** Tells who said what, with the site's own time in front. */
class Teller {
  readonly #practice: Practice;
  readonly #out: (line: string) => void;
  #day = '';
  /** The note just told: its reactions come on its own line, so it waits for them, and what follows waits behind it. */
  #note: { line: Told; text: string; marks: string[] } | null = null;
  #behind: [Told, string][] = [];

  constructor(practice: Practice, out: (line: string) => void) {
    this.#practice = practice;
    this.#out = out;
  }

  person(line: Told): void {
    this.flush();
    const what = typeof line.key === 'string' ? `${line.key} on the reminder` : String(line.text);
    this.#note = { line, text: `${nameOf(this.#practice, String(line.from))}: ${what}`, marks: [] };
  }

  bot(line: Told): void {
    if (line.does === 'react') {
      if (this.#note?.line.id === line.to) this.#note?.marks.push(String(line.key));
    } else if (line.does === 'edit') this.#behind.push([line, `Scanward: ${String(line.text)}`]);
    else if (line.does === 'file') this.#behind.push([line, `Scanward sends ${String(line.name)}`]);
    else if (line.does === 'post')
      this.#behind.push([line, `Scanward${this.#ring(line)}: ${String(line.text)}`]);
  }

  /** Tells what waits. */
  flush(): void {
    const note = this.#note;
    if (note !== null) this.#tell(note.line, [note.text, note.marks.join(' ')].join('  ').trimEnd());
    for (const [line, text] of this.#behind) this.#tell(line, text);
    this.#note = null;
    this.#behind = [];
  }

  #ring(line: Told): string {
    const people = Array.isArray(line.mentions) ? line.mentions : [];
    return people.map((person) => ` @${nameOf(this.#practice, String(person))}`).join('');
  }

  #tell(line: Told, text: string): void {
    const served = this.#practice.chat.find((entry) => entry.room === line.room);
    const site = this.#practice.sites.find((one) => one.id === served?.sites[0]);
    const { date, time } = toLocal(Date.parse(line.at), site?.timezone ?? this.#practice.timezone);
    if (date !== this.#day) {
      this.#day = date;
      this.#out(`\n── ${DAY.format(Date.parse(date))} ──`);
    }
    const head = `${time}  ${site?.name ?? ''}  `;
    const width = process.stdout.columns ?? null;
    // A phone has no room for a column of names: there the words begin under the time.
    const indent = ' '.repeat(width !== null && width < 90 ? 4 : head.length);
    const [first = '', ...rest] = text.split('\n');
    const [start = '', ...more] = wrapped(`${head}${first}`, width === null ? null : width - 4);
    this.#out(start);
    for (const each of more) this.#out(`    ${each}`);
    for (const each of rest.flatMap((one) => wrapped(`${indent}${one}`, width))) this.#out(each);
  }
}

const DAY = new Intl.DateTimeFormat('en-GB', {
  weekday: 'long',
  day: 'numeric',
  month: 'long',
  timeZone: 'UTC',
});
