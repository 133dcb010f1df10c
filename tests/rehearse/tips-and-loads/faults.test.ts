import { describe, expect, test } from 'vitest';
import { posts } from '../play.ts';
import { COUNTED, day, postsFrom, words } from './larkmoor.ts';

/** A use of each tip, five minutes apart. A second use on one day with no load between would be the same one told twice. */
function uses(tips: readonly string[], from = 9): string[] {
  return tips.map((tip, n) => {
    const minute = from * 60 + n * 5;
    return `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')} sam: used tip ${tip}`;
  });
}

const OTHERS = uses(['1', '2', '3', '5', '6', '7', '8', '9']);

describe('faults that are unlikely at the practice’s own rate', () => {
  test('are named in the reply to the fault, with the figures', async () => {
    const did = await day([
      COUNTED,
      ...OTHERS,
      '11:00 joy: tip 1 keeps fogging',
      ...uses(['4', '4', '4'], 12),
      '13:00 joy: tip 4 keeps fogging',
      '13:10 joy: tip 4 is misting up again',
      '13:20 joy: tip 4 keeps fogging',
      '13:21',
    ]);
    expect(posts(did, 'fault').map(({ text }) => text?.includes('stands out'))).toEqual([
      false,
      false,
      false,
      true,
    ]);
    // 3 of 3 at the others' 1 in 8: (1 / 8)³, under 0.01.
    expect(posts(did, 'fault').at(-1)?.text).toMatch(/3 faults in its last 3 uses.*1 in 8/);
  });

  test('three faults where everything fogs are no surprise', async () => {
    const did = await day([
      COUNTED,
      ...uses(['1', '2', '3', '5']),
      '10:00 joy: tip 1 keeps fogging',
      '10:01 joy: tip 2 keeps fogging',
      '10:02 joy: tip 3 keeps fogging',
      ...uses(['4', '4', '4'], 12),
      '13:00 joy: tip 4 keeps fogging',
      '13:10 joy: tip 4 keeps fogging',
      '13:20 joy: tip 4 keeps fogging',
      '13:21',
    ]);
    expect(words(posts(did, 'fault'))).not.toContain('stands out');
  });
});

describe('fogging advice follows the cause', () => {
  test('the room’s reading, the seconds it was warmed, the tip fully home, the mirror clean', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: it is 17.5 in surgery 1',
      '09:00 sam: coral is in surgery 1',
      '09:01 sam: tip 4 on coral',
      '09:02 sam: starting a scan with coral',
      '09:05 sam: tip 4 keeps fogging',
      '09:06',
    ]);
    const [fault] = postsFrom(did, '09:05', 'fault');
    expect(fault?.items).toEqual(['tip:4']);
    expect(fault?.text).toMatch(/17.5 °C/);
    // 41 · ln((40 − 17.5) / 6) = 54.2 s, rules of the trade.
    expect(fault?.text).toMatch(/\b5[45] s\b/);
    expect(fault?.text).toMatch(/fully home/);
    expect(fault?.text).toMatch(/[Mm]irror clean/);
  });
});

test('a fault does not by itself say that it was held', async () => {
  const did = await day([COUNTED, '09:05 sam: tip 4 keeps fogging', '09:06 sam: can I use tip 4?', '09:07']);
  expect(posts(did, 'answer').at(-1)?.text).toMatch(/^Yes/);
});
