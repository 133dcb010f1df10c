import { readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openStore } from '../../bot/store/store.ts';
import { Desk } from '../../core/desk/desk.ts';
import { temporaryFolders } from '../store/temp-folder.ts';
import { at, House, note } from './house.ts';

const newFolder = temporaryFolders();

/** A desk that counts the turns that it was given to replay. */
class Counting extends Desk {
  static replayed = 0;
  override replay(...args: Parameters<Desk['replay']>): void {
    Counting.replayed += 1;
    super.replay(...args);
  }
}
const counting = { makeDesk: () => new Counting() };

async function aMorning(folder: string): Promise<House> {
  const house = new House(folder);
  await house.hear('09:00', note('$1', '09:00', 'tips 1 to 8 are sterile and on the shelf'));
  await house.hear('09:10', note('$2', '09:10', 'tip 4 on blue'));
  await house.hear('09:20', note('$3', '09:20', 'scan done on blue'));
  return house;
}

describe('a start', () => {
  test('from a snapshot reads only what came after it, and knows the same', async () => {
    const folder = newFolder();
    const first = await aMorning(folder);
    const before = first.keeper.desk.exported(at('09:30'));
    first.close();
    Counting.replayed = 0;
    const second = new House(folder, counting);
    expect(Counting.replayed).toBe(0);
    expect(second.keeper.notices).toEqual([]);
    expect(second.keeper.desk.exported(at('09:30'))).toEqual(before);
    await second.hear('09:31', note('$3', '09:20', 'scan done on blue'));
    expect(second.recorded).toEqual(['$1', '$2', '$3']);
    second.close();
  });

  test('after a power cut reads what the snapshot lacks', async () => {
    const folder = newFolder();
    const first = await aMorning(folder);
    first.close();
    const second = new House(folder);
    await second.hear('09:31', note('$4', '09:31', 'wiped down blue'));
    const before = second.keeper.desk.exported(at('09:40'));
    second.crash();
    Counting.replayed = 0;
    const third = new House(folder, counting);
    expect(Counting.replayed).toBeGreaterThan(0);
    expect(Counting.replayed).toBeLessThan(third.store.head.n);
    expect(third.keeper.desk.exported(at('09:40'))).toEqual(before);
    third.close();
  });

  test('throws a snapshot of another build away, and says so once', async () => {
    const folder = newFolder();
    (await aMorning(folder)).close();
    const store = openStore(folder);
    const value = store.snapshot()?.value;
    store.saveSnapshot({ ...(typeof value === 'object' ? value : {}), made: 'some other build' });
    store.close();
    const house = new House(folder);
    expect(house.keeper.notices).toEqual([
      'The snapshot was of no use to this version. The record was read from its first line.',
    ]);
    expect(house.recorded).toEqual(['$1', '$2', '$3']);
    house.close();
    const again = new House(folder);
    expect(again.keeper.notices).toEqual([]);
    again.close();
  });

  test('after an upgrade says nothing of what was said before it, and asks for nothing a second time', async () => {
    const folder = newFolder();
    const before = await aMorning(folder);
    for (const time of ['09:31', '10:30', '11:30']) await before.work(time);
    const said = before.delivered.filter(({ does }) => does === 'post').length;
    before.close();
    const store = openStore(folder);
    store.saveSnapshot({ ...Object(store.snapshot()?.value), made: 'the build before' });
    store.close();
    const after = new House(folder);
    expect(after.keeper.notices).toHaveLength(1);
    await after.work('11:31');
    await after.work('11:45');
    expect(said).toBeGreaterThan(3);
    expect(after.delivered).toEqual([]);
    after.close();
  });

  test('does not trip over a snapshot with nothing in it', async () => {
    const folder = newFolder();
    (await aMorning(folder)).close();
    const store = openStore(folder);
    const value = store.snapshot()?.value;
    const made = typeof value === 'object' && value !== null && 'made' in value ? value.made : '';
    store.saveSnapshot({ made, file: 'practice: nothing' });
    store.close();
    const house = new House(folder);
    expect(house.keeper.desk.exported(at('09:30')).tips['4']).toMatchObject({ state: 'used' });
    house.close();
  });

  test('a snapshot that is newer than the journal is not believed', async () => {
    const folder = newFolder();
    const house = await aMorning(folder);
    const path = join(folder, 'journal', '2026-11.jsonl');
    const whole = readFileSync(path);
    house.close();
    const keep = whole.toString().trimEnd().split('\n').slice(0, 3).join('\n').length + 1;
    truncateSync(path, keep);
    const cut = new House(folder);
    expect(cut.keeper.desk.turns).toBe(cut.store.head.n);
    expect(cut.recorded).toContain('$1');
    expect(cut.recorded).not.toContain('$3');
    cut.close();
  });

  test('a last line that was cut is left out, and said', async () => {
    const folder = newFolder();
    (await aMorning(folder)).crash();
    const path = join(folder, 'journal', '2026-11.jsonl');
    writeFileSync(path, readFileSync(path).subarray(0, -20));
    const house = new House(folder);
    expect(house.recorded.length).toBeLessThanOrEqual(3);
    expect(house.store.notices.join(' ')).toContain('unfinished line');
    expect(house.keeper.desk.turns).toBe(house.store.head.n);
    house.close();
  });

  test('two on one folder: the second is refused in plain words', async () => {
    const folder = newFolder();
    const house = new House(folder);
    expect(() => new House(folder)).toThrow(/already|another|running/i);
    house.close();
  });
});

test('a crash between journal and inbox records nothing twice', async () => {
  const folder = newFolder();
  const first = new House(folder);
  first.keeper.receive([note('$1', '09:00', 'wiped down blue')]);
  // The note is in the journal; the program ends before the inbox knows.
  const { transport } = first.store;
  transport.done = () => {
    throw new Error('power cut');
  };
  expect(() => first.keeper.work(at('09:00'))).toThrow('power cut');
  first.crash();
  const second = await new House(folder).work('09:01');
  expect(second.recorded).toEqual(['$1']);
  expect(second.reactions).toEqual(['👍 $1']);
  expect(second.store.transport.next()).toBeNull();
  second.close();
});

test('a chat that tells again what is older than a day is asked of the whole record', async () => {
  const folder = newFolder();
  const first = new House(folder);
  await first.hear('09:00', note('$1', '09:00', 'wiped down blue'));
  first.close();
  class Forgetful extends Desk {
    override knows(): boolean {
      return false;
    }
  }
  const second = new House(folder, { makeDesk: () => new Forgetful() });
  second.store.transport.together(() => undefined);
  const old = { ...note('$1', '09:00', 'wiped down blue') };
  const heard: string[] = [];
  const { transport } = second.store;
  let told = false;
  transport.next = () => {
    if (told) return null;
    told = true;
    return { id: old.id, room: old.room, at: '2026-11-23T09:00:00Z', body: old, tries: 0 };
  };
  transport.done = (id) => {
    heard.push(id);
  };
  second.keeper.work(at('09:00') + 25 * 3_600_000);
  expect(heard).toEqual(['$1']);
  expect(second.recorded).toEqual(['$1']);
  second.crash();
});
