import { cpSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { sumOfRow } from '../../bot/store/history/sums.ts';
import { openStore } from '../../bot/store/store.ts';
import { keepMorning } from '../faults/old-things.ts';
import { verifyAll } from '../faults/verify-all.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();

type Cell = string | number | null;

/** Does something to history.db and gives every row its right sum again, as somebody would who knows of them. */
function tamper(folder: string, sql: string): void {
  const db = new DatabaseSync(join(folder, 'history.db'));
  db.function('sum_of', { varargs: true }, (...parts) => sumOfRow(...(parts as Cell[])));
  expect(db.prepare(sql).run().changes).toBeGreaterThan(0);
  db.exec('UPDATE row SET sum = sum_of(list, at, key, body, base)');
  db.exec('UPDATE value SET sum = sum_of(map, key, base, body)');
  db.exec('UPDATE entry SET sum = sum_of(at, turn, place, about, body)');
  db.exec('UPDATE item SET sum = sum_of(item, at, turn, place)');
  db.exec('UPDATE base SET sum = sum_of(number, at, turn, place, body)');
  db.close();
}

async function aMorning(): Promise<string> {
  const folder = newFolder();
  await keepMorning(folder);
  return folder;
}

test('given nobody touched it, then every row of history.db is what the record gives', async () => {
  expect(verifyAll(await aMorning())).toMatchObject({
    fault: null,
    snapshot: 'a full refold',
    history: true,
  });
});

test.each([
  [
    'an entry is another tip',
    `UPDATE entry SET body = replace(body, '"4"', '"6"') WHERE turn = 12`,
    /entry 12\.0/,
  ],
  ['an entry is gone', 'DELETE FROM entry WHERE turn = 12', /entry 12\.0/],
  ['an entry is later', 'UPDATE entry SET at = at + 1000 WHERE turn = 12', /the entry 12\.0/],
  [
    'what speaks of a tip is gone',
    "DELETE FROM item WHERE item = 'tip:4' AND turn = 12",
    /tip:4 in the entry 12\.0/,
  ],
  ['a use is gone', "DELETE FROM row WHERE list LIKE 'uses/6'", /row 0 of uses\/6/],
  [
    'a finding is one too many',
    "INSERT INTO row SELECT 'uses/9', 0, key, body, base, 0 FROM row WHERE list = 'uses/6'",
    /row 0 of uses\/9/,
  ],
  ['a load is hotter', `UPDATE value SET body = replace(body, '134', '135') WHERE map = 'loads'`, /of loads/],
  ['a state to go back to', `UPDATE base SET body = replace(body, '"tip":"4"', '"tip":"6"')`, /state number/],
])('given %s, then verify says which', async (_, sql, said) => {
  const folder = await aMorning();
  tamper(folder, sql);
  expect(verifyAll(folder).fault).toMatch(said);
});

test('given a row was changed and its sum was not, then that is damage', async () => {
  const folder = await aMorning();
  const db = new DatabaseSync(join(folder, 'history.db'));
  db.exec(`UPDATE entry SET body = replace(body, '"4"', '"6"') WHERE turn = 12`);
  db.close();
  expect(verifyAll(folder).fault).toContain('history.db: it is damaged');
});

test.each<[string, (path: string) => void]>([
  ['is gone', (path) => rmSync(path)],
  ['is no database', (path) => writeFileSync(path, 'nothing')],
])('given it %s, then it does not fit', async (_, spoil) => {
  const folder = await aMorning();
  spoil(join(folder, 'history.db'));
  expect(verifyAll(folder).fault).toContain('history.db does not fit the snapshot');
});

test('given it is of a copy, then it does not fit', async () => {
  const folder = await aMorning();
  const earlier = newFolder();
  await keepMorning(earlier, 10);
  cpSync(join(earlier, 'history.db'), join(folder, 'history.db'));
  expect(verifyAll(folder).fault).toContain('history.db does not fit the snapshot');
});

test('given a small record has none, then nobody misses it', () => {
  const folder = newFolder();
  openStore(folder).close();
  expect(verifyAll(folder)).toMatchObject({ fault: null, history: false });
});
