import { describe, expect, test } from 'vitest';
import { end, play, posts, script, stateOf } from './play.ts';

const react = (time: string, about: string, key: string, who = 'tom') => ({
  at: `2026-11-23T${time}:00Z`,
  room: '!quay:example.org',
  from: `@${who}:example.org`,
  id: `$react${time}`,
  reacts: { last: about },
  key,
});

describe('the weekly request', () => {
  const start = script([['08:00', 'tom', 'morning all']]);

  test('comes at 10:30 for both scanners of the site in one post', async () => {
    const did = await play([...start, end('10:45')]);
    const asked = posts(did, 'calibration');
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatchObject({ at: '2026-11-23T10:30:00Z', room: '!quay:example.org' });
    expect(asked[0]?.items).toEqual(['scanner:A', 'scanner:B']);
  });

  test('asked again after 60 minutes, the lead named after 120, then silence', async () => {
    const did = await play([...start, end('17:00')]);
    const about = did.filter((one) => one.does === 'post' && /calibration|escalation/.test(one.about ?? ''));
    expect(about.map((one) => one.at)).toEqual([
      '2026-11-23T10:30:00Z',
      '2026-11-23T11:30:00Z',
      '2026-11-23T12:30:00Z',
    ]);
    expect(about[2]?.mentions).toEqual(['@rosa:example.org']);
  });

  test('✅ on a post that names two asks which; "all of them" records both', async () => {
    const all = {
      at: '2026-11-23T10:42:00Z',
      room: '!quay:example.org',
      from: '@tom:example.org',
      id: '$all',
      text: '3',
    };
    const did = await play([...start, react('10:40', 'calibration', '✅'), all, end('10:45')]);
    expect(stateOf(did).scanners.A.ready).toBe(true);
    expect(stateOf(did).scanners.B.ready).toBe(true);
    expect(did.filter((one) => one.does === 'edit')).toHaveLength(1);
  });

  test('⏰ puts it off', async () => {
    const did = await play([...start, react('10:40', 'calibration', '⏰'), end('12:00')]);
    expect(posts(did, 'calibration').length).toBeGreaterThan(1);
    expect(posts(did, 'calibration')[1]?.at).not.toBe('2026-11-23T11:30:00Z');
  });

  test('a note settles it, and the post is struck through', async () => {
    const did = await play([
      ...start,
      ...script([['10:40', 'tom', 'calibrated blue and green, both passed']]).map((line) => ({
        ...line,
        id: '$both',
      })),
      end('17:00'),
    ]);
    expect(posts(did, 'escalation')).toEqual([]);
    expect(did.find((one) => one.does === 'edit')?.text).toMatch(/Tom/);
  });
});

describe('what fell due while the program was down', () => {
  test('is posted once when it is back, if still true', async () => {
    const did = await play([
      ...script([['08:00', 'tom', 'morning']]),
      { at: '2026-11-23T10:00:00Z', restart: true, back: '2026-11-23T11:40:00Z' },
      end('11:50'),
    ]);
    const asked = posts(did, 'calibration');
    expect(asked.map((one) => one.at)).toEqual(['2026-11-23T11:40:00Z']);
    expect(asked[0]?.text).toContain('10:30');
  });

  test('notes typed meanwhile are read, in order', async () => {
    const did = await play([
      ...script([['08:00', 'tom', 'morning']]),
      { at: '2026-11-23T10:00:00Z', restart: true, back: '2026-11-23T11:40:00Z' },
      ...script([['10:50', 'tom', 'calibrated blue']]).map((line) => ({ ...line, id: '$down' })),
      end('11:50'),
    ]);
    expect(stateOf(did).scanners.A.calibrated).toBe('2026-11-23T10:50:00Z');
    expect(posts(did, 'calibration')[0]?.items).toEqual(['scanner:B']);
  });
});

describe('a tip goes on', () => {
  test('the note gets a waiting mark at once and a ready mark when the time is up', async () => {
    const did = await play([
      ...script([
        ['08:00', 'rosa', 'tips 1 to 8 are sterile and on the shelf'],
        ['08:01', 'rosa', '22 in surgery 1'],
        ['09:00', 'tom', 'tip 2 on blue'],
      ]),
      end('09:05'),
    ]);
    const marks = did
      .filter((one) => one.does === 'react' && one.to === '$3')
      .map((one) => [one.at, one.key]);
    // 22 °C: 45 s (41 · ln(18 / 6) = 45.04, rules of the trade).
    expect(marks).toContainEqual(['2026-11-23T09:00:00Z', '⏳']);
    expect(marks).toContainEqual(['2026-11-23T09:00:45Z', '🟢']);
  });
});

describe('privacy', () => {
  test('a note with a health-service number is asked to be removed, and its words are not kept', async () => {
    const did = await play([
      ...script([['09:00', 'tom', 'tip 4 is held, patient 943 476 5919 bit it']]),
      end('09:01'),
    ]);
    expect(posts(did, 'privacy')).toHaveLength(1);
    expect(JSON.stringify(did)).not.toContain('943 476 5919');
  });
});
