import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { sampleTurn } from './sample-turns.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();
// A folder as the first release wrote it. Never written again: a later version gets a folder beside it.
const v1 = fileURLToPath(new URL('fixtures/v1', import.meta.url));
const head = { n: 8, hash: '9cf4dcde21c8be5d669d36a3958ea1b69cabfd3a9f68f398bea44bc92762718c' };

describe('a folder written by version 1', () => {
  it('still verifies', () => {
    expect(verifyRecord(v1)).toMatchObject({
      fault: null,
      head,
      months: 2,
      forgotten: 3,
      snapshot: 'its place in the journal',
    });
  });

  it('opens, with everything in it, and goes on', () => {
    const folder = join(newFolder(), 'v1');
    cpSync(v1, folder, { recursive: true });
    const store = openStore(folder);
    expect([store.head, store.readOnly, store.notices]).toEqual([head, null, []]);
    expect(store.snapshot()).toMatchObject({ n: 7, value: { lines: 7 } });
    const lines = [...store.lines()];
    expect(lines).toHaveLength(8);
    expect(lines[2]?.turn).toMatchObject({
      text: '(forgotten)',
      effects: [{ message: [{ line: ['(forgotten)', { strong: '(forgotten)' }] }] }],
    });
    expect(lines[4]?.turn).toMatchObject({ cause: { from: '(forgotten)' }, text: 'used tip 3 – café' });
    expect(lines[7]?.turn).toEqual(sampleTurn(20, { reason: 'after the snapshot' }).turn);
    expect(store.lineOfEvent('$event3')).toBe(5);
    const { transport } = store;
    expect([transport.next()?.id, transport.position(), transport.enqueuedThrough()]).toEqual([
      '$open',
      's42',
      8,
    ]);
    expect(transport.unsent().map(({ key }) => key)).toEqual(['b']);
    expect([transport.keyOf('$sent'), transport.eventIdOf('a')]).toEqual(['a', '$sent']);
    store.append([sampleTurn(30, { text: 'written by a later build' })]);
    store.close();
    expect(verifyRecord(folder)).toMatchObject({ fault: null, head: { n: 9 } });
  });
});
