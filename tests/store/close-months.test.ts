import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { run } from '../../bot/commands/close-months.ts';
import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();
const turn = (at: string, by: string, text: string, more: object = {}) => ({
  at,
  turn: { by, text, ...more },
});

it('closing old months erases what was said in them and who is named no more, and leaves chain and files alone', () => {
  const folder = newFolder();
  const store = openStore(folder);
  store.append([
    turn('2019-01-05T08:00:00Z', 'Ann', 'first words', { cause: { file: 'practice: Ferngate' } }),
  ]);
  store.append([
    turn('2019-02-05T08:00:00Z', 'Ben', 'second words', { learned: [{ words: 'the gun', means: 'A' }] }),
  ]);
  store.append([turn('2019-03-05T08:00:00Z', 'Ben', 'third words')]);
  const journal = ['2019-01', '2019-02', '2019-03'].map((month) => join(folder, 'journal', `${month}.jsonl`));
  const before = journal.map((path) => readFileSync(path, 'utf8'));
  const { head } = store;
  expect(store.closeMonths('2019-01')).toEqual({ through: 0, texts: 0, people: 0 });
  expect(store.closeMonths('2019-03')).toEqual({ through: 2, texts: 2, people: 1 });
  expect(store.closeMonths('2019-03')).toEqual({ through: 2, texts: 0, people: 0 });
  expect([...store.lines()].map((line) => line.turn)).toMatchObject([
    { by: '(forgotten)', text: '(forgotten)', cause: { file: 'practice: Ferngate' } },
    { by: 'Ben', text: '(forgotten)', learned: [{ words: 'the gun' }] },
    { by: 'Ben', text: 'third words' },
  ]);
  store.close();
  expect(journal.map((path) => readFileSync(path, 'utf8'))).toEqual(before);
  expect(readFileSync(join(folder, 'texts.jsonl'), 'utf8')).not.toMatch(/first|second/);
  expect(verifyRecord(folder)).toMatchObject({ fault: null, head });
});

it('exports before it closes, and does nothing until told', async () => {
  const folder = newFolder();
  const practice = readFileSync(new URL('../../config/practices/example.yaml', import.meta.url), 'utf8');
  const store = openStore(folder);
  const used = (at: string) => ({
    what: { kind: 'held', items: ['tip:1'], when: at, reason: `odd ${at}` },
    noted: at,
    from: '@a:x.org',
    room: '',
  });
  store.append([
    {
      at: '2019-01-05T08:00:00Z',
      turn: { cause: { sort: 'practice', file: practice }, entries: [used('2019-01-05T08:00:00Z')] },
    },
  ]);
  store.append([
    {
      at: '2019-03-05T08:00:00Z',
      turn: { cause: { sort: 'tick' }, entries: [used('2019-03-05T08:00:00Z')] },
    },
  ]);
  store.close();
  const said: string[] = [];
  const io = { out: (line: string) => void said.push(line), err: () => {} };
  const file = join(newFolder(), 'old.csv');
  const args = ['--store', folder, '--before', '2019-03', '--to', file];
  expect(await run(args, io)).toBe(1);
  expect(said).toEqual(['1 entries before 2019-03. Nothing was changed: run it again with --yes.']);
  expect(await run([...args, '--yes'], io)).toBe(0);
  expect(readFileSync(file, 'utf8')).toContain('odd 2019-01-05');
  expect(readFileSync(file, 'utf8')).not.toContain('odd 2019-03-05');
  expect(readFileSync(join(folder, 'texts.jsonl'), 'utf8')).not.toContain('odd 2019-01-05');
  await expect(run([...args, '--yes'], io)).rejects.toThrow('already there');
});
