import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  type Batch,
  contentOf,
  LEDGER_TYPES,
  MOST_BYTES,
  pieceIn,
  piecesOf,
} from '../../../bot/chat/matrix/ledger/batch.ts';
import { foldLedger, type KeptPiece } from '../../../bot/chat/matrix/ledger/fold-ledger.ts';
import { FolderRows } from '../../../bot/chat/matrix/ledger/folder-rows.ts';
import { writeFolder } from '../../../bot/chat/matrix/ledger/write-folder.ts';
import { openStore } from '../../../bot/store/store.ts';
import { verifyRecord } from '../../../bot/store/verify.ts';

const work = mkdtempSync(join(tmpdir(), 'scanward-ledger-'));
const LONG = 'ä'.repeat(60_000);
let batches: readonly Batch[] = [];

/** A turn that says and names something, made at a minute of two months. */
function turn(index: number, more: object = {}) {
  const month = index < 30 ? '10' : '11';
  return {
    at: `2026-${month}-20T10:${String(index).padStart(2, '0')}:00Z`,
    turn: {
      cause: { sort: 'note', id: `$${index}`, from: `@p${index % 3}:x` },
      text: `note ${index}`,
      effects: [],
      items: Array.from({ length: 150 }, (_, tip) => `tip:${tip}`),
      ...more,
    },
  };
}

/** Everything of a folder in batches, as the program would post it. */
function allOf(folder: string, epoch = 1): readonly Batch[] {
  const rows = new FolderRows(folder);
  const all: Batch[] = [];
  const every = (next: (after: number) => Batch | null) => {
    for (let batch = next(0); batch !== null; batch = next(batch.last)) all.push(batch);
  };
  every((after) => rows.person(after, 1e9, epoch));
  every((after) => rows.texts(after, 1e9, epoch));
  every((after) => rows.lines(after, 1e9, epoch));
  rows.close();
  return all;
}

/** The events of batches, each through what a homeserver would carry. */
function eventsOf(all: readonly Batch[]): readonly KeptPiece[] {
  return all.flatMap(piecesOf).flatMap((piece, index) => {
    const carried = JSON.parse(JSON.stringify(contentOf(piece)));
    const read = pieceIn(LEDGER_TYPES[piece.kind], carried);
    return read === null ? [] : [{ event: `$e${index}`, piece: read }];
  });
}

const folder = join(work, 'practice');

/** The line that another machine writes after line `from` of the folder. */
function elsewhere(from: number, epoch: number): Batch {
  const copy = mkdtempSync(join(work, 'other-'));
  const folded = foldLedger(eventsOf(batches));
  writeFolder(copy, { ...folded, lines: folded.lines.slice(0, from) });
  const store = openStore(copy);
  store.append([turn(59, { text: 'from elsewhere' })]);
  store.close();
  const rows = new FolderRows(copy);
  const batch = rows.lines(from, 1e9, epoch);
  rows.close();
  if (batch === null) throw new Error('no line was written');
  return batch;
}

beforeAll(() => {
  const store = openStore(folder);
  for (let index = 0; index < 60; index++)
    store.append([
      turn(index, index === 7 ? { reason: LONG } : index % 5 === 0 ? { words: 'x'.repeat(9000) } : {}),
    ]);
  store.close();
  batches = allOf(folder);
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

describe('the record through the ledger room', () => {
  test('gives the same folder, byte for byte', () => {
    const folded = foldLedger(eventsOf(batches));
    expect(folded.fault).toBeNull();
    const again = join(work, 'again');
    writeFolder(again, folded);
    expect(verifyRecord(again)).toEqual(verifyRecord(folder));
    for (const file of ['people.jsonl', 'texts.jsonl', 'journal/2026-10.jsonl', 'journal/2026-11.jsonl'])
      expect(readFileSync(join(again, file), 'utf8')).toBe(readFileSync(join(folder, file), 'utf8'));
  });

  test('no event is too large for a homeserver once it is encrypted', () => {
    const sizes = batches
      .flatMap(piecesOf)
      .map((piece) => Buffer.byteLength(JSON.stringify(contentOf(piece))));
    expect(Math.max(...sizes)).toBeLessThan(MOST_BYTES + 500);
    // Encrypted and written in base64, with some 1,000 bytes of the event around it (Client-Server API, Size limits).
    expect(((MOST_BYTES + 500) * 4) / 3 + 1000).toBeLessThan(65_536);
    expect(batches.flatMap(piecesOf).some(({ parts }) => parts > 1)).toBe(true);
  });

  test('in whatever order and however often the events come', () => {
    const events = eventsOf(batches);
    const right = foldLedger(events);
    const some = fc.shuffledSubarray([...events], { minLength: 0 });
    const order = fc.shuffledSubarray([...events], { minLength: events.length });
    fc.assert(
      fc.property(order, some, (all, twice) => {
        const folded = foldLedger([...all, ...twice]);
        expect(folded.hashes).toEqual(right.hashes);
        expect(folded.texts).toEqual(right.texts);
        expect(folded.people).toEqual(right.people);
      }),
      { numRuns: 30 },
    );
  });

  test('with any batch of lines missing, it is refused or ends before it', () => {
    const events = eventsOf(batches);
    const lines = batches.filter(({ kind }) => kind === 'lines');
    expect(lines.length).toBeGreaterThan(1);
    for (const [place, gone] of lines.entries()) {
      const folded = foldLedger(events.filter(({ piece }) => piece.hash !== gone.hash));
      expect(folded.lines).toHaveLength(gone.first - 1);
      if (place === lines.length - 1) expect(folded.fault).toBeNull();
      else expect(folded.fault).toBe(`lines ${gone.first} to ${gone.last} are missing`);
    }
  });

  test('a line that was altered is refused', () => {
    const events = eventsOf(batches).map((kept) => ({
      ...kept,
      piece: { ...kept.piece, text: kept.piece.text.replace('"$20"', '"$21"') },
    }));
    expect(foldLedger(events).fault).toMatch(/^line 2[12]/);
  });
});

describe('two machines', () => {
  test('the later epoch holds from where it took over', () => {
    const folded = foldLedger(eventsOf([...batches, elsewhere(20, 2)]));
    expect(folded.fault).toBeNull();
    expect(folded.lines).toHaveLength(21);
    expect(folded.epoch).toBe(2);
  });

  test('of one epoch are refused', () => {
    const folded = foldLedger(eventsOf([...batches, elsewhere(25, 1)]));
    expect(folded.fault).toBe('two machines wrote line 26 at the same time');
  });
});

describe('what was forgotten', () => {
  const gone = join(work, 'gone');
  let later: readonly Batch[] = [];
  beforeAll(() => {
    writeFolder(gone, foldLedger(eventsOf(batches)));
    const store = openStore(gone);
    store.forget({ person: '@p1:x' });
    store.forget({ line: 8 });
    store.close();
    later = allOf(gone);
  });

  test('stays so, also where the words of before still stand in the room', () => {
    for (const events of [eventsOf([...later, ...batches]), eventsOf([...batches, ...later])]) {
      const again = mkdtempSync(join(work, 'back-'));
      writeFolder(again, foldLedger(events));
      const verdict = verifyRecord(again);
      expect(verdict.fault).toBeNull();
      expect(verdict.forgotten).toBe(verifyRecord(gone).forgotten);
      for (const file of ['people.jsonl', 'texts.jsonl'])
        expect(readFileSync(join(again, file), 'utf8')).toBe(readFileSync(join(gone, file), 'utf8'));
    }
  });

  test('or was taken out of the room by hand, the record still stands', () => {
    const again = join(work, 'by-hand');
    writeFolder(again, foldLedger(eventsOf(batches.filter(({ kind }) => kind === 'lines'))));
    const verdict = verifyRecord(again);
    expect(verdict.fault).toBeNull();
    expect(verdict.head).toEqual(verifyRecord(folder).head);
    expect(verdict.forgotten).toBeGreaterThan(60);
  });
});

test('posts of a line that another machine wrote are not taken for those of the line that stands', () => {
  const post = (epoch: number, event: string): Batch => ({
    ...{ kind: 'posts', epoch, first: 1, last: 1, prev: '', hash: event },
    rows: [JSON.stringify(['21/0', '!room', event]), JSON.stringify(['99/0', '!room', '$none'])],
  });
  const all = [...batches, elsewhere(20, 2)];
  expect(foldLedger(eventsOf([...all, post(1, '$before')])).posts).toEqual([]);
  const right = { key: '21/0', room: '!room', event: '$right' };
  expect(foldLedger(eventsOf([...all, post(1, '$before'), post(2, '$right')])).posts).toEqual([right]);
});

test('an event of anything else is no piece', () => {
  expect(pieceIn('m.room.message', {})).toBeNull();
  expect(pieceIn(LEDGER_TYPES.lines, { epoch: 1.5 })).toBeNull();
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const content =
        typeof value === 'object' && value !== null && !Array.isArray(value) ? value : { value };
      expect(() => pieceIn(LEDGER_TYPES.texts, { ...content })).not.toThrow();
    }),
  );
});
