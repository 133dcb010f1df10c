import { hash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sumOf } from '../../bot/store/line.ts';
import { openStore, type Store } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { sampleTurn } from './sample-turns.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();
const turnAt = (at: string) => ({ at, turn: { items: ['tip:1'] } });

/** A snapshot's text with its own sum made to fit again. */
function resummed(text: string): string {
  const body = text.slice(text.indexOf('\n') + 1);
  return `${hash('sha256', body, 'hex')}\n${body}`;
}

function fill(store: Store, from: number, to: number): void {
  for (let i = from; i < to; i++) store.append([sampleTurn(i)]);
}

describe('the record', () => {
  it('starts empty and gives back what was appended, in order, over a restart', () => {
    const folder = newFolder();
    const store = openStore(folder);
    expect(store.head).toEqual({ n: 0, hash: '0'.repeat(64) });
    const said = store.append([sampleTurn(0, { text: 'used tip 1' }), sampleTurn(1)]);
    fill(store, 2, 30);
    const before = [...store.lines()];
    expect(before.slice(0, 2)).toEqual(said);
    expect(before.map((line) => line.n)).toEqual(Array.from({ length: 30 }, (_, i) => i + 1));
    expect(before[0]?.turn).toEqual(sampleTurn(0, { text: 'used tip 1' }).turn);
    const { head } = store;
    store.close();
    const again = openStore(folder);
    expect(again.head).toEqual(head);
    expect([...again.lines()]).toEqual(before);
    expect([...again.lines(28)]).toEqual(before.slice(28));
    expect(again.notices).toEqual([]);
    again.close();
  });

  it('keeps people and texts out of the journal, and off the disk once forgotten', () => {
    const folder = newFolder();
    const store = openStore(folder);
    store.append([
      sampleTurn(0, { text: 'dropped it by the sink' }),
      sampleTurn(4, { reason: 'cracked mirror' }),
    ]);
    store.saveSnapshot({ names: ['@rosa:example.org'] });
    const journal = readFileSync(join(folder, 'journal', '2026-11.jsonl'), 'utf8');
    for (const word of ['rosa', 'sink', 'cracked']) expect(journal).not.toContain(word);
    expect(store.forget({ person: '@rosa:example.org' })).toEqual({ pseudonym: 'p1', texts: 0 });
    expect(store.forget({ line: 2 })).toEqual({ pseudonym: null, texts: 1 });
    expect(store.forget({ line: 2 })).toEqual({ pseudonym: null, texts: 0 });
    const [first, second] = [...store.lines()];
    expect(first?.turn).toMatchObject({ text: 'dropped it by the sink', cause: { from: '(forgotten)' } });
    expect(second?.turn).toMatchObject({ reason: '(forgotten)' });
    store.append([sampleTurn(8)]);
    expect(store.line(3)?.turn).toMatchObject({ cause: { from: '@rosa:example.org' } });
    store.close();
    for (const file of readdirSync(folder)) {
      if (statSync(join(folder, file)).isFile())
        expect(readFileSync(join(folder, file), 'utf8')).not.toContain('cracked');
    }
    expect(verifyRecord(folder)).toMatchObject({ fault: null, forgotten: 2, head: { n: 3 } });
  });

  it('takes a forgotten name out of every text, and keeps the shape of what was said', () => {
    const folder = newFolder();
    const store = openStore(folder);
    const message = [{ line: ['Ann', { strong: 'Annual count' }] }, { points: [['by Ann, Ann.']] }];
    store.append([
      sampleTurn(0, {
        by: 'Ann',
        text: 'Ann and Joann',
        effects: [{ key: 'a', message }],
        file: 'people: ["@ann:x.org"]',
      }),
      sampleTurn(1, { by: 'Ann', effects: [{ key: 'b', message }] }),
    ]);
    expect(store.line(1)?.turn).toMatchObject({ effects: [{ message }] });
    expect(readFileSync(join(folder, 'journal', '2026-11.jsonl'), 'utf8')).not.toContain('Ann');
    const { pseudonym } = store.forget({ person: 'Ann' });
    expect(store.forget({ person: '@ann:x.org' })).toEqual({ pseudonym: null, texts: 1 });
    expect(store.line(1)?.turn).toMatchObject({
      by: '(forgotten)',
      text: `${pseudonym} and Joann`,
      file: 'people: ["@(forgotten):forgotten"]',
      effects: [
        {
          message: [
            { line: [pseudonym, { strong: 'Annual count' }] },
            { points: [[`by ${pseudonym}, ${pseudonym}.`]] },
          ],
        },
      ],
    });
    expect(store.forget({ line: 2 })).toEqual({ pseudonym: null, texts: 1 });
    const gone = '(forgotten)';
    expect(store.line(2)?.turn).toMatchObject({
      effects: [{ key: 'b', message: [{ line: [gone, { strong: gone }] }, { points: [[gone]] }] }],
    });
    store.close();
    expect(verifyRecord(folder)).toMatchObject({ fault: null, forgotten: 5 });
  });

  it('begins a file each month and never goes back to a closed one', () => {
    const folder = newFolder();
    const store = openStore(folder);
    store.append([turnAt('2026-11-30T23:59:59.999Z')]);
    store.append([turnAt('2026-12-01T00:00:00Z')]);
    store.append([turnAt('2026-11-30T23:00:00Z')]);
    store.close();
    const again = openStore(folder);
    again.append([turnAt('2026-11-30T23:30:00Z')]);
    expect([...again.lines()].map((line) => line.at.slice(0, 7))).toEqual([
      '2026-11',
      '2026-12',
      '2026-11',
      '2026-11',
    ]);
    again.close();
    const lines = (month: string) =>
      readFileSync(join(folder, 'journal', `${month}.jsonl`), 'utf8').split('\n').length - 1;
    expect([lines('2026-11'), lines('2026-12')]).toEqual([1, 3]);
    expect(verifyRecord(folder).fault).toBeNull();
  });

  it('refuses an instant that is not one, and keeps nothing of that burst', () => {
    const folder = newFolder();
    const store = openStore(folder);
    expect(() => store.append([sampleTurn(0, { text: 'a' }), turnAt('23/11/2026')])).toThrow('23/11/2026');
    expect(() => store.append([sampleTurn(0, { text: 'b', value: Number.NaN })])).toThrow('not JSON');
    expect(store.head.n).toBe(0);
    store.append([sampleTurn(1, { text: 'c' })]);
    store.close();
    expect(readFileSync(join(folder, 'texts.jsonl'), 'utf8').split('\n')).toHaveLength(2);
    expect(verifyRecord(folder)).toMatchObject({ fault: null, head: { n: 1 } });
  });

  it('holds its folder alone', () => {
    const folder = newFolder();
    const store = openStore(folder);
    expect(() => openStore(folder)).toThrow(folder);
    const looking = openStore(folder, { readOnly: true });
    expect(looking.readOnly).toContain('look');
    expect(() => looking.append([sampleTurn(0)])).toThrow('look');
    looking.close();
    store.close();
    openStore(folder).close();
  });

  it('looking only, writes nothing', () => {
    const folder = newFolder();
    openStore(folder, { readOnly: true }).close();
    expect(readdirSync(folder)).toEqual([]);
  });

  it('refuses a folder, and a record, of a newer version', () => {
    const folder = newFolder();
    const store = openStore(folder);
    fill(store, 0, 2);
    store.close();
    writeFileSync(join(folder, 'scanward.json'), '{"folder":2}\n');
    expect(() => openStore(folder)).toThrow('newer Scanward');
    writeFileSync(join(folder, 'scanward.json'), '{"folder":1}\n');
    const path = join(folder, 'journal', '2026-11.jsonl');
    const [first = '', second = ''] = readFileSync(path, 'utf8').split('\n');
    const newer = second.replace('"v":1}', '"v":2}').replace(/"sum":"[0-9a-f]{8}",/, '');
    const sum = newer.indexOf('"turn"');
    writeFileSync(path, `${first}\n${newer.slice(0, sum)}"sum":"${sumOf(newer)}",${newer.slice(sum)}\n`);
    expect(() => openStore(folder)).toThrow('record version 2');
    expect(readFileSync(path, 'utf8')).toContain('"v":2}');
  });
});

describe('the snapshot', () => {
  it('comes back where it fits', () => {
    const folder = newFolder();
    const store = openStore(folder);
    fill(store, 0, 5);
    store.saveSnapshot({ tips: 12 });
    const { n, hash } = store.head;
    fill(store, 5, 7);
    store.close();
    const again = openStore(folder);
    expect(again.snapshot()).toEqual({ n, hash, value: { tips: 12 } });
    expect([...again.lines(n)].map((line) => line.n)).toEqual([6, 7]);
    expect(again.head.n).toBe(7);
    again.saveSnapshot({ tips: 13 });
    expect(again.snapshot()?.n).toBe(7);
    again.close();
    expect(verifyRecord(folder).snapshot).toBe('its place in the journal');
    const gives = (tips: number) => () => ({ value: { tips }, needsHistory: false, historyFault: null });
    expect(verifyRecord(folder, { refold: gives(13) })).toMatchObject({
      fault: null,
      snapshot: 'a full refold',
    });
    expect(verifyRecord(folder, { refold: gives(14) }).fault).toContain('not what lines 1 to 7');
  });

  it.each([
    ['changed by hand', (text: string) => text.replace('12', '13')],
    ['cut', (text: string) => text.slice(0, -3)],
    ['emptied', () => ''],
    ['of another journal', (text: string) => resummed(text.replace(/"hash":"./, '"hash":"x'))],
    ['of another line', (text: string) => resummed(text.replace('"n":5', '"n":4'))],
  ])('is thrown away, and that is said, when it was %s', (_, change) => {
    const folder = newFolder();
    const store = openStore(folder);
    fill(store, 0, 5);
    store.saveSnapshot({ tips: 12 });
    store.close();
    const path = join(folder, 'snapshot.json');
    writeFileSync(path, change(readFileSync(path, 'utf8')));
    expect(verifyRecord(folder).fault).toContain('snapshot.json');
    const again = openStore(folder);
    expect(again.snapshot()).toBeNull();
    expect(again.notices.join()).toContain('snapshot');
    expect([...again.lines()]).toHaveLength(5);
    again.close();
  });

  it('is thrown away when it is newer than the journal', () => {
    const folder = newFolder();
    const store = openStore(folder);
    fill(store, 0, 5);
    const path = join(folder, 'journal', '2026-11.jsonl');
    const old = readFileSync(path);
    fill(store, 5, 9);
    store.saveSnapshot({ tips: 12 });
    store.transport.enqueue(9, []);
    store.close();
    writeFileSync(path, old);
    const again = openStore(folder);
    expect(again.snapshot()).toBeNull();
    expect(again.head.n).toBe(5);
    expect(again.notices.join(' ')).toContain('Lines 6 to 9 were answered');
    expect(again.transport.enqueuedThrough()).toBe(5);
    again.close();
  });

  it('does not hide a change in a closed month', () => {
    const folder = newFolder();
    const store = openStore(folder);
    store.append([turnAt('2026-10-01T08:00:00Z'), turnAt('2026-10-02T08:00:00Z')]);
    store.append([turnAt('2026-11-01T08:00:00Z')]);
    store.saveSnapshot({});
    store.close();
    const path = join(folder, 'journal', '2026-10.jsonl');
    writeFileSync(path, readFileSync(path, 'utf8').replace('tip:1', 'tip:2'));
    const again = openStore(folder);
    expect(again.readOnly).toContain('line 1 of the record (2026-10.jsonl, line 1)');
    expect([...again.lines()]).toEqual([]);
    again.close();
  });

  it('does not hide a change far back in a long journal from whoever reads it', () => {
    const folder = newFolder();
    const store = openStore(folder);
    // Past 32 MiB a start reads only what came after the snapshot.
    const filler = 'sites: [quay] '.repeat(1700);
    const burst = Array.from({ length: 100 }, () => ({ at: '2026-11-01T08:00:00Z', turn: { filler } }));
    for (let i = 0; i < 15; i++) store.append(burst);
    store.saveSnapshot({});
    store.close();
    const path = join(folder, 'journal', '2026-11.jsonl');
    const bytes = readFileSync(path);
    bytes.write('x', 30_000, 'latin1');
    writeFileSync(path, bytes);
    const again = openStore(folder);
    expect([again.readOnly, again.snapshot()?.n]).toEqual([null, 1500]);
    expect(() => [...again.lines()]).toThrow('not as it was written');
    again.close();
  });
});

describe('looking things up', () => {
  it('finds lines by number, item and event, before and after a restart, with the index lost', () => {
    const folder = newFolder();
    const store = openStore(folder);
    fill(store, 0, 300);
    const check = (open: Store, last: number): void => {
      expect(open.line(0)).toBeNull();
      expect(open.line(last + 1)).toBeNull();
      for (const n of [1, 2, 63, 64, 65, 200, last]) expect(open.line(n)?.n).toBe(n);
      const expected = Array.from({ length: last }, (_, i) => i + 1).filter((n) => (n - 1) % 40 === 3);
      expect([...open.linesAbout('tip:4')].map((line) => line.n)).toEqual(expected);
      expect([...open.linesAbout('tip:44')]).toEqual([]);
      expect(open.lineOfEvent('$event7')).toBe(8);
      expect(open.lineOfEvent('$other')).toBeNull();
    };
    check(store, 300);
    fill(store, 300, 310);
    check(store, 310);
    store.close();
    const again = openStore(folder);
    check(again, 310);
    again.close();
    writeFileSync(join(folder, 'index.db'), 'not a database at all, but long enough to be looked at twice');
    const spoilt = openStore(folder);
    check(spoilt, 310);
    spoilt.close();
    const looking = openStore(folder, { readOnly: true });
    check(looking, 310);
    looking.close();
    expect(existsSync(join(folder, 'index.db'))).toBe(true);
  });
});
