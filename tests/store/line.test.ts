import canonicalize from 'canonicalize';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hashOfLine, headOf, parseLine, prevOf, sumHolds, writeLine } from '../../bot/store/line.ts';
import { LineBuffer } from '../../bot/store/line-buffer.ts';
import { sealTurn } from '../../bot/store/seal.ts';
import { openLine } from '../../bot/store/unseal.ts';

const prev = 'ab'.repeat(32);
const nobody = { person: () => 'p1', text: () => ({ ref: 1, sealed: 'x' }) };

function textOf(turn: unknown, people: Record<string, string> | null = null): string {
  const { text, pointers } = sealTurn(turn, nobody);
  const buffer = new LineBuffer();
  const parts = { n: 7, at: '2026-11-23T08:05:00Z', prev, people, sealed: pointers, turn: text };
  const { length } = writeLine(parts, buffer);
  expect(length).toBe(buffer.length);
  return buffer.between(0, length).toString('utf8').slice(0, -1);
}

describe('a line of the journal', () => {
  it('is canonical JSON as the library writes it, whatever the turn', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (turn) => {
        const text = textOf(turn);
        expect(canonicalize(JSON.parse(text))).toBe(text);
      }),
    );
  });

  it('is canonical with people, pointers that need escapes and letters beyond ASCII', () => {
    const text = textOf({ 'é/~': { by: 'Zoë', '10': 1, '9': 2 } }, { p1: prev, p10: prev, p2: prev });
    expect(canonicalize(JSON.parse(text))).toBe(text);
    expect(text).toContain('"sealed":["/é~1~0/by"]');
  });

  it('tells its instant, number and the hash before without being parsed', () => {
    for (const people of [null, { p1: prev }]) {
      const text = textOf({ from: 'Tom' }, people);
      expect(headOf(text)).toEqual({ at: '2026-11-23T08:05:00Z', n: 7 });
      expect(prevOf(text)).toBe(prev);
      expect(parseLine(text)?.prev).toBe(prev);
    }
  });

  it('knows any one flipped bit by its sum', () => {
    const bytes = Buffer.from(textOf({ items: ['tip:4'], note: 'é' }));
    expect(sumHolds(bytes.toString())).toBe(true);
    for (let bit = 0; bit < bytes.length * 8; bit++) {
      const flipped = Buffer.from(bytes);
      flipped[bit >> 3] = (flipped[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect(sumHolds(flipped.toString()), `bit ${bit}`).toBe(false);
    }
  });

  it('has the hash of its bytes', () => {
    const parts = { n: 1, at: '2026-11-23T08:05:00Z', prev, people: null, sealed: [], turn: '"é"' };
    const buffer = new LineBuffer();
    const { hash, length } = writeLine(parts, buffer);
    expect(hash).toBe(hashOfLine(buffer.between(0, length).toString('utf8').slice(0, -1)));
  });

  it('is the same whatever was written before it into the same memory, and however long', () => {
    const parts = { n: 1, at: '2026-11-23T08:05:00Z', prev, people: null, sealed: [] };
    const buffer = new LineBuffer();
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'binary', maxLength: 40_000, size: 'max' }), { maxLength: 4 }),
        (texts) => {
          buffer.clear();
          for (const text of texts) {
            const line = { ...parts, turn: JSON.stringify(text) };
            const start = buffer.length;
            const { sum, hash, length } = writeLine(line, buffer);
            const written = buffer.between(start, start + length).toString('utf8');
            const alone = new LineBuffer();
            expect(writeLine(line, alone)).toEqual({ sum, hash, length });
            expect(written).toBe(alone.between(0, length).toString('utf8'));
            expect(sumHolds(written.slice(0, -1))).toBe(true);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('what is sealed', () => {
  it('comes back as JSON would, for any turn', () => {
    const key = fc.oneof(
      fc.constantFrom(
        'from',
        'by',
        'person',
        'person_to',
        'mentions',
        'text',
        'html',
        'reason',
        'raw',
        'a/b~',
      ),
      fc.string(),
    );
    const { tree } = fc.letrec((tie) => ({
      tree: fc.oneof(
        { maxDepth: 4 },
        fc.string({ unit: 'binary' }),
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.constantFrom(null, true, undefined),
        fc.array(tie('tree'), { maxLength: 4 }),
        fc.dictionary(key, tie('tree'), { maxKeys: 5 }),
      ),
    }));
    fc.assert(
      fc.property(tree, (turn) => {
        const names: string[] = [];
        const texts: string[] = [];
        const sealed = sealTurn(turn, {
          person: (name) => `p${names.push(name)}`,
          text: (text) => ({ ref: texts.push(text), sealed: 'x' }),
        });
        const line = { turn: JSON.parse(sealed.text), sealed: sealed.pointers };
        openLine(line, {
          nameOf: (p) => names[Number(p.slice(1)) - 1] ?? '',
          textOf: (k) => texts[k - 1] ?? '',
        });
        const json: unknown = JSON.parse(JSON.stringify(turn === undefined ? null : turn));
        expect(line.turn).toEqual(json);
        if (!sealed.changed) expect(line.turn).toEqual(turn);
      }),
      { numRuns: 500 },
    );
  });

  it('leaves no name and no text in the line', () => {
    const { text } = sealTurn(
      {
        from: 'Rosa',
        facts: [{ by: 'Tom', reason: 'cracked' }],
        mentions: ['Zoë', 'Dev'],
        person: 'Ann',
        text: 'hello',
      },
      nobody,
    );
    for (const word of ['Rosa', 'Tom', 'cracked', 'Zoë', 'Dev', 'Ann', 'hello'])
      expect(text).not.toContain(word);
  });

  it.each([[Number.NaN], [Number.POSITIVE_INFINITY], [1n], [() => 1], [Symbol('s')]])(
    'refuses %s',
    (value) => {
      expect(() => sealTurn({ value }, nobody)).toThrow(TypeError);
    },
  );

  it('refuses a turn that holds itself', () => {
    const turn: Record<string, unknown> = {};
    turn.again = turn;
    expect(() => sealTurn(turn, nobody)).toThrow('holds itself');
  });
});
