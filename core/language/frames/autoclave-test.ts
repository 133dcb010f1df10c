import type { Clause } from '../clause.ts';
import { hasTag } from '../part.ts';
import { autoclaveOf } from '../roles/autoclave.ts';
import { outcomeOf } from '../roles/outcome.ts';
import { type Frame, made, result } from './frame.ts';

const SORTS = ['penetration', 'control', 'leak'] as const;

export const autoclaveTest: Frame = {
  name: 'autoclave-test',
  on: [...SORTS],
  read(c) {
    const sorts = SORTS.map((sort) => ({ sort, at: c.at(sort) }))
      .filter(({ at }) => at >= 0)
      .sort((a, b) => a.at - b.at);
    const [first] = sorts;
    if (first === undefined) return null;
    if (leakOnly(c, first)) return null;
    c.useTags(...SORTS, 'come', 'be', 'do', 'run', 'turn', 'go', 'finish', 'strip', 'load', 'have');
    const outcome = testOutcome(c);
    const autoclaves = testedOnes(c);
    const facts = autoclaves.flatMap((autoclave) =>
      sorts.map(({ sort, at }) =>
        made(
          'autoclave-test',
          {
            sort,
            ...(outcome === null ? {} : { outcome: outcome.outcome }),
            ...(autoclave === null ? {} : { autoclave: autoclave.id }),
          },
          { sort: [at] },
        ),
      ),
    );
    if (outcome === null) {
      if (
        c.has('neg') ||
        /^no( .*)?$/.test(c.parts[first.at - 1]?.text ?? '') ||
        (!c.has('do', 'finish', 'run') && c.word(/^(done|did|complete)$/) < 0)
      )
        return null;
      return result(facts, first.at, { about: 'outcome', slot: 'outcome', form: 'outcome' });
    }
    // "Daily helix ok": the sort of test, not a habit.
    const regular = c.word(/^(daily|weekly)$/) >= 0;
    return {
      ...result(facts, outcome.at),
      ...(outcome.outcome === 'failed' || regular ? { anyMood: true as const } : {}),
    };
  },
};

/** Those that were tested: every one that is named, else the one that is meant; one of nothing where none is. */
function testedOnes(c: Clause): readonly ({ readonly id: string } | null)[] {
  const named = c
    .entities('autoclave')
    .flatMap(({ at, entity }) => (entity.id === null ? [] : [{ id: entity.id, at }]));
  // "Agnes passed, Dorothy failed": each has its own result.
  const [from = 0, to = 0] = [named[0]?.at, named.at(-1)?.at];
  const apart = c.parts
    .slice(from, to)
    .some((p) => p.entity === undefined && (hasTag(p, 'pass') || hasTag(p, 'fail') || hasTag(p, 'neg')));
  if (named.length < 2 || apart) return [autoclaveOf(c) ?? autoclaveBefore(c)];
  c.use(...named.map(({ at }) => at));
  return named;
}

/** The autoclave of the test just told. */
function autoclaveBefore(c: Clause): { id: string; said: string } | null {
  const { frame, autoclave } = c.scope.memory;
  return frame === 'autoclave-test' && autoclave !== null
    ? { id: autoclave, said: 'the autoclave spoken of just before' }
    : null;
}

function testOutcome(c: Clause) {
  const outcome = outcomeOf(c);
  if (outcome !== null) return outcome;
  const likewise = c.word(/^(too|likewise|as well|ditto|same|also|aswell)$/);
  const { frame, outcome: before } = c.scope.memory;
  if (likewise >= 0 && frame === 'autoclave-test' && before !== undefined)
    return { outcome: before, at: likewise };
  const turn = c.form('turn', 'd');
  if (turn >= 0 && c.has('penetration'))
    return { outcome: c.has('neg') ? ('failed' as const) : ('passed' as const), at: turn };
  return null;
}

/** "The leak under the sink" is a plumber's: the word alone needs a test beside it. */
function leakOnly(c: Clause, first: { sort: string; at: number }): boolean {
  if (first.sort === 'penetration') return false;
  const text = c.parts[first.at]?.text ?? '';
  if (text === 'acts') return true;
  if (text === 'leak' && c.scope.memory.frame === 'autoclave-test') return false;
  return text === 'leak' && c.word(/^(test|rate|check)$/) < 0 && !c.has('control', 'penetration');
}
