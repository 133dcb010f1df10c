import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { openMatrixDb, setFact } from '../../bot/chat/matrix/matrix-db.ts';
import { run as backup } from '../../bot/commands/backup.ts';
import { run as closeMonths } from '../../bot/commands/close-months.ts';
import { run as exportRecord } from '../../bot/commands/export.ts';
import { run as forget } from '../../bot/commands/forget.ts';
import { run as rebuild } from '../../bot/commands/rebuild.ts';
import { run as repair } from '../../bot/commands/repair.ts';
import { run as restore } from '../../bot/commands/restore.ts';
import { run as verify } from '../../bot/commands/verify.ts';
import { folderForTests, playWeek, typed } from './small-record.ts';

// Each command as a person types it, over the record that the demo's week leaves behind.

const here = folderForTests();
const week = join(here.path, 'week');
let folder = '';
let turn = 0;

beforeAll(() => playWeek(week));
beforeEach(() => {
  folder = join(here.path, `copy-${++turn}`);
  cpSync(week, folder, { recursive: true });
});
afterAll(() => here.remove());

const at = (): string[] => ['--store', folder];
const journal = (): string => join(folder, 'journal', '2026-11.jsonl');
const headIn = (out: string): string => /Head hash: ([0-9a-f]{64})/.exec(out)?.[1] ?? 'none';

async function whole(): Promise<string> {
  const { code, out, err } = await typed(verify, ...at());
  expect([code, err]).toEqual([0, '']);
  return headIn(out);
}

describe('verify', () => {
  test('a week as the program leaves it is whole, its snapshot held against a full refold', async () => {
    const { code, out, err } = await typed(verify, ...at());
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('held against a full refold');
    expect(headIn(out)).toMatch(/^[0-9a-f]{64}$/);
  });

  test('a word changed by hand is found, with its line', async () => {
    const text = readFileSync(journal(), 'utf8');
    writeFileSync(journal(), text.replace('"tips":["3"', '"tips":["9"'));
    const { code, err } = await typed(verify, ...at());
    expect(code).toBe(1);
    expect(err).toMatch(/^Not whole: .*line \d+/);
    expect(err).toContain('repair');
  });

  test('a hash that was written down: whether the record still has it, by number, by its beginning, or not at all', async () => {
    const head = await whole();
    const expecting = (text: string) => typed(verify, '--expect', text, ...at());
    const n = /whole: (\d+) lines/.exec((await typed(verify, ...at())).out)?.[1];
    const stands = `Line ${n} has the hash that you gave`;
    for (const given of [head, `${n}:${head}`, `${n}: ${head.slice(0, 16).toUpperCase()}`]) {
      const { code, out } = await expecting(given);
      expect([code, out.includes(stands)]).toEqual([0, true]);
    }
    const early = /"prev":"([0-9a-f]{64})"/.exec(readFileSync(journal(), 'utf8').split('\n')[10] ?? '')?.[1];
    expect((await expecting(`10:${early}`)).code).toBe(0);
    expect(await expecting(`11:${early}`)).toMatchObject({
      code: 1,
      err: expect.stringContaining('another hash now'),
    });
    expect(await expecting(`999:${head}`)).toMatchObject({
      code: 1,
      err: expect.stringContaining('Lines are gone'),
    });
    expect(await expecting('0123456789abcdef')).toMatchObject({
      code: 1,
      err: expect.stringContaining('No line has that hash'),
    });
    await expect(expecting('12:zzz')).rejects.toThrow('--expect takes the hash');
  });

  test('a record written anew from the first line is whole in itself, and yet not the one whose hash was posted', async () => {
    const head = await whole();
    const into = join(here.path, `forged-${turn}`);
    const args = ['--from', 'config/demo/week.jsonl', '--practice', 'config/practices/example.yaml'];
    await typed(rebuild, ...args, '--store', into);
    folder = into;
    await whole();
    expect((await typed(verify, '--expect', head, ...at())).code).toBe(1);
  });
});

describe('rebuild', () => {
  test('a snapshot that is gone comes back the same', async () => {
    await typed(rebuild, ...at());
    const before = readFileSync(join(folder, 'snapshot.json'), 'utf8');
    writeFileSync(join(folder, 'snapshot.json'), '{}');
    const { code, out } = await typed(rebuild, ...at());
    expect(code).toBe(0);
    expect(out).toContain('nothing else was changed');
    expect(readFileSync(join(folder, 'snapshot.json'), 'utf8')).toBe(before);
    await whole();
  });

  test('the journal itself comes back from the notes of the chat, line for line', async () => {
    const into = join(here.path, `anew-${turn}`);
    const args = ['--from', 'config/demo/week.jsonl', '--practice', 'config/practices/example.yaml'];
    const { code, out } = await typed(rebuild, ...args, '--store', into);
    expect(code).toBe(0);
    expect(out).toContain('nothing was posted');
    // Names and texts are committed to under new salts, so the chain differs; what was recorded does not.
    const rows = await typed(exportRecord, ...at());
    expect((await typed(exportRecord, '--store', into)).out).toBe(rows.out);
    folder = into;
    await whole();
  });

  test('a folder that holds a record is not written over', async () => {
    const args = ['--from', 'config/demo/week.jsonl', '--practice', 'config/practices/example.yaml'];
    await expect(typed(rebuild, ...args, ...at())).rejects.toThrow('holds a record');
    await whole();
  });
});

describe('forget', () => {
  test('without --yes it only says what would go', async () => {
    const head = await whole();
    const { code, out } = await typed(forget, '--person', '@tom:example.org', ...at());
    expect(code).toBe(1);
    expect(out).toContain('run it again with --yes');
    expect(await whole()).toBe(head);
    expect(everyByte()).toContain('@tom:example.org');
  });

  test('a name is in no file afterwards, and the chain still verifies with the same head', async () => {
    const head = await whole();
    const { out } = await typed(forget, '--person', '@tom:example.org', '--yes', ...at());
    expect(out).toMatch(/calls that person p\d+/);
    expect(everyByte(['practice'])).not.toContain('@tom:example.org');
    expect(await whole()).toBe(head);
  });

  test('somebody whose name in the practice file is given is told the other name that there is', async () => {
    const other = 'has "@tom:example.org" for that person too';
    expect((await typed(forget, '--person', 'tom', ...at())).out).toContain(other);
    expect((await typed(forget, '--person', 'Tom', '--yes', ...at())).out).toContain(other);
    expect((await typed(forget, '--person', 'Nobody', ...at())).out).not.toContain('practice file');
  });

  test('says where it still is: archives and chat, what a repair put aside, the ledger room', async () => {
    const args = ['--person', '@tom:example.org', '--yes', ...at()];
    const first = await typed(forget, ...args);
    expect(first.out).toContain('Backups made before, and the chat itself, still hold it.');
    expect(first.out).not.toMatch(/set-aside|ledger/);
    mkdirSync(join(folder, 'set-aside'));
    writeFileSync(join(folder, 'set-aside', 'texts-before-repair.txt'), '@tom:example.org');
    const db = openMatrixDb(folder);
    setFact(db, 'ledger', '{}');
    db.close();
    const { out } = await typed(forget, ...args);
    expect(out).toContain(join(folder, 'set-aside'));
    expect(out).toContain('ledger room loses it when Scanward is next started on Matrix');
  });

  test('a line that there is not is refused with what there is', async () => {
    await expect(typed(forget, '--line', '9999', '--yes', ...at())).rejects.toThrow(/lines 1 to \d+/);
    await expect(typed(forget, ...at())).rejects.toThrow('forget needs one of');
  });
});

describe('close-months', () => {
  const args = (): string[] => ['--before', '2026-12', '--to', join(folder, 'closed.csv'), ...at()];

  beforeEach(() => void vi.useFakeTimers({ toFake: ['Date'], now: new Date('2027-01-04T09:00:00Z') }));
  afterEach(() => void vi.useRealTimers());

  test('a month that is not over is not closed', async () => {
    vi.setSystemTime(new Date('2026-11-30T23:59:59Z'));
    await expect(typed(closeMonths, ...args(), '--yes')).rejects.toThrow('2026-11 is not over yet');
  });

  test('without --yes it only counts', async () => {
    const { code, out } = await typed(closeMonths, ...args());
    expect(code).toBe(1);
    expect(out).toMatch(/^\d+ entries before 2026-12\. Nothing was changed/);
    expect(existsSync(join(folder, 'closed.csv'))).toBe(false);
  });

  test('exports what it closes, erases names and texts, keeps the chain', async () => {
    const head = await whole();
    const rows = (await typed(exportRecord, ...at())).out;
    const { code } = await typed(closeMonths, ...args(), '--yes');
    expect(code).toBe(0);
    const kept = readFileSync(join(folder, 'closed.csv'), 'utf8');
    expect(kept.trim().split('\n')).toHaveLength(rows.trim().split('\n').length);
    expect(await whole()).toBe(head);
    await expect(typed(closeMonths, ...args(), '--yes')).rejects.toThrow('already there');
  });
});

describe('backup and restore', () => {
  test('one archive makes the same record in a new folder', async () => {
    const head = await whole();
    const archive = join(here.path, `week-${turn}.tar.gz`);
    expect(headIn((await typed(backup, archive, ...at())).out)).toBe(head);
    folder = join(here.path, `back-${turn}`);
    expect(headIn((await typed(restore, archive, ...at())).out)).toBe(head);
    expect(await whole()).toBe(head);
  });

  test('an archive cut short is refused and leaves nothing behind', async () => {
    const archive = join(here.path, `cut-${turn}.tar.gz`);
    await typed(backup, archive, ...at());
    writeFileSync(archive, readFileSync(archive).subarray(0, -200));
    const into = join(here.path, `none-${turn}`);
    await expect(typed(restore, archive, '--store', into)).rejects.toThrow();
    expect(existsSync(into)).toBe(false);
  });
});

describe('repair', () => {
  test('says what it would do, does it with --yes, and what was cut off lies beside it', async () => {
    const text = readFileSync(journal(), 'utf8').split('\n');
    text[40] = 'not a line';
    writeFileSync(journal(), text.join('\n'));
    const plan = await typed(repair, ...at());
    expect(plan.code).toBe(1);
    expect(plan.out).toContain('Nothing was changed');
    const done = await typed(repair, '--yes', ...at());
    expect(done.code).toBe(0);
    expect(done.out).toContain('The record stands with 40 lines');
    const aside = readdirSync(folder, { recursive: true, encoding: 'utf8' });
    expect(aside.filter((name) => /2026-11-after-line-40/.test(name))).toHaveLength(1);
    await whole();
  });

  test('with a backup, takes from it what is damaged: nothing is lost, and names and hash are as before', async () => {
    const before = await whole();
    const archive = join(here.path, `before-${turn}.tar.gz`);
    await typed(backup, archive, ...at());
    const text = readFileSync(journal(), 'utf8').split('\n');
    text[40] = 'not a line';
    writeFileSync(journal(), text.join('\n'));
    const alone = await typed(repair, ...at());
    expect(alone.out).toContain('"repair --from BACKUP"');
    const plan = await typed(repair, '--from', archive, ...at());
    expect([plan.code, plan.out.includes('Nothing was changed')]).toEqual([1, true]);
    expect(plan.out).toContain(
      'Line 41 (2026-11.jsonl, line 41: it does not read as a line of the record): taken from',
    );
    expect(readFileSync(journal(), 'utf8')).toBe(text.join('\n'));
    const done = await typed(repair, '--from', archive, '--yes', ...at());
    expect([done.code, headIn(done.out)]).toEqual([0, before]);
    expect(await whole()).toBe(before);
    const again = await typed(repair, '--from', archive, '--yes', ...at());
    expect(again.out).toContain('Nothing to take from it');
  });

  test('a backup that is damaged itself is refused', async () => {
    const copy = `${folder}-copy`;
    cpSync(folder, copy, { recursive: true });
    writeFileSync(join(copy, 'people.jsonl'), 'nobody\n');
    await expect(typed(repair, '--from', copy, ...at())).rejects.toThrow('The backup is not whole itself');
    await expect(typed(repair, '--from', here.path, ...at())).rejects.toThrow('There is no record in');
  });
});

/** All that the folder's files hold, but for those named. */
function everyByte(but: readonly string[] = []): string {
  const names = readdirSync(folder, { recursive: true, withFileTypes: true });
  return names
    .filter((entry) => entry.isFile() && !but.some((word) => entry.name.includes(word)))
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'latin1'))
    .join('\n');
}
