import { describe, expect, it } from 'vitest';
import { toText } from '../../bot/show/text.ts';
import { answer } from '../../core/answers/answer.ts';
import type { AskView } from '../../core/answers/answer-view.ts';
import type { Ask } from '../../core/reading/ask.ts';
import { makeEntry } from '../../core/record/make-entry.ts';
import { inOrder } from '../../core/record/order.ts';
import { Given } from '../rules/given.ts';
import { FERNGATE } from '../rules/scanner/ferngate.ts';
import { AT } from './a-day.ts';

const DAY_ONE = Date.parse('2026-11-02T09:00:00Z');

/** So many wipe-downs of scanner A, a second apart, as the record would give them. */
function wiped(count: number): AskView['entries'] {
  const entries = Array.from({ length: count }, (_, turn) => {
    const noted = DAY_ONE + turn * 1_000;
    const when = new Date(noted).toISOString();
    const what = { kind: 'wiped', scanner: 'A', part: 'all', when } as const;
    return makeEntry({ what, turn, index: 0, noted, by: null, from: '@rosa:example.org', room: '' });
  });
  return {
    *between() {
      yield* entries;
    },
    placesAbout: () => entries.toSorted(inOrder),
    entry: (id) => entries[Number.parseInt(id, 10)],
  };
}

function answered(ask: Ask, count: number) {
  const view = new Given(FERNGATE).view(AT);
  return answer(ask, { ...view, room: '!quay:example.org', from: '', entries: wiped(count) });
}

describe('a record of years', () => {
  it('what happened with an item: the file has the latest two thousand, and says so', () => {
    const { message, file } = answered({ kind: 'history', item: 'scanner:A' }, 2_010);
    expect(toText(message)).toContain(
      'And 2004 more, the latest 2000 in the file; all of them are in the export.',
    );
    expect(file?.content.trimEnd().split('\r\n')).toHaveLength(2_001);
    expect(file?.content).toContain(new Date(DAY_ONE + 2_009_000).toISOString().slice(0, 19));
  });

  it('a stretch with more lines than a phone opens: said, and no file', () => {
    const ask = { kind: 'record', from: '2026-11-01', to: '2026-11-30' } as const;
    expect(answered(ask, 50_000).file?.content.trimEnd().split('\r\n')).toHaveLength(50_001);
    const { message, file } = answered(ask, 50_001);
    expect(toText(message)).toContain('more than 50000 lines, too many for one file here');
    expect(file).toBeUndefined();
  });
});
