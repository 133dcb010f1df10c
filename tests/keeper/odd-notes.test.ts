import { describe, expect, test } from 'vitest';
import { Desk } from '../../core/desk/desk.ts';
import { temporaryFolders } from '../store/temp-folder.ts';
import { burst } from './burst.ts';
import { House, note } from './house.ts';

const newFolder = temporaryFolders();

/** A desk whose reader trips over one word. */
class Tripping extends Desk {
  static taken = 0;
  override take(...[input, now]: Parameters<Desk['take']>): ReturnType<Desk['take']> {
    if ('text' in input && input.text.includes('boom')) {
      Tripping.taken += 1;
      // Half way through: something is known that no line of the journal has.
      super.take(
        { ...input, sort: 'note', id: `${input.id}-half`, text: 'binned tip 6, cracked mirror' },
        now,
      );
      throw new Error('the reader tripped');
    }
    return super.take(input, now);
  }
}

describe('a note that makes the reader fail', () => {
  test('is tried three times, set aside and said so; what comes after it is taken', async () => {
    const folder = newFolder();
    const house = new House(folder, { makeDesk: () => new Tripping() });
    Tripping.taken = 0;
    await house.hear('09:00', note('$1', '09:00', 'boom'), note('$2', '09:00', 'wiped down blue'));
    expect(Tripping.taken).toBe(3);
    expect(house.posts.join('\n')).toContain('set it aside');
    expect(house.reactions).toEqual(['👍 $2']);
    expect(house.store.transport.asideList().map(({ id }) => id)).toEqual(['$1']);
    // Nothing of the half-taken note is left.
    expect(JSON.stringify(house.keeper.desk.exported(Date.parse('2026-11-23T09:00:00Z')))).not.toContain(
      'retired',
    );
    house.close();
    const again = await new House(folder, { makeDesk: () => new Tripping() }).work('09:05');
    expect(Tripping.taken).toBe(3);
    expect(again.posts.filter((text) => text.includes('set it aside'))).toEqual([]);
    again.close();
  });
});

describe('odd notes', () => {
  const odd: [string, string][] = [
    ['100 kB of words', 'wiped down blue and then some more '.repeat(3_000)],
    ['100 kB without a space', 'x'.repeat(100_000)],
    ['100 kB of digits', '4'.repeat(100_000)],
    ['control characters', 'wiped\u0000 down\u0007 \u001b[31mblue\u0000'],
    ['line ends of every sort', 'wiped down blue\r\n\u2028\u2029\u0085tip 4 on blue'],
    ['half a surrogate pair', 'wiped down blue \ud83d'],
    ['right-to-left marks', '\u202ewiped down blue\u202c'],
    ['nothing', ''],
    ['a flood of commas', ','.repeat(50_000)],
    ['a flood of tips', `used tips ${Array.from({ length: 5_000 }, (_, n) => n).join(', ')}`],
  ];
  test.each(odd)('%s: is taken or left, and the next note is taken', async (_name, text) => {
    const folder = newFolder();
    const house = new House(folder);
    await house.hear('09:00', note('$1', '09:00', text), note('$2', '09:01', 'wiped down green'));
    expect(house.reactions).toContain('👍 $2');
    expect(house.store.transport.next()).toBeNull();
    expect(house.store.transport.asideList()).toEqual([]);
    const before = house.keeper.desk.exported(Date.parse('2026-11-23T09:05:00Z'));
    house.crash();
    // What was kept of it reads back.
    const again = new House(folder);
    expect(again.keeper.desk.exported(Date.parse('2026-11-23T09:05:00Z'))).toEqual(before);
    again.close();
  });
});

test('a burst of notes, some told twice: each is in the record once, in order', async () => {
  // `npm run faults` has 10,000.
  await burst(newFolder(), 1_000);
}, 60_000);
