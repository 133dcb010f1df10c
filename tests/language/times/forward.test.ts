import { describe, expect, it } from 'vitest';
import { BACK_DAYS, FORWARD_DAYS } from './days.cases.ts';
import { FORWARD_CASES, HOURS_CASES, START_CASES } from './forward.cases.ts';
import { contextAt, dates, forward, starts } from './told.ts';

describe('bookings, plans and closures look forward', () => {
  it.each(FORWARD_CASES)('%s', (note, meant) => {
    expect(forward(note, contextAt())).toBe(meant);
  });

  it.each(HOURS_CASES)('%s (%s)', (note, role, meant) => {
    expect(forward(note, contextAt(), role)).toBe(meant);
  });

  it.each(START_CASES)('%s', (note, start) => {
    expect(starts(note, contextAt())).toBe(start);
  });
});

describe('stretches of dates', () => {
  it.each(BACK_DAYS)('back: %s', (note, stretch) => {
    expect(dates(note, contextAt(), 'back')).toBe(stretch);
  });

  it.each(FORWARD_DAYS)('forward: %s', (note, stretch) => {
    expect(dates(note, contextAt(), 'forward')).toBe(stretch);
  });
});
