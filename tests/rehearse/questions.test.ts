import { describe, expect, test } from 'vitest';
import { end, play, posts, script, stateOf } from './play.ts';

const COUNTED = ['08:00', 'rosa', 'tips 1 to 8 are sterile and on the shelf'] as const;

describe('a note that names no scanner where there are several', () => {
  const asked = script([['10:40', 'tom', 'calibrated the scanner, passed']]);

  test('is asked back with numbered choices', async () => {
    const did = await play([...asked, end('10:41')]);
    expect(posts(did, 'question').at(-1)?.text).toContain('1. blue scanner\n2. green scanner');
    expect(stateOf(did).scanners.A.calibrated).toBeNull();
  });

  test.each([
    '2',
    'green',
    'the green scanner',
    'B',
    'green one',
    'the green one please',
    'sorry, I meant green',
    'it was green',
    'on the green one, sorry',
  ])('the answer “%s” counts from the note’s own time', async (text) => {
    const answer = {
      at: '2026-11-23T10:45:00Z',
      room: '!quay:example.org',
      from: '@tom:example.org',
      id: '$2',
      text,
    };
    const did = await play([...asked, answer, end('10:46')]);
    expect(stateOf(did).scanners.B.calibrated).toBe('2026-11-23T10:40:00Z');
    expect(stateOf(did).scanners.A.calibrated).toBeNull();
  });

  test('a reaction answers too', async () => {
    const reaction = {
      at: '2026-11-23T10:45:00Z',
      room: '!quay:example.org',
      from: '@tom:example.org',
      id: '$2',
    };
    const did = await play([...asked, { ...reaction, reacts: { last: 'question' }, key: '2️⃣' }, end('10:46')]);
    expect(stateOf(did).scanners.B.calibrated).toBe('2026-11-23T10:40:00Z');
  });

  test('it is remembered over a restart, and a second note meanwhile is kept', async () => {
    const did = await play([
      ...asked,
      { at: '2026-11-23T10:42:00Z', restart: true },
      ...script([
        ['10:43', 'tom', 'used tip 4'],
        ['10:44', 'tom', '2'],
      ]).map((line, index) => ({ ...line, id: `$later${index}` })),
      end('10:46'),
    ]);
    expect(stateOf(did).tips['4'].state).toBe('used');
    expect(stateOf(did).scanners.B.calibrated).toBe('2026-11-23T10:40:00Z');
  });

  test('after thirty minutes a bare number is nobody’s business', async () => {
    const answer = {
      at: '2026-11-23T11:11:00Z',
      room: '!quay:example.org',
      from: '@tom:example.org',
      id: '$2',
      text: '2',
    };
    const did = await play([...asked, answer, end('11:12')]);
    expect(stateOf(did).scanners.B.calibrated).toBeNull();
  });
});

describe('an id that there is not', () => {
  test.each(['tip 44 sent to the autoclave', 'washed tip 44'])(
    '“%s” is never taken for the one tip it could be',
    async (text) => {
      const did = await play([
        ...script([COUNTED, ['09:00', 'tom', 'used tip 4'], ['09:30', 'tom', text]]),
        end('09:31'),
      ]);
      expect(stateOf(did).tips['4'].state).toBe('used');
      expect(posts(did, 'question').at(-1)?.text).toContain('44');
    },
  );
});

describe('an unsafe tip', () => {
  const fitted = script([COUNTED, ['09:00', 'tom', 'used tip 4'], ['09:30', 'tom', 'tip 4 on blue']]);
  const say = (time: string, who: string, text: string) => ({
    at: `2026-11-23T${time}:00Z`,
    room: '!quay:example.org',
    from: `@${who}:example.org`,
    id: `$say${time}`,
    text,
  });

  test('is warned of at once, naming what happened, and which tips are sterile here', async () => {
    const did = await play([...fitted, end('09:31')]);
    const [warning] = posts(did, 'warning');
    expect(warning).toMatchObject({
      at: '2026-11-23T09:30:00Z',
      replyTo: '$3',
      mentions: ['@tom:example.org'],
    });
    expect(warning?.text).toContain('09:00');
    expect(warning?.text).toMatch(/1, 2, 3, 5/);
    expect(posts(did, 'question').at(-1)?.text).toMatch(/patient/);
  });

  test('yes, it reached a patient: the tip is held and the lead is called', async () => {
    const did = await play([...fitted, say('09:32', 'tom', 'yes'), end('09:33')]);
    expect(stateOf(did).tips['4'].state).toBe('held');
    expect(posts(did, 'incident').at(-1)?.mentions).toContain('@rosa:example.org');
  });

  test('unanswered for five minutes: the lead is called', async () => {
    const did = await play([...fitted, end('09:36')]);
    const incident = posts(did, 'incident').at(-1);
    expect(incident).toMatchObject({ at: '2026-11-23T09:35:00Z' });
    expect(incident?.mentions).toContain('@rosa:example.org');
  });

  test('staff cannot close it, the lead can, with what was done', async () => {
    const open = [...fitted, say('09:32', 'tom', 'yes'), say('09:40', 'tom', 'incident closed: all fine')];
    const refused = await play([...open, end('09:41')]);
    expect(posts(refused, 'incident').at(-1)?.text ?? '').toMatch(/lead|deputy|manager/i);
    const closed = await play([
      ...open,
      say('09:45', 'rosa', 'incident closed: reported, patient followed up'),
      end('09:46'),
    ]);
    expect(closed.filter((one) => one.to === '$say09:45').map((one) => one.key)).toEqual(['👍']);
  });
});
