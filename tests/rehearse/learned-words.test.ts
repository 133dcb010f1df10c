import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { end, play, posts, type Short, script, stateOf } from './play.ts';

const GUN: readonly Short[] = [
  ['10:40', 'tom', 'calibrated the gun'],
  ['10:41', 'tom', 'green'],
];
const LEARNED: readonly Short[] = [...GUN, ['10:42', 'tom', 'yes']];

/** Plays lines and more lines to half past eleven. */
async function told(lines: readonly Short[], more: readonly Short[]) {
  return await play([...script([...lines, ...more]), end('11:30')]);
}

describe('a word that nobody knows', () => {
  test('is asked about by its own words, and the answer counts from the note’s own time', async () => {
    const did = await told(GUN, []);
    const asked = posts(did, 'question').filter(({ replyTo }) => replyTo === '$1');
    expect(asked[0]?.text).toContain('I do not know “the gun”');
    expect(stateOf(did).scanners.B.calibrated).toBe('2026-11-23T10:40:00Z');
  });

  test('is offered for keeping once, with the name of what it stands for', async () => {
    const did = await told(GUN, []);
    const offers = posts(did, 'question').filter(({ text }) => text?.includes('remember'));
    expect(offers.map(({ text }) => text)).toEqual([
      'Shall I remember “the gun” for green scanner? yes or no',
    ]);
  });

  test('is read from the next note on after a yes', async () => {
    const did = await told(LEARNED, [['10:50', 'rosa', 'wiped the gun down']]);
    expect(did.filter(({ does, to }) => does === 'react' && to === '$4').map(({ key }) => key)).toEqual([
      '👍',
    ]);
    expect(stateOf(did).scanners.B.clean).toBe(true);
  });

  test.each(['no', 'nah', 'no thanks'])('is not kept after “%s”', async (word) => {
    const did = await told(
      [...GUN, ['10:42', 'tom', word]],
      [
        ['10:50', 'tom', 'used tip 4'],
        ['10:51', 'rosa', 'which words have you learned?'],
      ],
    );
    expect(posts(did, 'answer').at(-1)?.text).toContain('None yet');
  });

  test('is not kept where nobody answered', async () => {
    const did = await told(GUN, [['10:51', 'rosa', 'what words do you know?']]);
    expect(posts(did, 'answer').at(-1)?.text).toContain('None yet');
  });

  test.each(['which words have you learned?', 'what words do you know?'])('is listed: “%s”', async (text) => {
    const did = await told(LEARNED, [['10:50', 'rosa', text]]);
    expect(posts(did, 'answer').at(-1)?.text).toContain('the gun: green scanner');
  });

  test.each([
    'forget the gun',
    'please forget “the gun”',
    'Forget the word gun',
    'can you forget the gun please',
  ])('is forgotten on request: “%s”', async (text) => {
    const did = await told(LEARNED, [
      ['10:50', 'rosa', text],
      ['10:51', 'rosa', 'which words have you learned?'],
      ['10:52', 'rosa', 'calibrated the gun'],
    ]);
    expect(posts(did, 'answer').map((post) => post.text)).toEqual([
      'Forgotten: “the gun” no longer means green scanner.',
      expect.stringContaining('None yet'),
    ]);
    expect(posts(did, 'question').at(-1)?.text).toContain('I do not know “the gun”');
  });

  test('that was never learned is nobody’s business to forget', async () => {
    const did = await told([['10:40', 'tom', 'forget the biscuits']], []);
    expect(posts(did, 'answer')).toEqual([]);
  });

  test('is known after a restart, and by the folder put back together', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'scanward-words-'));
    try {
      await play([...script(LEARNED), end('10:45')], undefined, folder);
      const again = script([['10:50', 'rosa', 'wiped the gun down']]).map((line) => ({
        ...line,
        id: '$later',
      }));
      const did = await play([...again, end('10:51')], undefined, folder);
      expect(stateOf(did).scanners.B.clean).toBe(true);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test('stands for a room, with its site', async () => {
    const did = await told(
      [
        ['10:40', 'tom', 'moved green to Fiona’s room'],
        ['10:41', 'tom', 'surgery 2'],
        ['10:42', 'tom', 'yes'],
      ],
      [['10:50', 'rosa', 'moved blue to Fiona’s room']],
    );
    expect(posts(did, 'question').at(-1)?.text).toBe(
      'Shall I remember “Fiona’s room” for Surgery 2, Quay Street? yes or no',
    );
    expect(stateOf(did).scanners.B.room).toBe('s2');
    expect(stateOf(did).scanners.A.room).toBe('s2');
  });

  test('stands for a site', async () => {
    const did = await told(
      [
        ['10:40', 'tom', 'took green to the annexe'],
        ['10:41', 'tom', 'north'],
        ['10:42', 'tom', 'yes'],
      ],
      [['10:50', 'rosa', 'moved blue to the annexe']],
    );
    expect(stateOf(did).scanners.B.site).toBe('north');
    expect(stateOf(did).scanners.A.site).toBe('north');
  });
});

describe('what is never offered for keeping', () => {
  test.each([
    ['scanner D calibrated', 'green'],
    ['tip 44 sent to the autoclave', '4'],
    ['moved green to room 9', 'surgery 2'],
  ])('“%s”: what looks like an id', async (note, answer) => {
    const did = await told(
      [
        ['10:40', 'tom', note],
        ['10:41', 'tom', answer],
      ],
      [],
    );
    expect(posts(did, 'question').filter(({ text }) => text?.includes('remember'))).toEqual([]);
  });
});
