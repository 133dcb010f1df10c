import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import type { MakeDesk } from '../../bot/keeper/open-desk.ts';
import { Desk } from '../../core/desk/desk.ts';
import { temporaryFolders } from '../store/temp-folder.ts';
import { at, House, note } from './house.ts';
import { MORNING } from './morning.ts';

const tempFolder = temporaryFolders();

/** Next to nothing stays in memory: all else is in history.db. */
const makeDesk: MakeDesk = (archive) => new Desk(undefined, { archive, keep: 2, most: 4, days: 0 });

const ASKS = [
  'what has happened with tip 4?',
  'what was in load 7?',
  "today's record please",
  'load 7 failed: where did those tips go?',
];

async function morning(house: House): Promise<House> {
  for (const [minute, text] of MORNING.entries()) {
    const time = `09:${String(minute + 10).padStart(2, '0')}`;
    await house.hear(time, note(`$${minute}`, time, text));
  }
  return house;
}

/** Everything that old things are asked for, and an undo of the third note of the morning. */
async function asked(house: House): Promise<readonly string[]> {
  const before = house.posts.length;
  for (const [minute, text] of ASKS.entries()) {
    const time = `10:1${minute}`;
    await house.hear(time, note(`$ask${minute}`, time, text));
  }
  await house.hear('10:20', {
    sort: 'edit',
    id: '$edit',
    room: '!quay:example.org',
    from: '@tom:example.org',
    at: at('10:20'),
    edits: '$2',
    text: 'tip 3 on blue',
  });
  await house.hear('10:21', note('$last', '10:21', 'what has happened with tip 3?'));
  return house.posts.slice(before);
}

async function inMemory(): Promise<{ posts: readonly string[]; state: unknown }> {
  const house = await morning(new House(tempFolder()));
  const posts = await asked(house);
  const state = house.keeper.desk.exported(at('10:30'));
  house.close();
  return { posts, state };
}

test('given nearly everything is in history.db, when the program was ended, then old things are answered and corrected as before', async () => {
  const expected = await inMemory();
  const folder = tempFolder();
  (await morning(new House(folder, { makeDesk }))).close();
  const house = new House(folder, { makeDesk });
  expect(house.keeper.notices).toEqual([]);
  expect(house.keeper.desk.needsArchive).toBe(true);
  expect(await asked(house)).toEqual(expected.posts);
  expect(house.keeper.desk.exported(at('10:30'))).toEqual(expected.state);
  house.close();
});

test('given the program crashed after its last snapshot, then history.db goes back to that, and the journal tells the rest', async () => {
  const expected = await inMemory();
  const folder = tempFolder();
  const first = new House(folder, { makeDesk });
  await first.hear('09:00', note('$early', '09:00', 'wiped down green'));
  first.close();
  const second = await morning(new House(folder, { makeDesk }));
  await second.hear('09:40', {
    ...note('$gone', '09:40', ''),
    sort: 'redaction',
    redacts: '$early',
  });
  second.crash();
  const house = new House(folder, { makeDesk });
  expect(house.keeper.notices).toEqual([]);
  const posts = await asked(house);
  expect(posts.length).toBe(expected.posts.length);
  expect(house.keeper.desk.exported(at('10:30'))).toEqual(expected.state);
  house.crash();
});

test.each<[string, (path: string) => void]>([
  ['is lost', (path) => rmSync(path)],
  ['is no database', (path) => writeFileSync(path, 'x'.repeat(5_000))],
  [
    'is that of another snapshot',
    (path) => {
      const db = new DatabaseSync(path);
      db.exec("UPDATE head SET stamp = '3 abc'");
      db.close();
    },
  ],
])(
  'given history.db %s, then the record is read from its first line, and nothing is missing',
  async (_name, spoil) => {
    const expected = await inMemory();
    const folder = tempFolder();
    (await morning(new House(folder, { makeDesk }))).close();
    expect(existsSync(join(folder, 'history.db'))).toBe(true);
    spoil(join(folder, 'history.db'));
    const house = new House(folder, { makeDesk });
    expect(house.keeper.notices).toEqual([expect.stringContaining('from its first line')]);
    expect(await asked(house)).toEqual(expected.posts);
    house.close();
  },
);

test('given a name is forgotten, then history.db, which has it, is gone with the snapshot', async () => {
  const folder = tempFolder();
  const house = await morning(new House(folder, { makeDesk }));
  house.keeper.close();
  expect(existsSync(join(folder, 'history.db'))).toBe(true);
  house.store.forget({ person: '@tom:example.org' });
  expect(existsSync(join(folder, 'history.db'))).toBe(false);
  house.crash();
});
