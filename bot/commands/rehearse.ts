import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { RehearsalChat } from '../chat/rehearsal.ts';
import type { Heard } from '../keeper/heard.ts';
import { Keeper } from '../keeper/keeper.ts';
import { PlainError } from '../plain-error.ts';
import { openStore, type Store } from '../store/store.ts';
import { makeFolder } from './make-folder.ts';
import { loadPractice } from './practice-file.ts';
import { parseScriptLine, type ScriptLine } from './script-line.ts';

export interface RehearseIo {
  /** Lines of the script. */
  readonly input: AsyncIterable<string>;
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}

/**
 * Plays a script against the whole bot on a clock that the script drives, and prints whatever the bot does, a JSON
 * object a line. Deterministic to the byte: nothing in it knows the real time. Returns the exit code.
 */
export async function run(args: string[], io: RehearseIo): Promise<number> {
  const { values } = parseArgs({
    args,
    options: { practice: { type: 'string' }, store: { type: 'string' } },
  });
  if (values.practice === undefined)
    throw new PlainError('rehearse needs --practice FILE, a practice file in YAML.');
  const folder = values.store ?? mkdtempSync(join(tmpdir(), 'scanward-'));
  makeFolder(folder);
  const rehearsal = new Rehearsal(folder, loadPractice(values.practice).text, io.out);
  let number = 0;
  for await (const text of io.input) {
    number += 1;
    if (text.trim() === '') continue;
    await rehearsal.play(parseScriptLine(text, number));
  }
  rehearsal.close();
  return 0;
}

/** One rehearsal: a bot, a chat that outlives it, and a clock that only goes where the script says. */
export class Rehearsal {
  readonly #folder: string;
  readonly #practice: string;
  readonly #out: (line: string) => void;
  readonly #chat: RehearsalChat;
  #now = 0;
  #bot: { store: Store; keeper: Keeper } | null = null;
  /** While the bot is down: when it comes back, and what is waiting for it then. */
  #down: { back: number; waiting: Heard[] } | null = null;

  constructor(folder: string, practiceText: string, out: (line: string) => void) {
    this.#folder = folder;
    this.#practice = practiceText;
    this.#out = out;
    this.#chat = new RehearsalChat(out, () => this.#now);
  }

  /** Lets the clock run up to a line that is played next. */
  async before(instant: number): Promise<void> {
    await this.#until(instant);
  }

  async play(line: ScriptLine): Promise<void> {
    await this.#until(line.at);
    if ('end' in line) await this.#end();
    else if ('restart' in line) await this.#restart(line.back ?? line.at);
    else await this.#hear(line);
  }

  close(): void {
    this.#bot?.keeper.close();
    this.#bot?.store.close();
    this.#bot = null;
  }

  /** Lets the clock run to `instant` through every moment at which something falls due. */
  async #until(instant: number): Promise<void> {
    if (this.#down !== null && this.#down.back <= instant) {
      this.#now = Math.max(this.#now, this.#down.back);
      await this.#comeBack(this.#down.waiting);
    }
    if (this.#down !== null) {
      this.#now = instant;
      return;
    }
    if (this.#bot === null) await this.#start(instant);
    const keeper = this.#running();
    for (let next = keeper.next(this.#now); next !== null && next <= instant; next = keeper.next(this.#now)) {
      this.#now = next;
      keeper.wake(next);
      await keeper.send(this.#chat);
    }
    this.#now = Math.max(this.#now, instant);
  }

  async #hear(line: Exclude<ScriptLine, { end: true } | { restart: true }>): Promise<void> {
    const heard = line.heard((room, about) => this.#chat.latest(room, about));
    if (heard === null) return;
    if (this.#down !== null) {
      this.#down.waiting.push(heard);
      return;
    }
    this.#running().receive([heard]);
    await this.#workAndSend();
  }

  async #workAndSend(): Promise<void> {
    const keeper = this.#running();
    keeper.work(this.#now);
    await keeper.send(this.#chat);
    keeper.wake(this.#now);
    await keeper.send(this.#chat);
  }

  async #start(instant: number): Promise<void> {
    this.#now = instant;
    const store = openStore(this.#folder);
    this.#bot = { store, keeper: new Keeper(store) };
    this.#chat.resume(
      this.#bot.keeper.desk.posts().flatMap(({ key, room, about }) => {
        const id = store.transport.eventIdOf(key);
        return id === null ? [] : [{ room, about, id }];
      }),
    );
    this.#bot.keeper.settle(this.#practice, instant);
    await this.#workAndSend();
  }

  async #restart(back: number): Promise<void> {
    this.close();
    this.#down = { back, waiting: this.#down?.waiting ?? [] };
    if (back <= this.#now) await this.#comeBack(this.#down.waiting);
  }

  async #comeBack(waiting: readonly Heard[]): Promise<void> {
    this.#down = null;
    const store = openStore(this.#folder);
    this.#bot = { store, keeper: new Keeper(store) };
    this.#bot.keeper.receive(waiting);
    this.#bot.keeper.settle(this.#practice, this.#now);
    await this.#workAndSend();
  }

  /** A script that ends while the bot is down has it back for its last word. */
  async #end(): Promise<void> {
    if (this.#down !== null) await this.#comeBack(this.#down.waiting);
    this.#out(JSON.stringify({ state: this.#running().desk.exported(this.#now) }));
  }

  #running(): Keeper {
    if (this.#bot === null) throw new PlainError('The bot is down: give its restart an earlier "back".');
    return this.#bot.keeper;
  }
}
