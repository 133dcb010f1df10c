import { describe, expect, test } from 'vitest';
import { verifyRecord } from '../../bot/store/verify.ts';
import { PRACTICE } from '../rehearse/play.ts';
import { temporaryFolders } from '../store/temp-folder.ts';
import { at, House, note } from './house.ts';

const newFolder = temporaryFolders();

const WANTED = PRACTICE.replace('{loadTable: uk}', '{loadTable: uk, nightlyHash: true}').replace(
  'name: North Clinic',
  'name: North Clinic\n    closed: [2026-11-24]',
);

async function aDay(folder: string, practice = WANTED): Promise<House> {
  const house = new House(folder);
  house.keeper.settle(practice, at('08:00'));
  return house.hear('09:00', note('$1', '09:00', 'wiped down blue'));
}

/** Posts with a hash: room and the line that can be copied. */
function hashesOf(house: House): string[] {
  return house.delivered.flatMap((effect) => {
    if (effect.does !== 'post' || !effect.key.startsWith('hash/')) return [];
    const [, copied] = effect.message;
    const words = copied !== undefined && 'line' in copied ? copied.line.join('') : '';
    return [`${effect.room} ${words}`];
  });
}

describe('the hash of the record, each night', () => {
  test('is posted to each chat room in the minute of its closing, once, and holds', async () => {
    const folder = newFolder();
    let house = await aDay(folder);
    await house.work('17:29:59');
    expect(hashesOf(house)).toEqual([]);
    expect(house.keeper.next(at('17:29:59'))).toBe(at('17:30'));
    await house.work('17:30');
    const { n, hash } = house.store.head;
    expect(hashesOf(house)).toEqual([`!quay:example.org ${n}:${hash}`, `!north:example.org ${n}:${hash}`]);
    await house.work('17:30:30');
    expect(hashesOf(house)).toHaveLength(2);
    house.close();
    house = new House(folder);
    house.keeper.settle(WANTED, at('17:30:40'));
    await house.work('17:30:50');
    expect(hashesOf(house)).toEqual([]);
    await house.hear('17:40', note('$2', '17:40', 'wiped down green'));
    house.close();
    expect(verifyRecord(folder, { expected: { n, hash } }).expected?.what).toBe('stands');
  });

  test('the record itself has no line of it', async () => {
    const house = await aDay(newFolder());
    await house.work('17:20');
    const before = house.store.head.n;
    await house.work('17:30');
    expect([house.store.head.n, hashesOf(house).length]).toEqual([before, 2]);
    house.close();
  });

  test('one that was missed is not made up for, and a closed site has none', async () => {
    const house = await aDay(newFolder());
    await house.work('17:31');
    expect(hashesOf(house)).toEqual([]);
    const tomorrow = at('17:30') + 24 * 3_600_000;
    house.keeper.wake(tomorrow);
    await house.work('18:00');
    expect(hashesOf(house).map((line) => line.split(' ')[0])).toEqual(['!quay:example.org']);
    house.close();
  });

  test('nobody asked for it: nothing is posted', async () => {
    const house = await aDay(newFolder(), PRACTICE);
    await house.work('17:30');
    expect(hashesOf(house)).toEqual([]);
    house.close();
  });
});
