import { describe, expect, it } from 'vitest';
import { resolveBack } from '../../../core/language/times/back.ts';
import { resolveForward } from '../../../core/language/times/forward.ts';
import { toIso } from '../../../core/time/instant.ts';
import { BACK_BY_HOURS, FORWARD_BY_HOURS } from './hours.cases.ts';
import { back, contextAt, forward, onlySpan } from './told.ts';
import { ZONE_CASES, ZONE_STARTS } from './zones.cases.ts';

describe('zones and clock changes', () => {
  it.each(ZONE_CASES)('$zone $at$atUtc: $note', ({ zone, at, atUtc, note, when }) => {
    const plain = contextAt(atUtc === undefined ? at : undefined, zone);
    const context = atUtc === undefined ? plain : { ...plain, at: Date.parse(atUtc) };
    expect(toIso(resolveBack(onlySpan(note, context), context).when)).toBe(when);
  });
});

describe('plans over a clock change', () => {
  it.each(ZONE_STARTS)('$zone $at: $note', ({ zone, at, note, when }) => {
    const context = contextAt(at, zone);
    expect(toIso(resolveForward(onlySpan(note, context), context).start)).toBe(when);
  });
});

describe('opening hours and the moment of the note', () => {
  it.each(BACK_BY_HOURS)('$at: $note', ({ at, note, meant, hours }) => {
    const context = hours === false ? contextAt(at, undefined, null) : contextAt(at);
    expect(back(note, context)).toBe(meant);
  });

  it.each(FORWARD_BY_HOURS)('$at: $note', ({ at, note, meant, hours }) => {
    const context = hours === false ? contextAt(at, undefined, null) : contextAt(at);
    expect(forward(note, context)).toBe(meant);
  });

  it('reads 3/11 as the practice does', () => {
    const context = contextAt();
    expect(back('used tip 4 on 3/11 at 9', context)).toBe('2026-11-03 09:00');
    expect(back('used tip 4 on 3/11 at 9', { ...context, dates: 'month-first' })).toBe(
      '2026-03-11 09:00 ?far',
    );
    expect(forward('closed on 3/4', { ...context, dates: 'month-first' })).toBe('2027-03-04');
    expect(forward('closed on 3/4', context)).toBe('2027-04-03');
  });
});
