import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { type SqliteFailure, withFailingSqlite } from './failing-sqlite.ts';
import { type Asked, askOldThings, keepMorning, stateOf } from './old-things.ts';
import { verifyAll } from './verify-all.ts';

/** Something done to a folder behind the program's back. */
interface Spoiling {
  readonly what: string;
  readonly spoil: (folder: string) => void;
}

/** How often history.db was spoilt, and how often that was noticed: much of a database is empty or never asked for. */
export interface Spoilt {
  runs: number;
  noticed: number;
}

/**
 * Spoils history.db in every way and asks for old things after each: every answer, and the state, must be as if it had not
 * been touched; at most one notice, in plain words; the record verifies, and the next start is quiet. Throws where not.
 * `stride`: of the bytes, every how many-th is flipped, and cut at.
 */
export async function spoilHistory(work: string, stride: number): Promise<Spoilt> {
  const whole = join(work, 'whole');
  await keepMorning(whole, 10);
  cpSync(join(whole, 'history.db'), join(work, 'old.db'));
  await keepMorning(whole);
  const expected = await askedIn(work, whole, () => undefined);
  const other = join(work, 'other');
  await keepMorning(other, 12);
  const found: Spoilt = { runs: 0, noticed: 0 };
  for (const { what, spoil } of [...ofFiles(work, other), ...ofBytes(whole, stride)]) {
    const asked = await askedIn(work, whole, spoil);
    found.runs += 1;
    if (asked.notices.length > 0) found.noticed += 1;
    if (asked.notices.length > 1 || asked.notices.some((notice) => !notice.includes('history.db')))
      throw new Error(`${what}: told ${asked.notices.join(' | ')}`);
    if (!isDeepStrictEqual(asked.posts, expected.posts)) throw new Error(`${what}: other answers`);
    if (!isDeepStrictEqual(asked.state, expected.state)) throw new Error(`${what}: another state`);
  }
  return found;
}

async function askedIn(work: string, whole: string, spoil: (folder: string) => void): Promise<Asked> {
  const folder = join(work, 'spoilt');
  rmSync(folder, { recursive: true, force: true });
  cpSync(whole, folder, { recursive: true });
  spoil(folder);
  const asked = await askOldThings(folder);
  const { fault } = verifyAll(folder);
  if (fault !== null) throw new Error(fault);
  return asked;
}

function* ofFiles(work: string, other: string): Generator<Spoiling> {
  const file = (folder: string) => join(folder, 'history.db');
  yield { what: 'removed', spoil: (folder) => rmSync(file(folder)) };
  yield { what: 'emptied', spoil: (folder) => writeFileSync(file(folder), '') };
  yield { what: 'no database', spoil: (folder) => writeFileSync(file(folder), 'x'.repeat(5_000)) };
  yield { what: 'of another practice', spoil: (folder) => cpSync(file(other), file(folder)) };
  yield {
    what: 'with a log that is none',
    spoil: (folder) => writeFileSync(`${file(folder)}-wal`, 'y'.repeat(5_000)),
  };
  yield { what: 'of a copy of the folder', spoil: (folder) => cpSync(join(work, 'old.db'), file(folder)) };
}

function* ofBytes(whole: string, stride: number): Generator<Spoiling> {
  const bytes = readFileSync(join(whole, 'history.db'));
  for (let place = 0; place < bytes.length; place += stride) {
    const flipped = Buffer.from(bytes);
    flipped[place] = (flipped[place] ?? 0) ^ (1 << (place % 7));
    yield {
      what: `bit ${place % 7} of byte ${place}`,
      spoil: (folder) => writeFileSync(join(folder, 'history.db'), flipped),
    };
  }
  for (let place = 1; place < bytes.length; place += stride * 16)
    yield {
      what: `cut at byte ${place}`,
      spoil: (folder) => writeFileSync(join(folder, 'history.db'), bytes.subarray(0, place)),
    };
}

const FAILURES: readonly SqliteFailure[] = [
  { errcode: 13, forGood: false, rollsBack: true }, // the disk is full
  { errcode: 13, forGood: true, rollsBack: true },
  { errcode: 10, forGood: false, rollsBack: false }, // a fault of the disk
  { errcode: 10, forGood: true, rollsBack: true },
  { errcode: 8, forGood: true, rollsBack: false }, // it can only be read
  { errcode: 14, forGood: true, rollsBack: false }, // it cannot be opened
  { errcode: 11, forGood: false, rollsBack: false }, // it is damaged
];

/**
 * Lets each call of SQLite's on history.db fail in turn while a morning is kept and asked about: the answers and the state
 * must be as ever, whatever the owner of the machine was told was plain, and with the disk well again so is the next start.
 * Throws where not; gives how many runs. `stride` skips calls.
 */
export async function failHistory(work: string, stride: number): Promise<number> {
  const expected = await keptAndAsked(join(work, 'well'));
  let runs = 0;
  for (const [number, failure] of FAILURES.entries())
    for (let at = number % stride; ; at += stride) {
      const where = `SQLite's ${JSON.stringify(failure)} at call ${at}`;
      const folder = join(work, 'failing');
      rmSync(folder, { recursive: true, force: true });
      let asked = expected;
      const calls = await withFailingSqlite('history.db', at, failure, async () => {
        asked = await keptAndAsked(folder);
      });
      if (calls <= at) break;
      runs += 1;
      checkAsked(asked, expected, where);
      checkState(await stateOf(folder), expected, where);
      const { fault } = verifyAll(folder);
      if (fault !== null) throw new Error(`${where}: ${fault}`);
    }
  return runs;
}

async function keptAndAsked(folder: string): Promise<Asked> {
  await keepMorning(folder);
  return askOldThings(folder);
}

/** The rooms may have been told that nothing can be written; everything else is said once and in order. */
function checkAsked(asked: Asked, expected: Asked, where: string): void {
  const posts = asked.posts.filter((text) => !text.startsWith('I can write nothing down just now.'));
  if (!isDeepStrictEqual(posts, expected.posts)) throw new Error(`${where}: other answers`);
  checkState(asked.state, expected, where);
  for (const notice of asked.notices)
    if (!/^(?:[A-Z]|history\.db,).*[.]$/.test(notice)) throw new Error(`${where}: not plain: ${notice}`);
}

function checkState(state: unknown, expected: Asked, where: string): void {
  if (!isDeepStrictEqual(state, expected.state)) throw new Error(`${where}: another state`);
}
