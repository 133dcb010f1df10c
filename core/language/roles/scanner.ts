import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import type { Missing } from '../result.ts';

export interface ScannersSaid {
  readonly ids: readonly string[];
  /** Places of the parts that say so, or how it was filled in. */
  readonly said: readonly number[] | string;
  readonly missing?: Missing;
  /** True where the note has any word for it at all. */
  readonly spoken: boolean;
}

/**
 * The scanners that a clause speaks of: by name; all of them; "the scanner" where there is one; else the last one
 * spoken of, or the only one. Where several could be meant, what is missing is said.
 */
export function scannersOf(c: Clause, slot = 'scanner', form: Missing['form'] = 'id'): ScannersSaid {
  const all = c.names.scannerIds;
  const named = c.entities('scanner').filter(({ at }) => c.parts[at] !== undefined);
  const strange = c.first('no-scanner');
  if (strange !== null) {
    c.use(strange.at);
    return {
      ids: [],
      said: [strange.at],
      spoken: true,
      missing: { about: 'scanner', choices: all, slot, form, words: strange.entity.said },
    };
  }
  if (named.length > 0) {
    const unsure = named.find(({ entity }) => entity.ids.length > 1);
    c.use(...named.map(({ at }) => at));
    c.use(
      ...nounsBeside(
        c,
        named.map(({ at }) => at),
      ),
    );
    if (unsure !== undefined) {
      return {
        ids: [],
        said: [unsure.at],
        spoken: true,
        missing: { about: 'scanner', choices: unsure.entity.ids, slot, form },
      };
    }
    return {
      ids: [...new Set(named.flatMap(({ entity }) => entity.ids))],
      said: named.map(({ at }) => at),
      spoken: true,
    };
  }
  const every = c.entities('some').find(({ entity }) => entity.of === 'scanner');
  if (every !== undefined) {
    c.use(every.at);
    if (every.entity.count === null || every.entity.count === all.length)
      return { ids: all, said: [every.at], spoken: true };
    return {
      ids: [],
      said: [every.at],
      spoken: true,
      missing: { about: 'scanner', choices: all, slot, form },
    };
  }
  const noun = c.at('scanner');
  if (noun >= 0) c.use(noun);
  const last = c.scope.memory.scanners;
  if (last.length > 0) return { ids: last, said: 'the scanner spoken of just before', spoken: noun >= 0 };
  const [only, second] = all;
  if (only !== undefined && second === undefined)
    return { ids: [only], said: 'the only scanner', spoken: noun >= 0 };
  return { ids: [], said: [], spoken: noun >= 0, missing: { about: 'scanner', choices: all, slot, form } };
}

/** "Blue, the scanner": the bare noun beside a name says nothing new. */
function nounsBeside(c: Clause, places: readonly number[]): number[] {
  return places
    .flatMap((at) => [at - 1, at + 1, at + 2])
    .filter((i) => hasTag(c.parts[i], 'scanner') || hasTag(c.parts[i], 'unit'));
}
