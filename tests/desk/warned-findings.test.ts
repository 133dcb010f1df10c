import fc from 'fast-check';
import { expect, test } from 'vitest';
import { WarnedFindings } from '../../core/desk/warned-findings.ts';
import { MemoryArchive } from '../../core/record/memory-archive.ts';

test('what was warned of is known for ever, however few are kept at hand, after a restart too', () => {
  const keys = fc.array(
    fc.nat({ max: 40 }).map((n) => `${n}.0:unsafe-tip:tip:4`),
    { maxLength: 60 },
  );
  fc.assert(
    fc.property(keys, keys, fc.integer({ min: 1, max: 12 }), (before, after, atHand) => {
      const archive = new MemoryArchive();
      const first = new WarnedFindings(archive, atHand);
      for (const key of before) first.add(key);
      const second = new WarnedFindings(archive, atHand);
      second.restore(JSON.parse(JSON.stringify(first.save())));
      for (const key of after) second.add(key);
      const told = new Set([...before, ...after]);
      for (let n = 0; n <= 40; n += 1) {
        const key = `${n}.0:unsafe-tip:tip:4`;
        expect(second.has(key)).toBe(told.has(key));
      }
      expect(second.save().keys.length).toBeLessThanOrEqual(atHand);
    }),
  );
});
