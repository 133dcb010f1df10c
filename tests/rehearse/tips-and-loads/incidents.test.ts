import { describe, expect, test } from 'vitest';
import { posts, stateOf } from '../play.ts';
import {
  CALIBRATED,
  COUNTED,
  day,
  INES,
  JOY,
  LARKMOOR,
  marksOn,
  PAUL,
  postsFrom,
  words,
} from './larkmoor.ts';

const UNSAFE = [COUNTED, CALIBRATED, '09:00 sam: used tip 4', '09:10 joy: tip 4 on coral'];

describe('after such a warning the bot asks whether the tip reached a patient', () => {
  test('as a question, right behind the warning', async () => {
    const did = await day([...UNSAFE, '09:11']);
    expect(postsFrom(did, '09:10').map(({ about }) => about)).toEqual(['warning', 'question']);
    expect(posts(did, 'question').at(-1)?.text).toContain('Did tip 4 reach a patient?');
    expect(posts(did, 'question').at(-1)?.items).toEqual(['tip:4', 'scanner:K']);
  });

  test('yes: the tip is held and the lead is mentioned', async () => {
    const did = await day([...UNSAFE, '09:12 sam: yes', '09:13']);
    const [incident] = posts(did, 'incident');
    expect(incident).toMatchObject({ items: ['tip:4', 'scanner:K'], room: '!mill:example.org' });
    expect(incident?.mentions).toContain(INES);
    expect(stateOf(did).tips['4'].state).toBe('held');
    expect(marksOn(did, '$5')).toEqual([]);
  });

  test('no: nothing follows, and nobody is called', async () => {
    const did = await day([...UNSAFE, '09:12 sam: no', '09:30 paul: incident closed: nothing', '09:31']);
    expect(words(posts(did, 'incident'))).toBe('No incident is open.');
    expect(stateOf(did).tips['4'].state).toBe('fitted');
  });

  test.each([
    ['the deputy where the lead has not spoken that day', [], PAUL],
    ['the lead where she has', ['08:50 ines: morning all'], INES],
  ])('unanswered after 5 minutes: %s', async (_name, before, mentioned) => {
    const did = await day([...before, ...UNSAFE.slice(0), '09:20'].sort());
    const [incident, ...more] = posts(did, 'incident');
    expect(more).toEqual([]);
    expect(incident).toMatchObject({ at: '2026-11-24T09:15:00Z', mentions: [mentioned] });
  });

  test('it stays open in every brief until a senior closes it with what was done', async () => {
    const did = await day([
      ...UNSAFE,
      '09:12 sam: yes',
      '09:20 sam: incident closed: told everyone',
      '2026-11-25 09:00 paul: incident closed: reported, patient followed up',
      '2026-11-26 09:00',
    ]);
    const briefs = posts(did, 'brief').filter(({ room }) => room === '!mill:example.org');
    expect(briefs.map(({ at, text }) => [at.slice(8, 10), text?.includes('Open incident')])).toEqual([
      ['25', true],
      ['26', false],
    ]);
    expect(words(posts(did, 'incident'))).toContain('The incident stays open.');
  });

  describe('“incident closed” alone is asked what was done', () => {
    const ASKED = [...UNSAFE, '09:12 sam: yes', '09:20 ines: incident closed'];
    test.each([
      ['typed plainly', '09:21 ines: dentist told, patient will be followed up', 'closed'],
      ['with a fact of its own', '09:21 ines: dentist told, and tip 4 is binned', 'closed'],
      ['talk', '09:21 ines: one sec, asking dr patel', 'open'],
      ['a fact of something else', '09:21 ines: used tip 6 on lime', 'open'],
      ['by somebody else', '09:21 joy: dentist told', 'open'],
      ['an hour later', '10:30 ines: dentist told', 'open'],
    ])('%s: %s', async (_name, said, now) => {
      const did = await day([...ASKED, said, '2026-11-25 08:20']);
      expect(words(posts(did, 'question'))).toContain('What was done?');
      expect(posts(did, 'brief').at(-1)?.text?.includes('Open incident')).toBe(now === 'open');
      expect(stateOf(did).tips['4'].state).toBe(said.includes('binned') ? 'retired' : 'held');
      if (said.includes('used')) expect(stateOf(did).tips['6'].state).toBe('used');
    });

    test('what is due names it first until then', async () => {
      const did = await day([
        ...ASKED,
        '09:30 ines: what’s due?',
        '09:31 ines: dentist told',
        '09:32 ines: what’s due?',
      ]);
      const [open, closed] = posts(did, 'answer').filter(({ text }) => text?.includes('due'));
      expect(open?.text).toMatch(/^Open incident, 09:10: tip 4 reached a patient/);
      expect(open?.items).toContain('tip:4');
      expect(closed?.text).not.toContain('incident');
    });
  });

  test.each([
    ['sam', 'held'],
    ['joy', 'held'],
    ['ines', 'fitted'],
    ['paul', 'fitted'],
    ['greta', 'fitted'],
  ])('the hold is the lead’s, the deputy’s or the manager’s to release: %s', async (who, state) => {
    const did = await day([...UNSAFE, '09:12 joy: yes', `09:30 ${who}: tip 4 is fine to use again`, '09:31']);
    expect(stateOf(did).tips['4'].state).toBe(state);
    expect(words(postsFrom(did, '09:30')).includes('not released')).toBe(state === 'held');
    expect(marksOn(did, '$6').includes('👍')).toBe(state !== 'held');
  });
});

describe('one contact is asked about once', () => {
  test.each([
    ['scanned with after “yes”', ['09:12 sam: yes', '09:15 joy: starting a scan with coral']],
    ['said used on the scanner that it was fitted to', ['09:15 joy: used tip 4 on coral']],
  ])('%s', async (_name, notes) => {
    const did = await day([...UNSAFE, ...notes, '09:16']);
    expect(posts(did, 'warning')).toHaveLength(1);
    expect(posts(did, 'question').filter(({ text }) => text?.includes('reach a patient'))).toHaveLength(1);
  });

  test('two causes in one note: two warnings, one question', async () => {
    const did = await day([
      COUNTED,
      CALIBRATED,
      '09:00 sam: tip 4 on coral',
      '09:05 sam: starting a scan with coral',
      '09:10 sam: scan done on coral',
      '09:11 sam: wiped coral',
      '09:12 joy: don’t use tip 4',
      '09:20 sam: starting a scan with coral',
      '09:21',
    ]);
    expect(words(posts(did, 'warning'))).toMatch(
      /held[\s\S]*used on an earlier scan|used on an earlier scan[\s\S]*held/,
    );
    expect(posts(did, 'question').filter(({ text }) => text?.includes('reach a patient'))).toHaveLength(1);
  });
});

describe('a correction of the note', () => {
  test('that still says the same tip leaves the incident open', async () => {
    const did = await day([
      ...UNSAFE,
      '09:11 joy: tip 4 on coral at 9:08 [edits $4]',
      '09:12 sam: yes',
      '2026-11-25 08:20',
    ]);
    expect(stateOf(did).tips['4'].state).toBe('held');
    expect(posts(did, 'brief').at(-1)?.text).toContain('Open incident');
  });

  test('that takes its ground away asks nothing more, and the warning and the question say so', async () => {
    const did = await day([...UNSAFE, '09:12 joy: tip 5 on coral [edits $4]', '09:14 sam: yes', '09:20']);
    expect(posts(did, 'incident')).toEqual([]);
    expect(stateOf(did).tips['4'].state).toBe('used');
    const edited = did.filter(({ does }) => does === 'edit').map(({ id }) => id);
    for (const about of ['warning', 'question']) expect(edited).toContain(posts(did, about).at(-1)?.id);
  });
});

describe('closing where several are open', () => {
  const TWO = [
    ...UNSAFE,
    '09:11 joy: yes',
    '09:20 sam: used tip 5',
    '09:21 joy: tip 5 on lime',
    '09:22 joy: yes',
  ];

  test('asks which', async () => {
    const did = await day([...TWO, '09:30 ines: incident closed: all told', '2026-11-25 08:20']);
    expect(words(postsFrom(did, '09:30', 'question'))).toContain('Which one?');
    expect(
      posts(did, 'brief')
        .at(-1)
        ?.text?.match(/Open incident/g),
    ).toHaveLength(2);
  });

  test.each([
    'incident closed: tip 5, told the dentist',
    'incident closed: told the dentist [last incident]',
  ])('“%s” closes that one', async (text) => {
    const did = await day([...TWO, `09:30 ines: ${text}`, '2026-11-25 08:20']);
    expect(posts(did, 'brief').at(-1)?.text).toMatch(/Open incident.*tip 4/);
    expect(posts(did, 'brief').at(-1)?.text).not.toMatch(/Open incident.*tip 5/);
  });
});

describe('holds', () => {
  const HELD = [COUNTED, '09:00 sam: don’t use tip 4, mirror looks odd', '09:05 joy: don’t use tip 5'];

  test.each([
    ['who placed it', 'sam', 'sterile'],
    ['the lead', 'ines', 'sterile'],
    ['nobody else', 'joy', 'held'],
  ])('a hold is released by %s', async (_name, who, state) => {
    const did = await day([...HELD, `09:10 ${who}: tip 4 is fine to use again`, '09:11']);
    expect(stateOf(did).tips['4'].state).toBe(state);
  });

  test('of several tips named at once those that were refused are told, and only the others are read back', async () => {
    const did = await day([...HELD, '09:10 sam: tips 4 and 5 are fine to use again', '09:11']);
    expect(stateOf(did).tips['4'].state).toBe('sterile');
    expect(stateOf(did).tips['5'].state).toBe('held');
    expect(postsFrom(did, '09:10', 'tips').map(({ items }) => items)).toEqual([['tip:5']]);
    expect(words(postsFrom(did, '09:10', 'record'))).toMatch(/^Released: tip 4\b/);
    expect(marksOn(did, '$4')).toEqual([]);
  });

  test('releasing gives back the state it had, and makes nothing sterile', async () => {
    const did = await day([
      COUNTED,
      '09:00 sam: used tip 4',
      '09:01 sam: don’t use tip 4',
      '09:10 ines: tip 4 is fine to use again',
      '09:20 sam: tip 4 on coral',
      '09:21',
    ]);
    expect(words(postsFrom(did, '09:10', 'record'))).toMatch(/Released: tip 4.*not sterile/);
    expect(posts(did, 'warning').at(-1)?.items).toContain('tip:4');
  });

  test('nothing held: said, with no thumb', async () => {
    const did = await day([COUNTED, '09:10 sam: tip 4 is fine to use again', '09:11']);
    expect(words(postsFrom(did, '09:10', 'tips'))).toContain('Nothing to release');
    expect(marksOn(did, '$2')).toEqual([]);
  });

  test('its mirror damaged: held', async () => {
    const did = await day([COUNTED, '09:10 sam: mirror on 4 is cracked', '09:11']);
    expect(stateOf(did).tips['4'].state).toBe('held');
  });
});

test('a lead who is named without a chat identity cannot be known: then anyone may release', async () => {
  const unnamed = LARKMOOR.replaceAll(/, id: "@(ines|paul|greta):example.org"/g, '');
  const did = await day(
    [...UNSAFE, '09:12 joy: yes', '09:30 sam: tip 4 is fine to use again', '09:31'],
    unnamed,
  );
  expect(stateOf(did).tips['4'].state).toBe('fitted');
  expect(words(posts(did, 'incident'))).toContain('Anyone closes it');
  expect(posts(did, 'incident')[0]?.mentions).toEqual([JOY]);
});
