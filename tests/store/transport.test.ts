import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../bot/store/store.ts';
import { transportOn } from '../../bot/store/transport.ts';
import { openTransportDb } from '../../bot/store/transport-schema.ts';
import { temporaryFolders } from './temp-folder.ts';

const newFolder = temporaryFolders();
const event = (id: string, body: unknown = { text: id }) => ({
  id,
  room: '!quay',
  at: '2026-11-23T08:00:00Z',
  body,
});
const effect = (key: string) => ({ key, room: '!quay', body: { does: 'post', text: key } });

describe('the inbox', () => {
  it('hands out in order, counts tries, and keeps what was set aside', () => {
    const store = openStore(newFolder());
    const { transport } = store;
    expect([transport.next(), transport.position()]).toEqual([null, null]);
    transport.receive([event('$1'), event('$2'), event('$3')], 's1');
    expect(transport.next()).toEqual({ ...event('$1'), tries: 0 });
    expect([transport.tried('$1'), transport.tried('$1'), transport.tried('$1')]).toEqual([1, 2, 3]);
    expect(transport.next()?.tries).toBe(3);
    transport.setAside('$1', 'the reader failed');
    expect(transport.next()?.id).toBe('$2');
    transport.done('$2');
    expect(transport.next()?.id).toBe('$3');
    expect(transport.asideList()).toEqual([
      { id: '$1', room: '!quay', at: '2026-11-23T08:00:00Z', why: 'the reader failed' },
    ]);
    expect(transport.position()).toBe('s1');
    store.close();
  });

  it('lets a repeat change nothing, whether open, done or set aside, over a restart', () => {
    const folder = newFolder();
    const store = openStore(folder);
    store.transport.receive([event('$1'), event('$2'), event('$3'), event('$1', 'again')]);
    store.transport.done('$1');
    store.transport.setAside('$2', 'why');
    store.close();
    const again = openStore(folder);
    again.transport.receive([event('$1', 'later'), event('$2', 'later'), event('$3', 'later')], 's2');
    expect(again.transport.next()).toEqual({ ...event('$3'), tries: 0 });
    again.transport.done('$3');
    expect(again.transport.next()).toBeNull();
    expect(again.transport.position()).toBe('s2');
    again.close();
  });

  it('keeps nothing of what was typed once done', () => {
    const folder = newFolder();
    const store = openStore(folder);
    store.transport.receive([event('$1', { text: 'unusual-word' })]);
    store.transport.done('$1');
    store.close();
    expect(readFileSync(join(folder, 'transport.db')).includes('unusual-word')).toBe(false);
  });
});

describe('the outbox', () => {
  it('sends in order, once, and knows its posts by event', () => {
    const store = openStore(newFolder());
    const { transport } = store;
    transport.enqueue(3, [effect('a'), effect('b')]);
    transport.enqueue(2, [effect('a'), effect('c')]);
    expect(transport.enqueuedThrough()).toBe(3);
    expect(transport.unsent()).toEqual([effect('a'), effect('b'), effect('c')]);
    transport.sent('a', '$out1');
    transport.sent('b', null);
    expect(transport.unsent().map((each) => each.key)).toEqual(['c']);
    transport.enqueue(4, [effect('a'), effect('b')]);
    expect(transport.unsent().map((each) => each.key)).toEqual(['c']);
    expect([transport.eventIdOf('a'), transport.eventIdOf('b'), transport.eventIdOf('z')]).toEqual([
      '$out1',
      null,
      null,
    ]);
    expect([transport.keyOf('$out1'), transport.keyOf('$other')]).toEqual(['a', null]);
    store.close();
  });

  it('does several things together or none', () => {
    const store = openStore(newFolder());
    const { transport } = store;
    transport.receive([event('$1')]);
    const work = (): void => {
      transport.enqueue(1, [effect('a')]);
      transport.done('$1');
      throw new Error('stop');
    };
    expect(() => transport.together(work)).toThrow('stop');
    expect([transport.next()?.id, transport.unsent(), transport.enqueuedThrough()]).toEqual(['$1', [], 0]);
    store.close();
  });
});

describe('trouble with the database', () => {
  it('says in plain words that the disk is full, and keeps nothing of that call', () => {
    const db = openTransportDb(join(newFolder(), 'transport.db'));
    const transport = transportOn(db);
    const pages = Number(db.prepare('PRAGMA page_count').get()?.page_count);
    db.exec(`PRAGMA max_page_count = ${pages + 2}`);
    const many = Array.from({ length: 200 }, (_, i) => event(`$${i}`));
    expect(() => transport.receive(many, 's1')).toThrow(/could not be kept: the disk is full/);
    expect([transport.next(), transport.position()]).toEqual([null, null]);
    db.exec('PRAGMA max_page_count = 100000');
    transport.receive(many, 's1');
    expect(transport.next()?.id).toBe('$0');
    transport.close();
  });

  it('sets a damaged file aside, says so, and goes on', () => {
    const folder = newFolder();
    openStore(folder).close();
    writeFileSync(join(folder, 'transport.db'), 'x'.repeat(8192));
    const store = openStore(folder);
    expect(store.notices.join()).toContain('transport.db was damaged');
    store.transport.receive([event('$1')]);
    expect(store.transport.next()?.id).toBe('$1');
    store.close();
    expect(readFileSync(join(folder, 'set-aside', '1-transport.db'), 'utf8')).toBe('x'.repeat(8192));
  });
});
