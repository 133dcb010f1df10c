import { describe, expect, it } from 'vitest';
import { toText } from '../../../bot/show/text.ts';
import { loadRules } from '../../../core/rules/loads/rules.ts';
import type { Matter } from '../../../core/rules/matter.ts';
import { toLocal } from '../../../core/time/zone.ts';
import { TWO_ZONES } from '../day/practices.ts';
import { Given } from '../given.ts';
import { counted, TOM } from './heard.ts';

/** "key first Mon 30 08:30 !quay about: words". */
function due(given: Given, local: string): readonly string[] {
  const view = given.view(local);
  return loadRules.flatMap((rule) => rule(view)).map((matter) => inWords(matter, given.zone));
}

function inWords({ key, stages, room, about, line }: Matter, zone: string): string {
  const times = stages.map(({ stage, at }) => `${stage} ${toLocal(at, zone).date} ${toLocal(at, zone).time}`);
  return `${key} ${times.join()} ${room.replace(/:.*/, '')} ${about}: ${toText(line)}`;
}

describe('a spore test', () => {
  it('given none was ever noted, then none is due', () => {
    expect(due(counted(), '2026-11-23 09:00')).toEqual([]);
  });

  it('given one was run on Monday and told on Tuesday, then due the Monday after, when the site opens', () => {
    const given = counted();
    given.note('2026-11-17 09:00', {
      kind: 'spore-test',
      outcome: 'passed',
      ran: '2026-11-16',
      autoclave: 'big',
    });
    expect(due(given, '2026-11-20 12:00')).toEqual([
      'spore-test|autoclave:big|2026-11-16 first 2026-11-23 08:30 !quay spore-test: Spore test due: the big autoclave, last run Mon.',
    ]);
  });

  it('given the day is closed by a note, then the next open day', () => {
    const given = counted();
    given.note('2026-11-16 09:00', { kind: 'spore-test', outcome: 'running', autoclave: 'big' });
    given.note('2026-11-20 09:00', { kind: 'closed', days: ['2026-11-23'], site: 'quay' });
    expect(due(given, '2026-11-20 12:00')[0]).toContain('first 2026-11-24 08:30');
  });

  it('given another autoclave is in use without one, then it is due too', () => {
    const given = counted();
    given.note('2026-11-16 09:00', { kind: 'spore-test', outcome: 'passed', autoclave: 'big' });
    given.note('2026-11-18 09:00', { kind: 'load-started', load: '7', tips: ['1'], autoclave: 'small' });
    expect(due(given, '2026-11-23 09:00').map((words) => words.replace(/ .*: Spore/, ' Spore'))).toEqual([
      'spore-test|autoclave:big|2026-11-16 Spore test due: the big autoclave, last run 16 Nov.',
      'spore-test|autoclave:small|2026-11-16 Spore test due: the small autoclave, none noted yet.',
    ]);
  });

  it('given a new one is noted, then the old date is due no longer', () => {
    const given = counted();
    given.note('2026-11-16 09:00', { kind: 'spore-test', outcome: 'passed', autoclave: 'big' });
    given.note('2026-11-23 09:00', { kind: 'spore-test', outcome: 'running', autoclave: 'big' });
    expect(due(given, '2026-11-23 10:00')[0]).toContain('first 2026-11-30 08:30');
  });
});

describe('a leak test', () => {
  it('given one a week ago, then due when the site opens', () => {
    const given = counted();
    given.note('2026-11-16 09:00', {
      kind: 'autoclave-test',
      sort: 'leak',
      outcome: 'passed',
      autoclave: 'big',
    });
    expect(due(given, '2026-11-23 10:00')).toEqual([
      'leak-test|autoclave:big|2026-11-16 first 2026-11-23 08:30 !quay load: Leak test due: the big autoclave, last run 16 Nov.',
    ]);
  });
});

describe('a doubt that nobody answers', () => {
  it('given a doubted load, then asked again after half an hour, and no longer once its result is typed', () => {
    const given = counted();
    given.note('2026-11-23 08:40', {
      kind: 'load-started',
      load: '118',
      tips: ['2', '5'],
      autoclave: 'small',
    });
    given.note('2026-11-23 09:40', { kind: 'load-finished', load: '118', outcome: 'passed' });
    given.note('2026-11-23 10:00', { kind: 'doubted', item: 'load:118' }, TOM);
    expect(due(given, '2026-11-23 10:40')).toEqual([
      'doubt|load:small/118@2026-11-23|5.0 first 2026-11-23 10:30 !quay load: In doubt: load 118 (the small autoclave), 10:00 (Tom). ' +
        'Tips 2 and 5 are not sterile until someone types its result: “load 118 passed” or “failed”.',
    ]);
    given.note('2026-11-23 10:45', { kind: 'load-finished', load: '118', outcome: 'passed' }, TOM);
    expect(due(given, '2026-11-23 10:50')).toEqual([]);
  });

  it('given a doubt noted in the room of another site, then asked in the room of the site it is about, by its hours', () => {
    const given = new Given(TWO_ZONES);
    // 17:00 at the quay is 22:30 at the hill.
    given.note('2026-11-23 16:00', { kind: 'doubted', item: 'tip:H1' }, { room: '!quay:example.org' });
    expect(due(given, '2026-11-23 17:00')).toEqual([
      expect.stringMatching(/^doubt\|tip:H1\|1\.0 first 2026-11-24 03:30 !hill tips: In doubt: tip H1/),
    ]);
  });

  it('given a doubted tip after closing, then asked when the site opens', () => {
    const given = counted();
    given.note('2026-11-23 17:20', { kind: 'doubted', item: 'tip:4' }, TOM);
    expect(due(given, '2026-11-23 17:25')).toEqual([
      'doubt|tip:4|3.0 first 2026-11-24 08:30 !quay tips: In doubt: tip 4, 17:20 (Tom). ' +
        'Not to be used until someone says “tip 4 is sterile” or it has been through a load.',
    ]);
  });
});
