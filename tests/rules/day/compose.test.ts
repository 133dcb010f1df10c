import { describe, expect, it } from 'vitest';
import { toText } from '../../../bot/show/text.ts';
import { composePost, settledMessage } from '../../../core/rules/compose.ts';
import type { Matter } from '../../../core/rules/matter.ts';
import { lines } from '../../../core/words/message.ts';
import { Given } from '../given.ts';
import { ONE_SITE, TWO_ZONES } from './practices.ts';

const given = new Given(ONE_SITE);
const ROSA = '@rosa:example.org';

function matter(parts: Partial<Matter> = {}): Matter {
  const at = given.at('2026-11-23 10:30');
  return {
    key: 'calibration|scanner:A|2026-11-23',
    rule: 'calibration',
    about: 'calibration',
    site: 'quay',
    room: '!quay:example.org',
    items: ['scanner:A'],
    stages: [{ stage: 'first', at }],
    since: at,
    group: 'calibration@quay',
    line: lines([{ strong: 'Calibrate blue scanner' }, '.']),
    leads: [ROSA],
    tick: () => [],
    ...parts,
  };
}

const HOW = '✅ or reply “done” when it is; ⏰ or “later” to put it off.';

describe('given one matter', () => {
  it('when it is asked for the first time, then the post is its own line and how to answer', () => {
    const post = composePost([matter()], 'first', given.view('2026-11-23 10:30'));
    expect(post).toMatchObject({ about: 'calibration', items: ['scanner:A'], mentions: [] });
    expect(toText(post.message)).toBe(`Calibrate blue scanner.\n${HOW}`);
  });

  it('when it is asked for again, then it says since when, and mentions nobody', () => {
    const post = composePost([matter()], 'again', given.view('2026-11-23 11:30'));
    expect(post).toMatchObject({ about: 'calibration', mentions: [] });
    expect(toText(post.message)).toBe(`Calibrate blue scanner.\nDue since 10:30.\n${HOW}`);
  });

  it('when the lead is named, then it is about escalation, with the name in front and the mention', () => {
    const post = composePost([matter()], 'lead', given.view('2026-11-23 12:30'));
    expect(post).toMatchObject({ about: 'escalation', mentions: [ROSA] });
    expect(toText(post.message)).toBe(`Rosa: still open.\nCalibrate blue scanner.\nDue since 10:30.\n${HOW}`);
  });

  it('when the practice names no lead, then it is still said and nobody is mentioned', () => {
    const post = composePost([matter({ leads: [] })], 'lead', given.view('2026-11-23 12:30'));
    expect(post).toMatchObject({ about: 'escalation', mentions: [] });
    expect(toText(post.message)).toMatch(/^Still open:\nCalibrate/);
  });

  it('when it is an incident, then it stays one, and the lead is mentioned from the first', () => {
    const post = composePost([matter({ about: 'incident' })], 'first', given.view('2026-11-23 10:30'));
    expect(post).toMatchObject({ about: 'incident', mentions: [ROSA] });
  });

  it('when a tick can record nothing, then none is offered', () => {
    const { tick: _, ...silent } = matter();
    expect(toText(composePost([silent], 'first', given.view('2026-11-23 10:30')).message)).toBe(
      'Calibrate blue scanner.',
    );
  });

  it('when it is answered by a choice, then the choices are numbered', () => {
    const asks = {
      choices: [
        { label: 'yes', value: 'yes' },
        { label: 'no', value: 'no' },
      ],
      purpose: { sort: 'stocktake', site: 'quay' },
    } as const;
    const { tick: _, ...silent } = matter({ asks });
    expect(toText(composePost([silent], 'first', given.view('2026-11-23 10:30')).message)).toBe(
      'Calibrate blue scanner.\n1. yes\n2. no',
    );
  });
});

describe('given a post that comes late', () => {
  it('when the program was down at its time, then it says since when, the day too where that is another', () => {
    const late = (local: string) => toText(composePost([matter()], 'first', given.view(local)).message);
    expect(late('2026-11-23 10:34')).not.toContain('Due since');
    expect(late('2026-11-23 10:35')).toContain('\nDue since 10:30.\n');
    expect(late('2026-11-24 08:30')).toContain('\nDue since yesterday 10:30.\n');
  });

  it('when the site was shut at its time, then the opening is no lateness but what went before it is', () => {
    const since = given.at('2026-11-23 17:40');
    const stages = [{ stage: 'first', at: given.at('2026-11-24 08:30') }] as const;
    const post = composePost([matter({ since, stages })], 'first', given.view('2026-11-24 08:30'));
    expect(toText(post.message)).toContain('Due since yesterday 17:40.');
  });

  it('when its cause is judged anew each day, then it is due since it was first asked for', () => {
    const own = new Given(ONE_SITE).told(matter().key, 'first', '2026-11-20 10:30');
    const post = composePost(
      [matter({ since: own.at('2026-11-23 10:30') })],
      'lead',
      own.view('2026-11-23 09:40'),
    );
    expect(toText(post.message)).toContain('\nDue since Fri 10:30.\n');
  });

  it('when someone had put it off, then that is not being late', () => {
    const own = new Given(ONE_SITE);
    own.said.putOff(matter().key, own.at('2026-11-23 10:50'));
    expect(toText(composePost([matter()], 'first', own.view('2026-11-23 10:50')).message)).not.toContain(
      'Due',
    );
  });

  it('when the site has a clock of its own, then that is the one it goes by', () => {
    const zones = new Given(TWO_ZONES);
    const since = zones.at('2026-11-23T05:00:00Z');
    const hill = matter({ site: 'hill', since, stages: [{ stage: 'first', at: since }] });
    expect(toText(composePost([hill], 'again', zones.view('2026-11-23T06:00:00Z')).message)).toContain(
      'Due since 10:30.',
    );
  });
});

describe('given several matters of one room and group', () => {
  const blue = matter();
  const green = matter({
    key: 'calibration|scanner:B|2026-11-23',
    items: ['scanner:B'],
    line: lines([{ strong: 'Calibrate green scanner' }, '.']),
  });

  it('when they fall due together, then they are one post with a line each', () => {
    const post = composePost([blue, green], 'first', given.view('2026-11-23 10:30'));
    expect(post.items).toEqual(['scanner:A', 'scanner:B']);
    expect(toText(post.message)).toBe(`• Calibrate blue scanner.\n• Calibrate green scanner.\n${HOW}`);
  });

  it('when each adds the same to its line, then that is said once', () => {
    const notes = { points: [['Lens looked at.']] } as const;
    const both = [blue, green].map((one) => ({ ...one, line: [...one.line, notes] }));
    expect(toText(composePost(both, 'first', given.view('2026-11-23 10:30')).message)).toBe(
      `• Calibrate blue scanner.\n• Calibrate green scanner.\n• Lens looked at.\n${HOW}`,
    );
  });

  it('when a brief is among them, then it speaks for all and names the items of all', () => {
    const { tick: _, ...brief } = matter({
      key: 'brief',
      about: 'brief',
      items: [],
      line: lines('The brief.'),
    });
    const post = composePost([green, brief], 'first', given.view('2026-11-23 10:30'));
    expect(post).toMatchObject({ about: 'brief', items: ['scanner:B'] });
    expect(toText(post.message)).toBe('The brief.');
  });
});

describe('given a post whose matters are settled', () => {
  const post = {
    does: 'post',
    key: '1/0',
    room: '!hill:example.org',
    about: 'calibration',
    items: [],
    mentions: [],
    message: lines([{ strong: 'Calibrate green scanner' }, '.']),
  } as const;
  const { practice } = new Given(TWO_ZONES);
  const at = Date.parse('2026-11-23T05:12:00Z');

  it('when someone did it, then it says who and when in front of the words struck through', () => {
    const message = settledMessage(post, { practice, by: ROSA, at, how: 'done' });
    expect(message).toEqual([
      { line: [{ strong: 'Done' }, ' by Rosa, 10:42'] },
      { line: [{ struck: 'Calibrate green scanner.' }] },
    ]);
  });

  it('when it told how to answer, then that is gone with it', () => {
    const ticked = composePost([matter()], 'first', given.view('2026-11-23 10:30'));
    const message = settledMessage(
      { ...post, message: ticked.message },
      { practice, by: ROSA, at, how: 'done' },
    );
    expect(toText(message)).not.toContain('later');
  });

  it('when a correction took it back, or it passed by itself, then it says that', () => {
    const first = (by: string | null, how: 'done' | 'taken back') =>
      toText(settledMessage(post, { practice, by, at, how })).split('\n')[0];
    expect(first('@tom:example.org', 'taken back')).toMatch(/^Taken back by Tom, 10:42: /);
    expect(first(null, 'done')).toMatch(/^No longer due, 10:42: /);
  });
});
