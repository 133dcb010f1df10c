import type { Clause } from '../clause.ts';
import type { TipsSaid } from '../part.ts';

/** "Used 6 rather than 5", "instead of 5 I used 6": what was not taken. */
export function isPassedOver(c: Clause, at: number): boolean {
  const of = /^(tip|number|no)$/.test(c.parts[at - 1]?.text ?? '') ? at - 2 : at - 1;
  return /^(rather than|instead of|in place of|as opposed to)$/.test(c.parts[of]?.text ?? '');
}

/** "2 bagged 3 not": the last is what it was not done to. */
export function isDeniedLast(c: Clause, at: number): boolean {
  const next = c.parts[at + 1];
  const ends = c.parts[at + 2] === undefined || /^(yet|,|and)$/.test(c.parts[at + 2]?.text ?? '');
  const other = c.parts.slice(0, at).some((p) => p.entity?.is === 'tips');
  return (
    other &&
    ends &&
    next?.entity === undefined &&
    /^(not|not yet|isn't|wasn't|hasn't|aren't|haven't)$/.test(next?.text ?? '')
  );
}

/** "Washed 1 to 6 bar 4": those left out of the ids that were named. */
export function sparedOfIds(
  named: readonly { at: number; entity: TipsSaid }[],
  bar: number,
): readonly string[] | null {
  const before = named.filter(({ at }) => at < bar).flatMap(({ entity }) => entity.ids);
  const spared = named.filter(({ at }) => at > bar).flatMap(({ entity }) => entity.ids);
  const all = spared.length > 0 && before.length > spared.length && spared.every((id) => before.includes(id));
  return all ? before.filter((id) => !spared.includes(id)) : null;
}

/** "Some of the used ones", "half of them": which is not said. */
export function onlySome(c: Clause, named: readonly { at: number; entity: TipsSaid }[]): boolean {
  return named.some(({ at, entity }) => {
    const before = `${c.parts[at - 2]?.text ?? ''} ${c.parts[at - 1]?.text ?? ''}`;
    return (
      entity.which !== undefined &&
      /\b(some|half|most|few|several|many|part|couple|bits|one|two|three|four|five) of$/.test(before)
    );
  });
}

/** "Tips 13 ot 18": one word that nobody knows between two ids may be "to", "and" or "or". */
export function brokenList(c: Clause, places: readonly number[]): boolean {
  return places.some(
    (at, i) => i > 0 && at - (places[i - 1] ?? at) === 2 && c.parts[at - 1]?.unknown === true,
  );
}
