import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Practice } from '../../core/practice/practice.ts';
import { toLocal } from '../../core/time/zone.ts';
import { nameOf } from '../chat/terminal/room.ts';
import { loadPractice } from './practice-file.ts';
import { Rehearsal } from './rehearse.ts';
import { parseScriptLine } from './script-line.ts';

const PRACTICE = fileURLToPath(new URL('../../config/practices/example.yaml', import.meta.url));
const SCRIPT = fileURLToPath(new URL('../../config/demo/week.jsonl', import.meta.url));

/** Plays an invented week of the example practice and tells it as people in the chat would see it. */
export async function run(_args: string[], io: { out: (line: string) => void }): Promise<number> {
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

  constructor(practice: Practice, out: (line: string) => void) {
    this.#practice = practice;
    this.#out = out;
  }

  person(line: Told): void {
    const name = nameOf(this.#practice, String(line.from));
    const what = typeof line.key === 'string' ? `reacts ${line.key} to the reminder` : String(line.text);
    this.#tell(line, `${name}: ${what}`);
  }

  bot(line: Told): void {
    if (line.does === 'react') this.#tell(line, `Scanward reacts ${String(line.key)}`);
    else if (line.does === 'edit') this.#tell(line, `Scanward edits: ${String(line.text)}`);
    else if (line.does === 'file')
      this.#tell(line, `Scanward sends ${String(line.name)} (${String(line.bytes)} bytes)`);
    else if (line.does === 'post') this.#tell(line, `Scanward${this.#ring(line)}: ${String(line.text)}`);
  }

  #ring(line: Told): string {
    const people = Array.isArray(line.mentions) ? line.mentions : [];
    return people.map((person) => ` @${nameOf(this.#practice, String(person))}`).join('');
  }

  #tell(line: Told, text: string): void {
    const served = this.#practice.chat.find((entry) => entry.room === line.room);
    const site = this.#practice.sites.find((one) => one.id === served?.sites[0]);
    const { date, time, weekday } = toLocal(Date.parse(line.at), site?.timezone ?? this.#practice.timezone);
    if (date !== this.#day) {
      this.#day = date;
      this.#out(`\n── ${weekday} ${date} ──`);
    }
    const head = `${time} ${(site?.name ?? '').padEnd(12)} `;
    const [first = '', ...rest] = text.split('\n');
    this.#out(head + first);
    for (const more of rest) this.#out(' '.repeat(head.length + 2) + more);
  }
}
