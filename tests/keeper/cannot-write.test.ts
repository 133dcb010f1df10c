import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type FsLike, machineFs } from '../../bot/store/fs-port.ts';
import { temporaryFolders } from '../store/temp-folder.ts';
import { House, note } from './house.ts';

const newFolder = temporaryFolders();

/** The machine's files on a disk that can be filled and emptied again. */
function disk(): { fs: FsLike; full: boolean } {
  const state = { full: false, fs: machineFs };
  state.fs = {
    ...machineFs,
    write: (fd, bytes) => {
      if (state.full) throw Object.assign(new Error('ENOSPC: made to fail'), { code: 'ENOSPC' });
      return machineFs.write(fd, bytes);
    },
  };
  return state;
}

/** A record whose second line is not as it was written. */
async function damagedFolder(): Promise<string> {
  const folder = newFolder();
  const house = new House(folder);
  await house.hear('09:00', note('$1', '09:00', 'tips 1 to 8 are sterile and on the shelf'));
  await house.hear('09:10', note('$2', '09:10', 'wiped down blue'));
  await house.hear('09:20', note('$3', '09:20', 'wiped down green'));
  house.crash();
  const path = join(folder, 'journal', '2026-11.jsonl');
  const text = readFileSync(path, 'utf8');
  writeFileSync(path, text.replace('"wiped"', '"wiper"'));
  return folder;
}

describe('a damaged record', () => {
  test('nothing is appended; the rooms are told once; questions are answered; notes wait', async () => {
    const folder = await damagedFolder();
    const house = new House(folder);
    expect(house.store.readOnly).not.toBeNull();
    const before = house.store.head.n;
    await house.work('10:00');
    const told = house.posts;
    expect(told).toHaveLength(2);
    expect(told[0]).toContain('I can write nothing down just now.');
    await house.hear('10:01', note('$4', '10:01', 'used tip 4'), note('$5', '10:01', 'which tips are out?'));
    expect(house.posts).toHaveLength(3);
    expect(house.posts[2]).toMatch(/tip/i);
    await house.hear('10:02', note('$6', '10:02', 'wiped down blue'));
    await house.work('12:00');
    expect(house.posts).toHaveLength(3);
    expect(house.reactions).toEqual([]);
    expect(house.store.head.n).toBe(before);
    expect(house.keeper.next(0)).toBeNull();
    // The question is dealt with; the notes are not lost.
    expect(house.store.transport.next()?.id).toBe('$4');
    house.close();
  });
});

describe('a full disk', () => {
  test('a note waits, is told of once, and is taken in when there is room again', async () => {
    const state = disk();
    const house = new House(newFolder(), { fs: state.fs });
    await house.hear('09:00', note('$1', '09:00', 'tips 1 to 8 are sterile and on the shelf'));
    state.full = true;
    await house.hear('09:10', note('$2', '09:10', 'tip 4 on blue'));
    await house.work('09:11');
    await house.hear('09:12', note('$3', '09:12', 'which tips are out?'));
    const told = house.posts.filter((text) => text.includes('I can write nothing down'));
    expect(told).toHaveLength(2);
    expect(told[0]).toContain('the disk is full: make room');
    expect(house.recorded).toEqual(['$1']);
    expect(house.reactions.filter((each) => each.endsWith(' $2'))).toEqual([]);
    // What is in memory is what is in the journal.
    expect(JSON.stringify(house.keeper.desk.exported(0))).not.toContain('fitted');
    state.full = false;
    await house.work('09:15');
    expect(house.recorded).toEqual(['$1', '$2']);
    expect(house.reactions.filter((each) => each.endsWith(' $2'))).not.toEqual([]);
    expect(house.posts.filter((text) => text.includes('I can write nothing down'))).toHaveLength(2);
    house.close();
  });
});

test('a journal that took the note while the outbox could not: it is said later, once', async () => {
  const house = new House(newFolder());
  const { transport } = house.store;
  const enqueue = transport.enqueue;
  let broken = true;
  transport.enqueue = (turn, effects) => {
    if (broken && effects.length > 0)
      throw Object.assign(new Error('the disk is full'), { name: 'StoreTrouble' });
    enqueue(turn, effects);
  };
  await house.hear('09:00', note('$1', '09:00', 'wiped down blue'));
  expect(house.reactions).toEqual([]);
  broken = false;
  await house.work('09:01');
  await house.work('09:02');
  expect(house.recorded).toEqual(['$1']);
  expect(house.reactions).toEqual(['👍 $1']);
  house.close();
});
