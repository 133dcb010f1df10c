import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toHtml } from '../../bot/show/html.ts';
import { toText } from '../../bot/show/text.ts';
import { answer } from '../../core/answers/answer.ts';
import type { AskView } from '../../core/answers/answer-view.ts';
import { readBack } from '../../core/answers/read-back.ts';
import { PostLog } from '../../core/desk/post-log.ts';
import type { Entry } from '../../core/record/entry.ts';
import { Timeline } from '../../core/record/timeline.ts';
import { HOUR } from '../../core/time/instant.ts';
import { anyEntries } from '../record/any-entry.ts';
import { ferngate, LEAD, NORTH_ROOM, QUAY_ROOM } from '../record/ferngate.ts';
import { ASKS } from './every-ask.ts';

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
