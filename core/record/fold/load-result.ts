import { ruleValue } from '../../defaults/rule-value.ts';
import { MINUTE } from '../../time/instant.ts';
import { answersForScanners } from '../authority.ts';
import type { SaidOf } from '../entry.ts';
import { autoclaveTold } from '../load-key.ts';
import { judgeFigures, whyFailed } from '../load-standard.ts';
import type { LoadResult, LoadState, LoadStatus, Refused, State } from '../state.ts';
import { isProven } from '../vouched.ts';
import { afterLoad } from './autoclave-use.ts';
import { failTips, passTips, waitTips } from './load-tips.ts';
import { found, type Step } from './step.ts';

type Finished = SaidOf<'load-finished'>;

/** A result, or another one of the same load: what it does not say stays as it was said before. */
export function takeResult(step: Step, key: string, said: Finished): void {
  const { state, mark } = step;
  const before = state.loads.get(key);
  if (before === undefined) return;
  const load = nameAutoclave(before, said.autoclave);
  const result = resultOf(state, load, said, step);
  const { status, failedWhy } = released(load, result) ?? verdict(result);
  const stood = load.status === 'doubted' ? (load.beforeDoubt ?? 'open') : load.status;
  const why = loosens(stood, status) ? whyNotCorrect(step, load) : null;
  if (why !== null) {
    found(step, {
      kind: 'refused',
      items: [`load:${load.number}`],
      what: 'load-correction',
      item: `load:${load.number}`,
      why,
    });
    return;
  }
  const after: LoadState = {
    ...load,
    finished: load.finished ?? mark,
    results: [...load.results.slice(-7), result],
    status,
    failedWhy,
    wet: result.dry === false,
    doubt: null,
    beforeDoubt: null,
    counted: true,
    released: status === 'failed' ? null : load.released,
  };
  state.loads.set(key, after);
  autoclaveTold(state, after);
  act(step, load, after, result);
  afterLoad(step, after, load.finished === null);
}

function nameAutoclave(load: LoadState, autoclave: string | undefined): LoadState {
  return load.autoclave === null && autoclave !== undefined ? { ...load, autoclave } : load;
}

function resultOf(state: State, load: LoadState, said: Finished, step: Step): LoadResult {
  const last = load.results.at(-1);
  const celsius = said.celsius ?? last?.celsius ?? null;
  const minutes = said.minutes ?? last?.minutes ?? null;
  return {
    mark: step.mark,
    outcome: said.outcome,
    celsius,
    minutes,
    indicator: said.indicator ?? last?.indicator ?? null,
    dry: said.dry ?? last?.dry ?? null,
    judged: judgeFigures(state.practice, load, { celsius, minutes }).judged,
  };
}

type Verdict = Pick<LoadState, 'status' | 'failedWhy'>;

function verdict(result: LoadResult): Verdict {
  const failedWhy = whyFailed(result);
  if (failedWhy !== null) return { status: 'failed', failedWhy };
  return { status: result.judged === 'no-value' ? 'needs-release' : 'passed', failedWhy: null };
}

/** Released whole by the lead: the same result told again does not take that back. */
function released({ status, released: given, results }: LoadState, result: LoadResult): Verdict | null {
  const last = results.at(-1);
  if (status !== 'passed' || given === null || last === undefined) return null;
  const same = result.celsius === last.celsius && result.minutes === last.minutes;
  return same && verdict(result).status === 'needs-release' ? { status, failedWhy: null } : null;
}

function loosens(before: LoadStatus, after: LoadStatus): boolean {
  if (after === 'passed') return before === 'failed' || before === 'needs-release';
  return after === 'needs-release' && before === 'failed';
}

/** What makes a load good after all is taken from its author within ten minutes, or from those who answer for it. */
function whyNotCorrect(step: Step, load: LoadState): Refused['why'] | null {
  if (!mayCorrect(step, load)) return 'not-allowed';
  return isProven(step.state.practice, step.entry.vouched) ? null : 'not-signed';
}

function mayCorrect(step: Step, load: LoadState): boolean {
  const { practice } = step.state;
  if (answersForScanners(practice, step.entry.from, step.entry.vouched)) return true;
  const last = load.results.at(-1)?.mark;
  if (last === undefined || last.from !== step.entry.from) return false;
  return step.entry.noted - last.noted <= ruleValue(practice, 'correctOwnMinutes') * MINUTE;
}

function act(step: Step, before: LoadState, after: LoadState, result: LoadResult): void {
  const items = [`load:${after.number}`];
  const first = before.finished === null;
  if (after.status === 'failed') {
    if (after.failedWhy === 'short' || after.failedWhy === 'indicator')
      found(step, { kind: 'load-counts-failed', items, load: after.key, why: after.failedWhy });
    failTips(step, after, first);
    if (before.status !== 'failed')
      found(step, { kind: 'load-failed', items, load: after.key, tips: after.tips, corrected: !first });
  } else if (after.status === 'needs-release') {
    waitTips(step, after, first);
    found(step, { kind: 'load-no-value', items, load: after.key, celsius: result.celsius ?? 0 });
  } else {
    passTips(step, after, first);
    if (after.wet && !before.wet) found(step, { kind: 'load-wet', items, load: after.key, tips: after.tips });
  }
}
