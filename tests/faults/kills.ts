import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { openStore } from '../../bot/store/store.ts';
import { verifyAll } from './verify-all.ts';

/** Who is killed: the store with a bot in small on it, or the whole bot without its chat, with history.db. */
const writers = {
  store: fileURLToPath(new URL('writer.ts', import.meta.url)),
  bot: fileURLToPath(new URL('bot-writer.ts', import.meta.url)),
};
type Writer = keyof typeof writers;

/** What came of killing a writer again and again on one folder. */
export interface Kills {
  kills: number;
  answered: number;
  entries: number;
  /** Unfinished lines that were set aside on the way. */
  setAside: number;
  /** Starts at which history.db, of the line before, was worked out again. */
  rebuilt: number;
}

/**
 * Starts a writer on `folder`, kills it with -9 at a random moment (`random`: 0 to 1), and again, `kills` times.
 * Then every entry that was answered must be in the record, none twice, in order, and the chain whole; throws where
 * not. Some kills come while it starts, some under load.
 */
export async function killAgainAndAgain(
  folder: string,
  kills: number,
  random: () => number,
  writer: Writer = 'store',
): Promise<Kills> {
  const answered = new Set<string>();
  let setAside = 0;
  let rebuilt = 0;
  for (let kill = 0; kill <= kills; kill++) {
    // The last is let live, until it has nothing left to answer.
    const said = kill < kills ? await runAndKill(folder, random, writer) : await runToEnd(folder, writer);
    for (const line of said) {
      if (line.startsWith('said ')) answered.add(line.slice(5));
      else if (line.includes('unfinished line')) setAside++;
      else if (line.includes('history.db')) rebuilt++;
      else if (line !== '') throw new Error(`After kill ${kill}: ${line}`);
    }
  }
  const entries = checkRecord(folder, answered);
  return { kills, answered: answered.size, entries, setAside, rebuilt };
}

/** Runs the writer until it stops by itself: with no new notes, it finishes what was begun. */
async function runToEnd(folder: string, writer: Writer): Promise<string[]> {
  const child = spawn(process.execPath, [writers[writer], folder, '0'], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let out = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  await once(child, 'close');
  return out.split('\n').slice(0, -1);
}

/** About how long a writer takes until it opens the folder, ms. */
const startsIn = { store: 75, bot: 600 };

/** Runs the writer until a random moment; gives what it said in whole lines. */
async function runAndKill(folder: string, random: () => number, writer: Writer): Promise<string[]> {
  const child = spawn(process.execPath, [writers[writer], folder, '10000000'], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let trouble = '';
  const start = (): void => void setTimeout(() => child.kill('SIGKILL'), random() * 100);
  // One in four is killed at a moment counted from its birth, so while it opens the folder.
  if (random() < 0.25) setTimeout(() => child.kill('SIGKILL'), startsIn[writer] * (0.8 + random()));
  else child.stdout.once('data', start);
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    trouble += text;
  });
  await once(child, 'close');
  if (trouble !== '') throw new Error(trouble);
  return out.split('\n').slice(0, -1);
}

function checkRecord(folder: string, answered: ReadonlySet<string>): number {
  const { fault } = verifyAll(folder);
  if (fault !== null && !fault.includes('cut off')) throw new Error(fault);
  const store = openStore(folder);
  try {
    const events: string[] = [];
    for (const line of store.lines()) {
      const event = /\$event\d+/.exec(JSON.stringify(line.turn))?.[0];
      // The practice file, and what fell due, are nobody's note.
      if (event !== undefined) events.push(event);
    }
    const wrong = events.findIndex((event, i) => event !== `$event${i}`);
    if (wrong !== -1) throw new Error(`Note ${wrong + 1} is ${events[wrong]}: lost, twice or out of order.`);
    const lost = [...answered].filter((event) => !events.includes(event));
    const silent = events.filter((event) => !answered.has(event));
    if (silent.length > 0)
      throw new Error(`In the record and never answered: ${silent.slice(0, 5).join(' ')}`);
    if (lost.length > 0) throw new Error(`Answered and not in the record: ${lost.slice(0, 5).join(' ')}`);
    return events.length;
  } finally {
    store.close();
  }
}
