import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import { CALIBRATED, COUNTED, day, postsFrom, words } from './larkmoor.ts';

/** Tip 4, used at nine, is fitted at ten past: is it answered whether it reached a patient? */
const UNSAFE = [COUNTED, CALIBRATED, '09:00 sam: used tip 4', '09:10 joy: tip 4 on coral'];

/** Tip 4 is held: the answer was taken as yes. */
async function held(notes: readonly string[]): Promise<boolean> {
  return stateOf(await day([...UNSAFE, ...notes])).tips['4'].state === 'held';
}

describe('a late answer to “did it reach a patient?”', () => {
  test.each([
    ['within the hour, bare', ['09:50 sam: yes', '09:51']],
    ['an hour after the lead was called, bare', ['10:14 sam: yes', '10:16']],
    ['hours later, in reply to the question', ['14:00 sam: yes [last question]', '14:01']],
    ['hours later, in reply to the warning', ['14:00 sam: yes [last warning]', '14:01']],
    ['hours later, in reply to the mention of the lead', ['14:00 sam: yes [last incident]', '14:01']],
    ['hours later, in reply to the note', ['14:00 sam: yes [$4]', '14:01']],
    ['hours later, with the tip’s number', ['14:00 sam: yes, tip 4', '14:01']],
    ['the next morning, in reply to the brief', ['2026-11-25 08:20 sam: yes [last brief]', '08:21']],
  ])('given it comes %s, then it is taken', async (_name, notes) => {
    expect(await held(notes)).toBe(true);
  });

  test('given a bare yes comes hours later, then nothing is taken and it is said how to answer', async () => {
    const did = await day([...UNSAFE, '14:00 sam: yes', '14:01']);
    expect(stateOf(did).tips['4'].state).toBe('fitted');
    expect(words(postsFrom(did, '14:00'))).toBe(
      'Is that for tip 4? Asked at 09:10, still open. Reply to that post, or type “yes, tip 4”.',
    );
  });

  test('given a bare no comes the day after, then it is talk, and the incident is open', async () => {
    const did = await day([...UNSAFE, '2026-11-25 12:00 sam: no', '12:01', '2026-11-26 08:20']);
    expect(words(posts(did, 'question'))).not.toContain('Is that for');
    expect(posts(did, 'brief').at(-1)?.text).toContain('did tip 4 reach a patient?');
  });

  test('given a no replies to a colleague’s other note, then it is for the colleague', async () => {
    const did = await day([
      ...UNSAFE,
      '09:12 joy: is the kettle on',
      '09:13 sam: no [$5]',
      '2026-11-25 08:20',
    ]);
    expect(posts(did, 'brief').at(-1)?.text).toContain('did tip 4 reach a patient?');
  });
});

describe('an incident is closed with what was done', () => {
  const OPEN = [...UNSAFE, '09:12 sam: yes'];

  test('given the lead closes it with no reason, then it is asked for, and it stays open until it is said', async () => {
    const did = await day([...OPEN, '09:30 ines: incident closed', '2026-11-25 08:20']);
    expect(words(postsFrom(did, '09:30'))).toContain('What was done?');
    expect(posts(did, 'brief').at(-1)?.text).toContain('Open incident');
  });

  test.each(['dentist told, patient seen', 'closed: dentist told, patient seen'])(
    'given the reason comes in reply (%s), then it is closed with it, and that is shown',
    async (reply) => {
      const did = await day([
        ...OPEN,
        '09:30 ines: incident closed',
        `09:32 ines: ${reply} [last question]`,
        '2026-11-25 08:20',
        '09:00 greta: record for yesterday please',
        '09:01',
      ]);
      expect(posts(did, 'brief').at(-1)?.text).not.toContain('Open incident');
      expect(posts(did, 'record').at(-1)?.text).toContain('Incidents: 1, none open');
    },
  );

  test.each(['09:30 ines: look-back closed', '09:30 ines: closed [last incident]'])(
    'given it is closed with other words and no reason (%s), then the reason is asked for',
    async (note) => {
      expect(words(postsFrom(await day([...OPEN, note, '09:31']), '09:30'))).toContain('What was done?');
    },
  );

  test.each(['ok', 'done', 'yes'])('given the reply says nothing (%s), then it stays open', async (reply) => {
    const did = await day([
      ...OPEN,
      '09:30 ines: incident closed',
      `09:32 ines: ${reply} [last question]`,
      '2026-11-25 08:20',
    ]);
    expect(posts(did, 'brief').at(-1)?.text).toContain('Open incident');
  });

  test('given somebody else closes it with no reason, then who may is said, and no reason is asked for', async () => {
    const did = await day([...OPEN, '09:30 joy: incident closed', '09:31']);
    expect(words(postsFrom(did, '09:30'))).toMatch(/^The incident stays open\. Ines/);
  });
});
