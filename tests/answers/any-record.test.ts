import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toHtml } from '../../bot/show/html.ts';
import { toText } from '../../bot/show/text.ts';
import { answer } from '../../core/answers/answer.ts';
import type { AskView } from '../../core/answers/answer-view.ts';
import { readBack } from '../../core/answers/read-back.ts';
import { PostLog } from '../../core/desk/post-log.ts';
import { type Ask, howTopic, testSort } from '../../core/reading/ask.ts';
import type { Item } from '../../core/reading/slots.ts';
import type { Entry } from '../../core/record/entry.ts';
import { Timeline } from '../../core/record/timeline.ts';
import { HOUR } from '../../core/time/instant.ts';
import { anyEntries } from '../record/any-entry.ts';
import { ferngate, LEAD, NORTH_ROOM, QUAY_ROOM } from '../record/ferngate.ts';

const ITEMS: readonly Item[] = [
  'scanner:A',
  'scanner:B',
  'scanner:Z',
  'tip:1',
  'tip:3',
  'tip:7',
  'tip:99',
  'load:118',
  'load:999',
  'calibration-tip:A',
  'calibration-tip:Z',
  'autoclave',
  'autoclave:big',
];
const DAY_ASKED = { from: '2026-11-01', to: '2026-11-30' };

const ASKS: readonly Ask[] = [
  ...(['out', 'sterile', 'used', 'all'] as const).map((filter): Ask => ({ kind: 'tips', filter })),
  { kind: 'tips', filter: 'out', site: 'north' },
  ...ITEMS.flatMap((item): Ask[] => [
    { kind: 'where', item },
    { kind: 'ready', item },
    { kind: 'history', item },
    { kind: 'trace', item },
    ...(['calibration', 'scan', 'wipe', 'move', 'temperature'] as const).map(
      (of): Ask => ({ kind: 'last', of, item }),
    ),
  ]),
  { kind: 'ready' },
  { kind: 'due' },
  { kind: 'due', day: '2026-11-30' },
  { kind: 'last', of: 'calibration' },
  { kind: 'last', of: 'temperature' },
  { kind: 'supply' },
  { kind: 'supply', day: '2026-11-24' },
  { kind: 'load', load: '118' },
  { kind: 'load', load: '999' },
  { kind: 'trace', load: '118' },
  { kind: 'record', ...DAY_ASKED },
  { kind: 'record', ...DAY_ASKED, site: 'quay' },
  ...howTopic.options.flatMap((topic): Ask[] => [
    { kind: 'how', topic },
    { kind: 'who-can', topic },
  ]),
  { kind: 'help' },
  { kind: 'due', all: true },
  { kind: 'ready', site: 'north' },
  { kind: 'where' },
  { kind: 'where', site: 'quay' },
  { kind: 'where', site: 'quay', room: 's1' },
  { kind: 'record', ...DAY_ASKED, person: 'Tom' },
  { kind: 'incidents' },
  { kind: 'incidents', open: true, site: 'north' },
  { kind: 'who-can' },
  { kind: 'who-can', person: 'Tom' },
  { kind: 'bookings' },
  { kind: 'bookings', day: '2026-11-24', site: 'quay' },
  { kind: 'tests' },
  ...testSort.options.map((sort): Ask => ({ kind: 'tests', sort, autoclave: 'big' })),
  ...(['open', 'failed', 'all'] as const).flatMap((which): Ask[] => [
    { kind: 'loads', which },
    { kind: 'loads', which, ...DAY_ASKED, autoclave: 'big' },
  ]),
  { kind: 'wear' },
  { kind: 'wear', item: 'tip:3' },
  { kind: 'wear', item: 'tip:99' },
  { kind: 'order' },
  { kind: 'who-may' },
  { kind: 'hours' },
  { kind: 'hours', day: '2026-11-29', site: 'north' },
  { kind: 'cover' },
  { kind: 'cover', item: 'scanner:A' },
  { kind: 'cover', item: 'scanner:Z' },
  { kind: 'out-of-use' },
  { kind: 'out-of-use', which: 'held' },
  { kind: 'out-of-use', which: 'missing' },
];

function viewAfter(entries: readonly Entry[], room = 'a room that the file does not list'): AskView {
  const timeline = new Timeline(ferngate());
  timeline.add(entries);
  const last = entries.reduce((latest, { noted }) => Math.max(latest, noted), 0);
  return {
    practice: ferngate(),
    state: timeline.state,
    said: new PostLog(),
    now: last + HOUR,
    room,
    from: LEAD,
    entries: timeline,
  };
}

/** What a slip in putting words together looks like. */
const SLIPS = /undefined|null|NaN|\[object|Infinity|Invalid| {2}|\(\)|\.\.|,,| ,| \.|; ?;|: ?\.|“”/;

describe('whatever is on record', () => {
  it('every ask has an answer that reads as words', () => {
    const room = fc.constantFrom(QUAY_ROOM, NORTH_ROOM, 'another');
    fc.assert(
      fc.property(anyEntries(20), room, (entries, where) => {
        const view = viewAfter(entries, where);
        for (const ask of ASKS) {
          const { message } = answer(ask, view);
          const text = toText(message);
          expect(text.length, JSON.stringify(ask)).toBeGreaterThan(0);
          expect(SLIPS.exec(text)?.[0], `${JSON.stringify(ask)}: ${text}`).toBeUndefined();
          expect(toHtml(message)).not.toBe('');
        }
      }),
      { numRuns: 40 },
    );
  });

  it('a tip is either out or sterile, is counted, and is in what is read', () => {
    fc.assert(
      fc.property(anyEntries(20), (entries) => {
        const view = viewAfter(entries);
        const [out, sterile] = (['out', 'sterile'] as const).map((filter) =>
          answer({ kind: 'tips', filter }, view),
        );
        const tips = [...view.state.tips.values()].filter(({ state }) => state !== 'retired');
        const told = [...(out?.items ?? []), ...(sterile?.items ?? [])];
        expect([...told].sort()).toEqual(tips.map(({ id }) => `tip:${id}`).sort());
        for (const each of [out, sterile]) {
          if (each === undefined || each.items.length === 0) continue;
          const text = toText(each.message);
          expect(text).toMatch(new RegExp(`^${each.items.length} `));
          const numbers = new Set(numbersIn(text.slice(text.indexOf(' '))));
          for (const item of each.items) expect(numbers, text).toContain(Number(item.slice(4)));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('a tip that is called sterile stock may be used, and is answered yes', () => {
    fc.assert(
      fc.property(anyEntries(20), (entries) => {
        const view = viewAfter(entries);
        for (const item of answer({ kind: 'tips', filter: 'sterile' }, view).items)
          expect(toText(answer({ kind: 'ready', item }, view).message)).toMatch(/^Yes: /);
      }),
      { numRuns: 60 },
    );
  });

  it('what is read back reads as words', () => {
    fc.assert(
      fc.property(anyEntries(6), (entries) => {
        const view = viewAfter(entries);
        for (const entry of entries) {
          const message = readBack([entry], view, ['tip 4']);
          expect(message).not.toBeNull();
          expect(SLIPS.exec(message === null ? '' : toText(message))?.[0]).toBeUndefined();
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** Every number in a text; of "1–4" all four. */
function numbersIn(text: string): readonly number[] {
  return [...text.matchAll(/(\d+)(?:–(\d+))?/g)].flatMap(([, from = '', to = from]) =>
    Array.from({ length: Number(to) - Number(from) + 1 }, (_, n) => Number(from) + n),
  );
}
