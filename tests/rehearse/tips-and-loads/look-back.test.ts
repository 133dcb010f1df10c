import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { CALIBRATED, COUNTED, day, INES, postsFrom, words } from './larkmoor.ts';

/** Tips 1 to 4 through load 50; 1 and 2 scanned with after it; both through load 51; 2 scanned with again; 3 only fitted. */
const USED = [
  COUNTED,
  CALIBRATED,
  '08:40 sam: used tips 1, 2, 3 and 4',
  '09:00 sam: load 50 on with tips 1, 2, 3, 4',
  '09:30 sam: load 50 passed, 134 for 3.5 min, strip fine, dry',
  '10:02 joy: starting a scan with coral, tip 1, surgery 1',
  '10:10 joy: scan done on coral',
  '10:11 joy: wiped coral',
  '10:20 joy: starting a scan with lime, tip 2, surgery 2',
  '10:30 joy: scan done on lime',
  '10:31 joy: wiped lime',
  '10:35 joy: load 51 on with tips 1, 2',
  '11:00 joy: load 51 passed, 134 for 3.5 min',
  '11:05 joy: starting a scan with lime, tip 2, surgery 2',
  '11:15 joy: scan done on lime',
  '11:20 joy: tip 3 on coral',
];

describe('a load that was taken as passed and failed', () => {
  test('warning to the lead with every scan concerned, by time, scanner and room, newest first', async () => {
    const did = await day([...USED, '11:30 sam: load 50 failed', '11:31']);
    const [warning, ...more] = postsFrom(did, '11:30', 'warning');
    expect(more).toEqual([]);
    expect(warning?.mentions).toContain(INES);
    expect(warning?.items).toEqual(expect.arrayContaining(['load:50', 'tip:1', 'tip:2', 'tip:3']));
    const lines = (warning?.text ?? '').split('\n').filter((line) => line.startsWith('•'));
    expect(lines).toEqual([
      expect.stringMatching(/11:20, coral scanner, Surgery 1.*tip 3 fitted, no scan noted/),
      expect.stringMatching(/10:20, lime scanner, Surgery 2.*tip 2 \(Joy\)/),
      expect.stringMatching(/10:02, coral scanner, Surgery 1.*tip 1 \(Joy\)/),
    ]);
  });

  test('its tips are used, not sterile; those through a good load since are left alone', async () => {
    const did = await day([...USED, '11:30 sam: load 50 failed', '11:31']);
    expect(stateOf(did).tips).toMatchObject({
      1: { state: 'sterile', load: '51' },
      2: { state: 'used' },
      3: { state: 'fitted' },
      4: { state: 'used', load: '50' },
    });
  });

  test('nothing used since: no warning, and nobody is called', async () => {
    const did = await day([...USED.slice(0, 4), '09:30 sam: load 50 failed', '09:31']);
    expect(posts(did, 'warning')).toEqual([]);
    expect(posts(did, 'look-back')[0]).toMatchObject({ items: ['load:50'], mentions: [] });
    expect(posts(did, 'look-back')[0]?.text).toContain('None was fitted or used since');
  });

  test('a scan whose time is a stretch counts if any of it falls inside', async () => {
    const did = await day([
      ...USED.slice(0, 5),
      '12:00 joy: used tip 4 on coral this morning',
      '12:10 sam: load 50 failed',
      '12:11',
    ]);
    expect(words(postsFrom(did, '12:10', 'warning'))).toMatch(/between 08:30 and .*tip 4/);
  });

  test('“passed after all” from anybody else is a question to the lead, and her word settles it', async () => {
    const did = await day([
      ...USED,
      '11:30 sam: load 50 failed',
      '11:41 joy: load 50 passed',
      '11:45 ines: load 50 passed',
      '11:50 joy: starting a scan with coral',
      '11:51',
    ]);
    expect(postsFrom(did, '11:41', 'question')[0]).toMatchObject({ items: ['load:50'], mentions: [INES] });
    expect(stateOf(did).tips['4']).toMatchObject({ state: 'sterile', load: '50' });
    // Fitted before the failure was noted, and good again: no warning stays over it.
    expect(postsFrom(did, '11:50', 'warning')).toEqual([]);
  });

  test('its author may take it back within ten minutes', async () => {
    const did = await day([...USED, '11:30 sam: load 50 failed', '11:38 sam: load 50 passed', '11:39']);
    expect(stateOf(did).tips['4'].state).toBe('sterile');
  });

  test('a note of the pass that is edited to failed does the same', async () => {
    const did = await day([...USED, '11:30 sam: load 50 failed, strip hadn’t turned [edits $5]', '11:31']);
    expect(words(postsFrom(did, '11:30', 'warning'))).toMatch(/11:20.*\n.*10:20.*\n.*10:02/);
  });

  test('“where did those tips go?” is answered with the same list', async () => {
    const did = await day([...USED, '11:30 sam: load 50 failed: where did those tips go?', '11:31']);
    expect(words(postsFrom(did, '11:30', 'look-back'))).toContain('10:02');
  });
});

test('which scans used tip 2 since its last good load', async () => {
  const did = await day([...USED, '11:30 sam: which scans used tip 2 since its last good load?', '11:31']);
  const [answer] = postsFrom(did, '11:30');
  expect(answer?.text).toContain('11:05');
  expect(answer?.text).not.toContain('10:20');
});
