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
  /^(in|on|went in|gone in|running|incubating|started|set|set off|cooking|brewing|cultured|reading|going|set up|in the incubator|under way|in progress|pending)$/;

export const sporeTest: Frame = {
  name: 'spore-test',
  on: ['spore'],
  read(c) {
    const noun = c.at('spore');
    if (noun < 0) return null;
    c.useTags(
      'spore',
      'come',
      'go',
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
    const signs = signsOf(c);
    const { verb, running } = signs;
    const autoclave = autoclaveOf(c);
    const base = autoclave === null ? {} : { autoclave: autoclave.id };
    const outcome = sporeOutcome(signs);
    const slots = { ...(outcome === null ? {} : { outcome }), ...base };
    const fact = made('spore-test', slots, { outcome: verb < 0 ? [] : [verb] });
    const missing: Missing | undefined =
      outcome === null ? { about: 'outcome', slot: 'outcome', form: 'outcome' } : undefined;
    if (outcome === 'running' && !isSurelyRunning(c, running, noun)) return null;
    const told = c.has('do', 'finish', 'run') || c.word(/^(done|did|back|result)$/) >= 0;
    if (outcome === null && (c.has('neg') || !told)) return null;
    const said = result([fact], verb < 0 ? noun : verb, missing);
    // "BI in Etna tomorrow" is still to be run; "BI in, result tomorrow" is running.
    return outcome === 'running' && isAhead(c) ? said : { ...said, anyMood: true };
  },
};

function isAhead(c: Clause): boolean {
  const ahead = c
    .entities('time')
    .some(({ entity }) => entity.span.days.some(({ first }) => first.sort === 'offset' && first.days > 0));
  return ahead && c.word(/^(result|results|reading|read|due|ready|back|know|answer)$/) < 0;
}

function isSetGoing(c: Clause): boolean {
  if (c.has('incubate')) return true;
  // "Went in this morning": the word goes with the time.
  if (c.word(/^(went|gone|put)$/) >= 0 && c.entities('time').some(({ at }) => c.parts[at]?.text === 'in'))
    return true;
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

interface Signs {
  readonly growth: 'passed' | 'failed' | null;
  readonly colour: 'passed' | 'failed' | null;
  readonly other: 'passed' | 'failed' | null;
  /** Place of the word that tells that it runs, −1 where none does. */
  readonly running: number;
  readonly going: boolean;
  readonly verb: number;
}

/** What a clause says of growth, and of a result that a denial turns round ("wasn't clear"). */
function signsOf(c: Clause): Signs {
  const growth = c.word(/^(growth|grew|growing|grown)$/);
  const none = /^(no|nil|any|without|zero)$/.test(c.parts[growth - 1]?.text ?? '');
  const positive = c.word(POSITIVE);
  const clear = c.word(CLEAR);
  const other = outcomeOf(c);
  const running = runningAt(c);
  c.use(growth, positive, clear, running);
  const said = positive >= 0 ? positive : clear;
  const bad = positive >= 0 !== isDenied(c, said);
  return {
    growth: growth < 0 ? null : none ? 'passed' : 'failed',
    colour: said < 0 ? null : bad ? 'failed' : 'passed',
    other: other?.outcome ?? null,
    running,
    going: running >= 0 || isSetGoing(c),
    verb: [growth, positive, clear, other?.at ?? -1, running].find((i) => i >= 0) ?? -1,
  };
}

function sporeOutcome(s: Signs): 'passed' | 'failed' | 'running' | null {
  return s.growth ?? s.colour ?? s.other ?? (s.going ? 'running' : null);
}
