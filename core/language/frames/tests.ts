import type { Clause } from '../clause.ts';
import type { Missing } from '../result.ts';
import { autoclaveOf } from '../roles/autoclave.ts';
import { isDenied, outcomeOf } from '../roles/outcome.ts';
import { type Frame, made, result } from './frame.ts';

const CLEAR =
  /^(clear|negative|neg|no growth|all clear|came back clear|no growth seen|-ve|clean|nil growth|neg result)$/;
const POSITIVE =
  /^(positive|growth|pos|grew|grown|showed growth|shown growth|\+ve|turned yellow|gone yellow|yellow)$/;
const RUNNING =
  /^(in|on|running|incubating|started|set|set off|cooking|brewing|cultured|reading|going|set up|in the incubator|under way|in progress|pending)$/;

export const sporeTest: Frame = {
  name: 'spore-test',
  on: ['spore'],
  read(c) {
    const noun = c.at('spore');
    if (noun < 0) return null;
    c.useTags(
      'spore',
      'come',
      'be',
      'show',
      'do',
      'grow',
      'run',
      'load',
      'put',
      'start',
      'temp',
      'have',
      'incubate',
      'strip',
    );
    const growth = c.word(/^(growth|grew|growing|grown)$/);
    const no = growth >= 0 && /^(no|nil|any|without|zero)$/.test(c.parts[growth - 1]?.text ?? '');
    const positive = c.word(POSITIVE);
    const clear = c.word(CLEAR);
    const other = outcomeOf(c);
    const running = runningAt(c);
    const verb = [growth, positive, clear, other?.at ?? -1, running].find((i) => i >= 0) ?? -1;
    c.use(growth, positive, clear, running);
    const autoclave = autoclaveOf(c);
    const base = autoclave === null ? {} : { autoclave: autoclave.id };
    const outcome = sporeOutcome({
      growth,
      no,
      positive: isDenied(c, positive) ? -1 : positive,
      clear:
        clear >= 0 && !isDenied(c, clear) ? clear : positive >= 0 && isDenied(c, positive) ? positive : -1,
      notClear: clear >= 0 && isDenied(c, clear),
      other: other?.outcome ?? null,
      running: running >= 0 || isSetGoing(c),
    });
    const slots = { ...(outcome === null ? {} : { outcome }), ...base };
    const fact = made('spore-test', slots, { outcome: verb < 0 ? [] : [verb] });
    const missing: Missing | undefined =
      outcome === null ? { about: 'outcome', slot: 'outcome', form: 'outcome' } : undefined;
    if (outcome === 'running' && !isSurelyRunning(c, running, noun)) return null;
    if (outcome === null && !c.has('do', 'finish', 'run') && c.word(/^(done|did|back|result)$/) < 0)
      return null;
    return { ...result([fact], verb < 0 ? noun : verb, missing), anyMood: true };
  },
};

function isSetGoing(c: Clause): boolean {
  if (c.has('incubate')) return true;
  return [c.form('start', 'dg'), c.form('run', 'g'), c.form('put', 'd'), c.form('send', 'd')].some(
    (i) => i >= 0,
  );
}

/** "In" and "on" are said of much else: of stock, of a visitor. */
function isSurelyRunning(c: Clause, running: number, noun: number): boolean {
  const loose = /^(in|on|going)$/.test(c.parts[running]?.text ?? '');
  if (loose && c.parts.some((p) => p.unknown || p.senses.some((s) => s.sort === 'other'))) return false;
  if (/strips$|vials$/.test(c.parts[noun]?.text ?? '')) return false;
  return c.scope.strange <= 1 && c.word(/^(order|ordered|order more|left|need|needs|delivery)$/) < 0;
}

/** "In" and "on" tell that it runs only where no autoclave or day follows. */
function runningAt(c: Clause): number {
  for (let i = c.word(RUNNING); i >= 0; i = c.word(RUNNING, i + 1)) {
    const text = c.parts[i]?.text ?? '';
    const next = c.parts[i + 1];
    const leads = text === 'on' && (next?.entity !== undefined || /^(the|our|my)$/.test(next?.text ?? ''));
    if (!leads) return i;
  }
  return -1;
}

function sporeOutcome(s: {
  growth: number;
  no: boolean;
  positive: number;
  clear: number;
  notClear: boolean;
  other: 'passed' | 'failed' | null;
  running: boolean;
}): 'passed' | 'failed' | 'running' | null {
  if (s.growth >= 0) return s.no ? 'passed' : 'failed';
  if (s.positive >= 0 || s.notClear) return 'failed';
  if (s.clear >= 0) return 'passed';
  if (s.other !== null) return s.other;
  return s.running ? 'running' : null;
}

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
    const autoclave = autoclaveOf(c) ?? autoclaveBefore(c);
    const facts = sorts.map(({ sort, at }) =>
      made(
        'autoclave-test',
        {
          sort,
          ...(outcome === null ? {} : { outcome: outcome.outcome }),
          ...(autoclave === null ? {} : { autoclave: autoclave.id }),
        },
        { sort: [at] },
      ),
    );
    if (outcome === null) {
      if (!c.has('do', 'finish', 'run') && c.word(/^(done|did|complete)$/) < 0) return null;
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
