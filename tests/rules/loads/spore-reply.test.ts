import { describe, expect, it } from 'vitest';
import { sporeReply } from '../../../core/rules/loads/spore-reply.ts';
import type { Given } from '../given.ts';
import { counted, inWords } from './heard.ts';

/** The reply to a clear spore test of the big autoclave, typed at that local time. */
function clear(given: Given, local: string): readonly string[] {
  const turn = given.note(local, { kind: 'spore-test', outcome: 'passed', autoclave: 'big' });
  const entry = given.timeline.entry(`${turn}.0`);
  if (entry === undefined) throw new Error('the note was not kept');
  return sporeReply(entry, given.view(local)).map(inWords);
}

function positive(given: Given, local: string): void {
  given.note(local, { kind: 'spore-test', outcome: 'failed', autoclave: 'big' });
}

describe('the reply to a clear spore test', () => {
  it('given no positive before it, then its mark says enough', () => {
    expect(clear(counted(), '2026-11-23 09:00')).toEqual([]);
  });

  it('given a positive and no incident open, then back in service', () => {
    const given = counted();
    positive(given, '2026-11-23 09:00');
    expect(clear(given, '2026-11-24 09:00')).toEqual([
      'spore-test\nClear: the big autoclave is back in service. Your local code comes first.',
    ]);
  });

  it('given the positive opened an incident, then that it stays open, and who closes it', () => {
    const given = counted();
    positive(given, '2026-11-23 09:00');
    const mark = given.view('2026-11-23 09:01').state.history.findings.recent().at(-1);
    given.note('2026-11-23 09:01', {
      kind: 'incident-opened',
      incident: mark?.key ?? '',
      of: mark?.mark.entry ?? '',
      sort: 'spore-positive',
      items: ['autoclave:big'],
    });
    expect(clear(given, '2026-11-24 09:00')[0]).toContain(
      'The incident stays open. Rosa (lead), Dan (deputy) or Mo (manager) closes it',
    );
  });

  it('given two positives, then it stays out of service until repair and clear cycles', () => {
    const given = counted();
    positive(given, '2026-11-23 09:00');
    positive(given, '2026-11-24 09:00');
    expect(clear(given, '2026-11-25 09:00')).toEqual([
      'spore-test\nClear, but the big autoclave stays out of service. Inspection or repair first, then 3 clear empty-chamber cycles in a row.',
    ]);
  });

  it('given it is held for another reason too, then that still holds it', () => {
    const given = counted();
    given.note('2026-11-23 08:50', { kind: 'held', items: ['autoclave:big'], reason: 'door seal' });
    positive(given, '2026-11-23 09:00');
    expect(clear(given, '2026-11-24 09:00')).toEqual([
      'spore-test\nClear, but the big autoclave stays held: door seal.',
    ]);
  });

  it('given it was clear already since, then no more is said', () => {
    const given = counted();
    positive(given, '2026-11-23 09:00');
    clear(given, '2026-11-24 09:00');
    expect(clear(given, '2026-11-30 09:00')).toEqual([]);
  });
});
