import { describe, expect, it } from 'vitest';
import { openStore } from '../../bot/store/store.ts';
import { verifyRecord } from '../../bot/store/verify.ts';
import { sampleTurn } from '../store/sample-turns.ts';
import { temporaryFolders } from '../store/temp-folder.ts';

const newFolder = temporaryFolders();

describe('what comes twice, late or at the wrong time', () => {
  it('lets 10,000 repeats of event ids change nothing', () => {
    const store = openStore(newFolder());
    const events = Array.from({ length: 100 }, (_, i) => ({
      id: `$${i}`,
      room: '!quay',
      at: '2026-11-23T08:00:00Z',
      body: i,
    }));
    store.transport.receive(events);
    for (let i = 0; i < 60; i++) store.transport.done(`$${i}`);
    for (let i = 0; i < 100; i++) store.transport.receive(events.toReversed());
    const open: string[] = [];
    for (let event = store.transport.next(); event !== null; event = store.transport.next()) {
      open.push(event.id);
      store.transport.done(event.id);
    }
    expect(open).toEqual(Array.from({ length: 40 }, (_, i) => `$${60 + i}`));
    store.close();
  });

  it('takes instants in any order: an hour back, a day forward, a year ahead and back', () => {
    const folder = newFolder();
    let store = openStore(folder);
    const at = [
      '2026-11-30T10:00:00Z',
      '2026-11-30T09:00:00Z',
      '2026-12-01T10:00:00Z',
      '2026-11-30T10:01:00Z',
      '2027-12-01T00:00:00Z',
      '2026-12-02T08:00:00Z',
    ];
    for (const [i, each] of at.entries()) {
      store.append([{ ...sampleTurn(i), at: each }]);
      store.close();
      store = openStore(folder);
    }
    expect([...store.lines()].map((line) => line.at)).toEqual(at);
    expect(store.notices).toEqual([]);
    store.close();
    expect(verifyRecord(folder)).toMatchObject({ fault: null, months: 3, head: { n: 6 } });
  });
});
