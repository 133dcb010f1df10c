import { execFileSync } from 'node:child_process';
import { hash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run as backup } from '../../bot/commands/backup.ts';
import { run as repair } from '../../bot/commands/repair.ts';
import { run as restore } from '../../bot/commands/restore.ts';
import { run as verify } from '../../bot/commands/verify.ts';
import { openStore } from '../../bot/store/store.ts';
import { writeSampleRecord } from '../faults/sample-record.ts';
import { sampleTurn } from './sample-turns.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();

function told(): { out: (line: string) => void; err: (line: string) => void; said: string[] } {
  const said: string[] = [];
  return { out: (line) => void said.push(line), err: (line) => void said.push(`! ${line}`), said };
}

describe('moving house', () => {
  it('gives the same record back from an archive made while the bot holds the folder', async () => {
    const folder = newFolder();
    writeSampleRecord(folder, 20);
    const store = openStore(folder);
    store.transport.receive(
      [{ id: '$waiting', room: '!quay', at: '2026-11-23T08:00:00Z', body: 'not yet read' }],
      's7',
    );
    const io = told();
    const archive = join(newFolder(), 'record.tar.gz');
    expect(await backup([archive, '--store', folder], io)).toBe(0);
    expect(io.said.join('\n')).toContain(store.head.hash);
    const lines = [...store.lines()];
    store.close();

    const moved = join(newFolder(), 'new', 'home');
    mkdirSync(join(moved, '..'));
    expect(await restore([archive, '--store', moved], told())).toBe(0);
    const again = openStore(moved);
    expect([...again.lines()]).toEqual(lines);
    expect([again.transport.next()?.id, again.transport.position()]).toEqual(['$waiting', 's7']);
    expect(again.notices).toEqual([]);
    again.close();
  });

  it('is an archive that tar unpacks and sha256sum checks', async () => {
    const folder = newFolder();
    writeSampleRecord(folder, 6);
    const archive = join(newFolder(), 'record.tar.gz');
    await backup([archive, '--store', folder], told());
    const out = newFolder();
    execFileSync('tar', ['-xzf', archive, '-C', out]);
    expect(readdirSync(out).sort()).toEqual(
      ['files.sha256', 'journal', 'people.jsonl', 'scanward.json', 'texts.jsonl', 'transport.db'].sort(),
    );
    // Two spaces between sum and name: what sha256sum --check reads.
    const list = readFileSync(join(out, 'files.sha256'), 'utf8').trimEnd().split('\n');
    expect(list).toHaveLength(6);
    for (const line of list) {
      const [sum, name = ''] = line.split('  ');
      expect(hash('sha256', readFileSync(join(out, name)), 'hex'), name).toBe(sum);
    }
  });

  it('works as well by copying the folder by hand', () => {
    const folder = newFolder();
    writeSampleRecord(folder, 6);
    const copy = join(newFolder(), 'copy');
    execFileSync('cp', ['-r', folder, copy]);
    const store = openStore(copy);
    expect([store.head.n, store.readOnly, store.snapshot()?.n]).toEqual([6, null, 6]);
    store.append([sampleTurn(30)]);
    store.close();
  });

  it('refuses an archive that was changed or cut, and leaves no folder', async () => {
    const folder = newFolder();
    writeSampleRecord(folder, 6);
    const place = newFolder();
    const archive = join(place, 'record.tar.gz');
    await backup([archive, '--store', folder], told());
    const bytes = readFileSync(archive);
    const home = join(place, 'home');
    for (const cut of [0, 10, 1000, bytes.length - 1]) {
      writeFileSync(archive, bytes.subarray(0, cut));
      await expect(restore([archive, '--store', home], told()), `cut at ${cut}`).rejects.toThrow(
        'could not be read',
      );
    }
    for (let at = 20; at < bytes.length; at += 197) {
      const flipped = Buffer.from(bytes);
      flipped[at] = (flipped[at] ?? 0) ^ 1;
      writeFileSync(archive, flipped);
      await expect(restore([archive, '--store', home], told()), `byte ${at}`).rejects.toThrow(archive);
    }
    expect(readdirSync(place)).toEqual(['record.tar.gz']);
  });

  it('refuses an archive that was packed anew with something else in it', async () => {
    const folder = newFolder();
    writeSampleRecord(folder, 6);
    const archive = join(newFolder(), 'record.tar.gz');
    await backup([archive, '--store', folder], told());
    const out = newFolder();
    const home = join(newFolder(), 'home');
    const repack = (): void =>
      void execFileSync('tar', ['--format=ustar', '-czf', archive, '-C', out, ...readdirSync(out)]);
    execFileSync('tar', ['-xzf', archive, '-C', out]);
    writeFileSync(join(out, 'scanward.json'), '{"folder":1} \n');
    repack();
    await expect(restore([archive, '--store', home], told())).rejects.toThrow(
      'scanward.json is not as it was packed',
    );
    writeFileSync(join(out, 'scanward.json'), '{"folder":1}\n');
    writeFileSync(join(out, 'more.json'), '{}');
    repack();
    await expect(restore([archive, '--store', home], told())).rejects.toThrow('is damaged');
    expect(existsSync(home)).toBe(false);
  });

  it('puts nothing over anything', async () => {
    const folder = newFolder();
    writeSampleRecord(folder, 3);
    const archive = join(newFolder(), 'record.tar.gz');
    await backup([archive, '--store', folder], told());
    await expect(backup([archive, '--store', folder], told())).rejects.toThrow('already there');
    await expect(restore([archive, '--store', folder], told())).rejects.toThrow('not empty');
    await expect(backup([join(folder, 'none', 'a.tar.gz'), '--store', folder], told())).rejects.toThrow(
      'not there',
    );
    await expect(backup(['x.tar.gz', '--store', join(folder, 'nowhere')], told())).rejects.toThrow(
      'no record',
    );
  });
});

describe('verify and repair', () => {
  it('say what is wrong, do nothing until asked, and end well', async () => {
    const folder = newFolder();
    writeSampleRecord(folder, 9);
    const whole = told();
    expect(await verify(['--store', folder], whole)).toBe(0);
    expect(whole.said[0]).toBe('The record is whole: 9 lines in 2 monthly files.');
    expect(whole.said[1]).toMatch(/^Head hash: [0-9a-f]{64}$/);
    const path = join(folder, 'journal', '2026-11.jsonl');
    const text = readFileSync(path, 'utf8');
    writeFileSync(path, text.split('\n').toSpliced(2, 1).join('\n'));

    const faulty = told();
    expect(await verify(['--store', folder], faulty)).toBe(1);
    expect(faulty.said[0]).toBe('! Not whole: 2026-11.jsonl, line 3: line 6 is missing.');
    const dry = told();
    expect(await repair(['--store', folder], dry)).toBe(1);
    expect(dry.said.at(-1)).toContain('Nothing was changed');
    expect(existsSync(join(folder, 'set-aside'))).toBe(false);
    const done = told();
    expect(await repair(['--store', folder, '--yes'], done)).toBe(0);
    expect(done.said.join(' ')).toContain('stands with 5 lines');
    expect(await repair(['--store', folder, '--yes'], told())).toBe(0);
    openStore(folder).close();
    expect(await verify(['--store', folder], told())).toBe(0);
  });

  it('repair keeps off a folder in use', async () => {
    const folder = newFolder();
    const store = openStore(folder);
    await expect(repair(['--store', folder], told())).rejects.toThrow(folder);
    store.close();
  });
});
