import { describe, expect, test } from 'vitest';
import { posts } from '../play.ts';
import { CALIBRATED, COUNTED, day, marksOn, words } from './larkmoor.ts';

const CONCERNED = [
  COUNTED,
  CALIBRATED,
  '09:00 sam: load 61 on with tips 1 and 2',
  '09:40 sam: load 61 passed, 134 for 4 min',
  '10:00 sam: tip 1 on coral',
  '10:05 sam: starting a scan with coral, tip 1',
  '10:20 sam: scan done on coral',
  '11:00 ines: load 61 failed',
];
const NEXT_DAY = ['2026-11-25 09:00'];

function brief(did: Awaited<ReturnType<typeof day>>): string {
  return (
    posts(did, 'brief')
      .filter(({ room }) => room === '!mill:example.org')
      .at(-1)?.text ?? ''
  );
}

describe('a failed load with scans concerned, or a positive spore test, is an incident', () => {
  test.each([
    ['failed load', CONCERNED, 'load 61 failed'],
    ['spore test', [COUNTED, '11:00 sam: spore test came back positive'], 'spore test positive'],
  ])('%s: open in the brief until it is closed', async (_name, notes, named) => {
    expect(brief(await day([...notes, ...NEXT_DAY]))).toContain(named);
  });

  test('a failed load that concerned nobody opens none', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: load 61 on with tips 1 and 2',
      '09:40 sam: load 61 failed',
      ...NEXT_DAY,
    ]);
    expect(brief(did)).not.toContain('Open incident');
  });

  test.each([
    ['look-back closed: every patient seen', 'ines', true],
    ['incident closed: every patient seen', 'paul', true],
    ['closed: every patient seen [last warning]', 'greta', true],
    ['look-back closed: every patient seen', 'joy', false],
  ])('“%s” by %s', async (text, who, closed) => {
    const did = await day([...CONCERNED, `11:30 ${who}: ${text}`, ...NEXT_DAY]);
    expect(brief(did).includes('Open incident')).toBe(!closed);
    expect(marksOn(did, '$9').includes('👍')).toBe(closed);
    if (!closed) expect(words(posts(did, 'incident'))).toContain('stays open');
  });
});
