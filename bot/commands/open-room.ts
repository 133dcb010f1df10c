import { resolve } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import {
  findPerson,
  findRoom,
  firstSeat,
  nameOf,
  roomName,
  TerminalRoom,
  whichRooms,
  whoIsThere,
} from '../chat/terminal/room.ts';
import { Screen } from '../chat/terminal/screen.ts';
import { startClock } from '../clock/clock.ts';
import { Keeper } from '../keeper/keeper.ts';
import { PlainError } from '../plain-error.ts';
import { openStore } from '../store/store.ts';
import { makeFolder } from './make-folder.ts';
import { loadPractice } from './practice-file.ts';

const EXAMPLE = fileURLToPath(new URL('../../config/practices/example.yaml', import.meta.url));

/**
 * Opens the terminal room. Standard input that is not a terminal is read to its end and answered; everything is kept
 * either way. Returns the exit code.
 */
export async function run(args: string[]): Promise<number> {
  const { values } = parseArgs({
    args,
    options: {
      practice: { type: 'string' },
      store: { type: 'string' },
      as: { type: 'string' },
      chat: { type: 'string' },
    },
  });
  const { practice, text } = loadPractice(values.practice ?? EXAMPLE);
  const seat = firstSeat(practice);
  if (values.as !== undefined)
    seat.person = chosen(findPerson(practice, values.as), values.as, whoIsThere(practice));
  if (values.chat !== undefined)
    seat.room = chosen(findRoom(practice, values.chat), values.chat, whichRooms(practice));
  const folder = resolve(values.store ?? (values.practice === undefined ? 'data/example' : 'data/practice'));
  makeFolder(folder);
  const store = openStore(folder);
  const print = (line: string) => console.log(line);
  const keeper = new Keeper(store, { count: () => performance.now(), say: print });
  const screen = new Screen(
    print,
    seat.room,
    { person: (id) => nameOf(practice, id), room: (id) => roomName(practice, id) },
    () => process.stdout.columns ?? null,
  );
  const room = new TerminalRoom({ practice, keeper, screen, print, now: Date.now }, seat);
  print(`${practice.name}. The record is kept in ${folder}.`);
  for (const notice of [
    ...store.notices,
    ...keeper.notices,
    ...(store.readOnly === null ? [] : [store.readOnly]),
  ])
    print(notice);
  try {
    keeper.settle(text, Date.now());
    if (process.stdin.isTTY) await talk(room, keeper, print);
    else await readAll(room);
    keeper.close();
  } finally {
    store.close();
  }
  return 0;
}

async function readAll(room: TerminalRoom): Promise<void> {
  await room.wake();
  for await (const line of createInterface({ input: process.stdin })) {
    console.log(`${room.prompt}${line.length > 200 ? `${line.slice(0, 199)}…` : line}`);
    if (!(await room.type(line))) return;
  }
}

async function talk(room: TerminalRoom, keeper: Keeper, print: (line: string) => void): Promise<void> {
  print('Type a note, or "help".');
  print('/keys: replies, reactions, edits. /quit: leave.');
  const lines = createInterface({ input: process.stdin, output: process.stdout, prompt: room.prompt });
  const wake = () => {
    void room.wake().then(() => lines.prompt(true));
  };
  const clock = startClock(wake, () => keeper.next(Date.now()));
  await room.wake();
  lines.prompt();
  for await (const line of lines) {
    if (!(await room.type(line))) break;
    clock.reset();
    lines.setPrompt(room.prompt);
    lines.prompt();
  }
  clock.stop();
  lines.close();
}

function chosen(found: string | null, wanted: string, known: string): string {
  if (found === null) throw new PlainError(`“${wanted}” is not in the practice file. ${known}`);
  return found;
}
