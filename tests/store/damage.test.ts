import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { machineFs } from '../../bot/store/fs-port.ts';
import { doRepair, planRepair } from '../../bot/store/repair.ts';
import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { writeSampleRecord } from '../faults/sample-record.ts';
import { sampleTurn } from './sample-turns.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();
// Of twelve lines, four are in October and eight in November.
const lines = 12;

function damaged(file: string, change: (text: string) => string): string {
  const folder = newFolder();
  writeSampleRecord(folder, lines);
  const path = join(folder, 'journal', file);
  writeFileSync(path, Buffer.from(change(readFileSync(path, 'latin1')), 'latin1'));
  return folder;
}

const without = (text: string, number: number) =>
  text
    .split('\n')
    .toSpliced(number - 1, 1)
    .join('\n');

describe('damage', () => {
  it.each([
    ['a line taken out', '2026-11.jsonl', (text: string) => without(text, 3), 6, 'line 7 is missing'],
    [
      'a line twice',
      '2026-11.jsonl',
      (text: string) => text.replace(/\n.*\n/, (two) => two + two.slice(1)),
      6,
      'line 6 stands here a second time',
    ],
    [
      'two words changed',
      '2026-11.jsonl',
      (text: string) => text.replace('"tip:8"', '"tip:6"').replace('"8"', '"6"'),
      7,
      'not as it was written',
    ],
    [
      'a line that is no line',
      '2026-10.jsonl',
      (text: string) => text.replace('\n', '\nhello\n'),
      1,
      'does not read as a line',
    ],
    [
      'the last line changed',
      '2026-11.jsonl',
      (text: string) => text.replace('"tip:12"', '"tip:99"'),
      11,
      'not as it was written',
    ],
    ['a closed month cut', '2026-10.jsonl', (text: string) => text.slice(0, -5), 3, 'it is cut off'],
  ])(
    '%s: what is before it stands, nothing is written, and repair sets the rest aside',
    (_, file, change, stands, why) => {
      const folder = damaged(file, change);
      const before = readFileSync(join(folder, 'journal', file));
      expect(verifyRecord(folder).fault).not.toBeNull();
      const store = openStore(folder);
      expect(store.readOnly).toContain(why);
      expect(store.readOnly).toContain(`line ${stands + 1} of the record (${file}, line `);
      expect(store.head.n).toBe(stands);
      expect([...store.lines()]).toHaveLength(stands);
      expect(() => store.append([sampleTurn(50)])).toThrow('repair');
      store.transport.receive([
        { id: '$late', room: '!quay', at: '2026-11-23T08:00:00Z', body: 'kept for later' },
      ]);
      store.close();
      expect(readFileSync(join(folder, 'journal', file))).toEqual(before);

      const plan = planRepair(machineFs, folder);
      expect(plan).toMatchObject({ patches: [], head: { n: stands } });
      expect(readFileSync(join(folder, 'journal', file))).toEqual(before);
      doRepair(machineFs, folder, plan);
      const again = openStore(folder);
      expect([again.readOnly, again.head.n]).toEqual([null, stands]);
      expect(again.transport.next()?.id).toBe('$late');
      again.append([sampleTurn(50, { text: 'on we go' })]);
      again.close();
      expect(verifyRecord(folder)).toMatchObject({ fault: null, head: { n: stands + 1 } });
      const aside = readdirSync(join(folder, 'set-aside')).map((name) =>
        readFileSync(join(folder, 'set-aside', name), 'latin1'),
      );
      expect(aside.join('')).toContain('"n":12');
    },
  );

  it.each([
    ['in a word', 1200],
    ['in a line end', -1],
    ['in the last byte', -2],
  ])('puts back a flipped bit %s, so that nothing is lost', (_, at) => {
    for (let bit = 0; bit < 8; bit++) {
      const folder = newFolder();
      writeSampleRecord(folder, lines);
      const path = join(folder, 'journal', '2026-11.jsonl');
      const bytes = readFileSync(path);
      const offset = at === -1 ? bytes.indexOf(10) : at === -2 ? bytes.length - 2 : at;
      const flipped = Buffer.from(bytes);
      flipped[offset] = (flipped[offset] ?? 0) ^ (1 << bit);
      writeFileSync(path, flipped);
      const plan = planRepair(machineFs, folder);
      expect(plan.aside).toBeNull();
      doRepair(machineFs, folder, plan);
      expect(readFileSync(path)).toEqual(bytes);
      expect(verifyRecord(folder)).toMatchObject({ fault: null, head: { n: lines } });
    }
  });

  it('takes NUL bytes at the end, as a power cut leaves them, for an unfinished line', () => {
    const folder = damaged('2026-11.jsonl', (text) => text + '\0'.repeat(300));
    const store = openStore(folder);
    expect([store.readOnly, store.head.n]).toEqual([null, lines]);
    expect(store.notices.join()).toContain('unfinished line');
    store.close();
    expect(verifyRecord(folder).fault).toBeNull();
  });

  it('shows what the tables lost as lost, and gives no number twice', () => {
    const folder = newFolder();
    writeSampleRecord(folder, lines);
    for (const table of ['people.jsonl', 'texts.jsonl']) {
      const path = join(folder, table);
      writeFileSync(path, readFileSync(path, 'utf8').replace(/.{9}\n$/, 'xxxxxxxxx\n'));
    }
    expect(verifyRecord(folder).fault).toContain('people.jsonl');
    const store = openStore(folder);
    expect(store.line(4)?.turn).toMatchObject({ cause: { from: '(lost)' } });
    expect(store.line(10)?.turn).toMatchObject({ text: '(lost)' });
    store.append([sampleTurn(50, { text: 'new text', by: 'Nobody Yet' })]);
    store.close();
    const numbers = (table: string) =>
      readFileSync(join(folder, table), 'utf8')
        .match(/^\{"[pk]":\d+/gm)
        ?.map((start) => start.slice(5));
    expect(numbers('people.jsonl')).toEqual(['1', '2', '3', '4', '5']);
    expect(numbers('texts.jsonl')).toEqual(['1', '2', '3', '4', '5']);
  });
});
