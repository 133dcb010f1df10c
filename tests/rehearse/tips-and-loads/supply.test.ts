import { describe, expect, test } from 'vitest';
import { posts } from '../play.ts';
import { day, postsFrom, words } from './larkmoor.ts';

/** Three sterile tips at Mill Road, six used; four at Hill Clinic. */
const EVE = [
  '2026-11-23 08:31 sam: tips 1 to 9 are sterile and on the shelf',
  '08:32 joy@hill: tips 20 to 23 are sterile and on the shelf',
  '16:00 sam: used tips 1, 2, 3, 4, 5 and 6',
];
const FIVE = '16:01 sam: 5 scans tomorrow at 9, 9:30, 10, 11 and 14:00';

function millBrief(did: Awaited<ReturnType<typeof day>>): string {
  return posts(did, 'brief').findLast(({ room }) => room?.startsWith('!mill'))?.text ?? '';
}

describe('sterile tips against booked scans, one tip a scan', () => {
  test('the brief says when the site runs short, at which scan, and what would prevent it', async () => {
    const did = await day([...EVE, FIVE, '2026-11-24 08:20']);
    expect(millBrief(did)).toMatch(
      /Short of sterile tips from 11:00: 2 scans go without\. Send tips 1, 2 by 09:30/,
    );
  });

  test('too late to send: how many to bring, and from which site', async () => {
    const did = await day([
      ...EVE,
      '16:01 sam: 5 scans tomorrow at 8:30, 8:45, 9, 9:15 and 9:30',
      '2026-11-24 08:20',
    ]);
    expect(millBrief(did)).toMatch(/from 09:15.*Bring 2 tips from Hill Clinic/);
  });

  test('what is sent is sterile again 90 minutes later', async () => {
    const did = await day([
      ...EVE,
      FIVE,
      '2026-11-24 09:25 sam: tips 1 and 2 sent to autoclave',
      '09:26 sam: have we enough tips for today?',
      '09:27',
    ]);
    expect(words(postsFrom(did, '09:26', 'supply'))).toContain('Enough once the autoclave’s tips are back');
  });

  test('enough: nothing of it', async () => {
    const did = await day([...EVE, '16:01 sam: 3 scans tomorrow at 9, 10 and 11', '2026-11-24 08:20']);
    expect(millBrief(did)).not.toContain('Short');
    expect(posts(did, 'supply')).toEqual([]);
  });

  test('a held tip is no stock, nor is one on its way', async () => {
    const did = await day([
      ...EVE,
      '16:01 sam: 3 scans tomorrow at 9, 10 and 11',
      '16:05 sam: don’t use tip 7',
      '16:06 sam: tip 8 has just left for hill',
      '2026-11-24 08:20',
    ]);
    expect(millBrief(did)).toContain('Short of sterile tips from 10:00');
  });

  test('bookings with no times are spread evenly over the hours', async () => {
    const did = await day([
      ...EVE,
      '16:01 sam: 4 scans tomorrow',
      '16:05 sam: have we enough tips for tomorrow?',
      '16:06',
    ]);
    // 08:30 to 17:30 in four parts: the fourth scan is in the last of them.
    expect(words(postsFrom(did, '16:05', 'supply'))).toMatch(/from tomorrow (about )?1[4-7]:\d\d/);
  });

  test('a cancelled scan takes no tip', async () => {
    const did = await day([
      ...EVE,
      FIVE,
      '16:10 sam: the 10:00 and 11:00 scans tomorrow are cancelled',
      '2026-11-24 08:20',
    ]);
    expect(millBrief(did)).not.toContain('Short');
  });
});
