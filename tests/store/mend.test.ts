import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { machineFs } from '../../bot/store/fs-port.ts';
import { doMend } from '../../bot/store/mend/do.ts';
import { planMend } from '../../bot/store/mend/plan.ts';
import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { seeded } from '../faults/random.ts';
import { filesIn, writeSampleRecord } from '../faults/sample-record.ts';
import { sampleTurn } from './sample-turns.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();
// Of twelve lines, four are in October and eight in November.
const lines = 12;

/** A record, and a copy of its folder made when it had `copied` lines. */
function withCopy(copied: number): { folder: string; copy: string; turns: unknown[]; head: unknown } {
  const [folder, copy] = [newFolder(), newFolder()];
  writeSampleRecord(folder, copied);
  cpSync(folder, copy, { recursive: true });
  const store = openStore(folder);
  for (let i = copied; i < lines; i++)
    store.append([sampleTurn(i, i % 3 === 0 ? { text: `used tip ${i} – é`, by: `New ${i}` } : {})]);
  const turns = [...store.lines()].map(({ turn }) => turn);
  const head = store.head;
  store.close();
  return { folder, copy, turns, head };
}

function change(folder: string, file: string, how: (text: string) => string): void {
  const path = join(folder, file);
  writeFileSync(path, Buffer.from(how(readFileSync(path, 'latin1')), 'latin1'));
}

function lineOf(text: string, number: number, into: string | null): string {
  const all = text.split('\n');
  return (into === null ? all.toSpliced(number - 1, 1) : all.with(number - 1, into)).join('\n');
}

function mend(folder: string, copy: string): ReturnType<typeof planMend> {
  const before = filesIn(folder);
  const plan = planMend(machineFs, folder, copy);
  expect(filesIn(folder)).toEqual(before);
  doMend(machineFs, folder, plan);
  return plan;
}

function turnsOf(folder: string): unknown[] {
  const store = openStore(folder);
  expect(store.readOnly).toBeNull();
  const turns = [...store.lines()].map(({ turn }) => turn);
  store.close();
  return turns;
}

const NOVEMBER = join('journal', '2026-11.jsonl');
const OCTOBER = join('journal', '2026-10.jsonl');

describe('repair with a backup', () => {
  it.each<[string, string, (text: string) => string]>([
    ['a line taken out', NOVEMBER, (text) => lineOf(text, 3, null)],
    ['a line that is no line', OCTOBER, (text) => lineOf(text, 2, 'hello')],
    ['a line put between', NOVEMBER, (text) => text.replace('\n', '\nhello\n')],
    ['three lines gone', NOVEMBER, (text) => text.split('\n').toSpliced(1, 3).join('\n')],
    ['two places damaged', NOVEMBER, (text) => lineOf(lineOf(text, 2, 'x'), 5, 'y')],
    ['a line twice', NOVEMBER, (text) => text.replace(/\n.*\n/, (two) => two + two.slice(1))],
    ['a closed month cut', OCTOBER, (text) => text.slice(0, -5)],
    ['a closed month emptied', OCTOBER, () => ''],
    ['two words changed', NOVEMBER, (text) => text.replaceAll('"tip:8"', '"tip:6"')],
  ])('%s: what the backup has is taken from it, and what was noted since stays', (_, file, how) => {
    const { folder, copy, turns, head } = withCopy(10);
    change(folder, file, how);
    expect(verifyRecord(folder).fault).not.toBeNull();
    const plan = mend(folder, copy);
    expect(plan.words.length).toBeGreaterThan(0);
    expect(turnsOf(folder)).toEqual(turns);
    expect(verifyRecord(folder)).toMatchObject({ fault: null, head });
    expect(planMend(machineFs, folder, copy)).toMatchObject({ changesJournal: false, words: [] });
    const aside = readdirSync(join(folder, 'set-aside'));
    expect(aside.some((name) => name.includes('before-repair')) || file === OCTOBER).toBe(true);
  });

  it('a month whose file is gone comes back', () => {
    const { folder, copy, turns } = withCopy(10);
    rmSync(join(folder, OCTOBER));
    mend(folder, copy);
    expect(turnsOf(folder)).toEqual(turns);
  });

  it('names and texts that were damaged come back; what was forgotten since stays forgotten', () => {
    const { folder, copy, turns } = withCopy(10);
    const store = openStore(folder);
    store.forget({ line: 4 });
    store.close();
    change(folder, 'people.jsonl', (text) => lineOf(text, 2, 'zzz'));
    change(folder, 'texts.jsonl', (text) => lineOf(text, 3, '{"k":3}'));
    const plan = mend(folder, copy);
    expect(plan.changesJournal).toBe(false);
    expect(plan.words.join()).toContain('2 names and texts come from the backup');
    const after = turnsOf(folder);
    expect(after[6]).toEqual(turns[6]);
    expect(after[1]).toEqual(turns[1]);
    expect(after[3]).toMatchObject({ text: '(forgotten)' });
    expect(verifyRecord(folder).fault).toBeNull();
  });

  it('lines that only the backup has are added, and not answered again', () => {
    const { folder, copy, turns } = withCopy(8);
    // The copy is put where the record is, and the record is the backup.
    const plan = mend(copy, folder);
    expect(plan.words.join()).toContain('Lines 9 to 12: taken from the backup');
    expect(turnsOf(copy)).toEqual(turns);
    const store = openStore(copy);
    expect(store.transport.enqueuedThrough()).toBe(lines);
    store.close();
  });

  it('damage past the backup: its lines are taken, what does not follow is set aside and kept', () => {
    const { folder, copy, turns } = withCopy(9);
    change(folder, NOVEMBER, (text) => lineOf(lineOf(text, 4, 'x'), 7, 'y'));
    const plan = mend(folder, copy);
    expect([plan.head.n, plan.cutAfter]).toEqual([9, 9]);
    expect(turnsOf(folder)).toEqual(turns.slice(0, 9));
    const aside = readdirSync(join(folder, 'set-aside')).map((name) =>
      readFileSync(join(folder, 'set-aside', name), 'utf8'),
    );
    expect(aside.join('')).toContain('"n":12');
    expect(aside.join('')).toContain('used tip 9 – é');
    const store = openStore(folder);
    store.append([sampleTurn(50, { text: 'on we go', by: 'Nobody Yet' })]);
    store.close();
    expect(verifyRecord(folder)).toMatchObject({ fault: null, head: { n: 10 } });
  });

  it('takes nothing from a backup of another record, or of one that parted from it', () => {
    const { folder } = withCopy(10);
    const other = newFolder();
    writeSampleRecord(other, lines);
    change(folder, NOVEMBER, (text) => lineOf(text, 3, 'x'));
    const plan = planMend(machineFs, folder, other);
    expect([plan.head.n, plan.cutAfter, plan.tables.people.size]).toEqual([6, 6, 0]);
    change(folder, OCTOBER, () => 'nothing\n');
    expect(planMend(machineFs, folder, other).head.n).toBe(0);
  });

  it('whatever is damaged, a crash at any step of it leaves a folder that the same command mends', () => {
    const random = seeded(5);
    let cutOff = 0;
    for (let run = 0; run < 25; run++) {
      const { folder, copy, turns } = withCopy(10);
      const file = [NOVEMBER, OCTOBER, 'people.jsonl', 'texts.jsonl'][Math.floor(random() * 4)] ?? NOVEMBER;
      change(folder, file, (text) => {
        const at = Math.floor(random() * text.length);
        return text.slice(0, at) + 'x'.repeat(5) + text.slice(at + Math.floor(random() * 900));
      });
      const stop = Math.floor(random() * 40);
      let calls = 0;
      const failing = new Proxy(machineFs, {
        get: (fs, name, self) => {
          if (++calls > stop && ['rename', 'write', 'remove'].includes(String(name)))
            throw new Error('cut off');
          return Reflect.get(fs, name, self);
        },
      });
      const plan = planMend(machineFs, folder, copy);
      try {
        doMend(failing, folder, plan);
      } catch (cause) {
        expect(String(cause)).toContain('cut off');
        cutOff++;
      }
      doMend(machineFs, folder, planMend(machineFs, folder, copy));
      const after = turnsOf(folder);
      expect(after.length).toBeGreaterThanOrEqual(10);
      expect(after.slice(0, 10)).toEqual(turns.slice(0, 10));
      // A text of the last two lines, which the backup does not have, may be gone.
      expect(verifyRecord(folder).fault ?? 'missing').toContain('missing');
    }
    expect(cutOff).toBeGreaterThan(6);
  });
});
