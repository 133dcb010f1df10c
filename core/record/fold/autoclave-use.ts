import { ruleValue } from '../../defaults/rule-value.ts';
import { type AutoclaveState, type LoadState, type TestSort, UNNAMED } from '../state.ts';
import { dateAt } from '../where.ts';
import { recall, recallNow } from './recall.ts';
import { found, type Step } from './step.ts';

/** Loads kept to look back on after a positive spore test: some months of work, far more than a week between tests. */
const LOADS_KEPT = 400;
/** Sorts that belong before the first load of a working day; a leak test is weekly and the rules ask for it. */
const DAILY: readonly TestSort[] = ['penetration', 'control'];

/** A load begins: on an autoclave that is held, or first of the day without the tests that this practice makes. */
export function checkAutoclave(step: Step, autoclave: AutoclaveState, load: LoadState): boolean {
  const items = [`load:${load.number}`, autoclave.id === UNNAMED ? 'autoclave' : `autoclave:${autoclave.id}`];
  const { holds, id } = autoclave;
  autoclave.loadsSinceNegative = [...autoclave.loadsSinceNegative.slice(1 - LOADS_KEPT), load.key];
  autoclave.lastLoad = load.key;
  if (holds.length > 0) found(step, { kind: 'autoclave-held', items, autoclave: id, load: load.key, holds });
  if (autoclave.lastLoadDate !== load.date) {
    const sorts = untested(step, autoclave, load.date);
    if (sorts.length > 0) found(step, { kind: 'untested', items, autoclave: id, load: load.key, sorts });
  }
  autoclave.lastLoadDate = load.date;
  return holds.length > 0;
}

function untested(step: Step, autoclave: AutoclaveState, date: string): TestSort[] {
  const { practice, autoclaves } = step.state;
  return DAILY.filter((sort) => {
    const practised = [...autoclaves.values()].some((each) => each.tests[sort] !== undefined);
    const last = autoclave.tests[sort];
    return practised && (last === undefined || dateAt(practice, autoclave.site, last.mark.at) !== date);
  });
}

/** A load has its result: an empty one counts toward the clear cycles after a repair; one after a second positive is recalled. */
export function afterLoad(step: Step, load: LoadState, first: boolean): void {
  const autoclave = step.state.autoclaves.get(load.autoclave ?? UNNAMED);
  if (autoclave === undefined) {
    recallWhereverItRan(step, load);
    return;
  }
  // One whose start was not noted, or whose autoclave is told only now.
  const known =
    load.started !== null && (load.autoclave === null || autoclave.loadsSinceNegative.includes(load.key));
  if (first && !known)
    autoclave.loadsSinceNegative = [...autoclave.loadsSinceNegative.slice(1 - LOADS_KEPT), load.key];
  if (autoclave.positivesInRow === 0) return;
  if (load.tips.length > 0) {
    if (load.status === 'passed' && recallNow(step.state, autoclave, load)) recall(step, load);
    return;
  }
  if (!first || autoclave.repaired === null) return;
  autoclave.clearCycles = load.status === 'passed' ? autoclave.clearCycles + 1 : 0;
  clearIfDone(step, autoclave);
}

/** Nobody said which autoclave it was in: it may have been in any of its site whose spore test is positive. */
function recallWhereverItRan(step: Step, load: LoadState): void {
  if (load.autoclave !== null || load.status !== 'passed') return;
  const doubtful = [...step.state.autoclaves.values()].some((autoclave) => {
    const here = autoclave.site === null || load.site === null || autoclave.site === load.site;
    return here && autoclave.positivesInRow > 0 && recallNow(step.state, autoclave, load);
  });
  if (doubtful) recall(step, load);
}

/** After a second positive: repaired, then three clear empty-chamber cycles (CDC 2003, VI.F.9; read as quoted). */
export function clearIfDone(step: Step, autoclave: AutoclaveState): void {
  if (autoclave.positivesInRow < 2 || autoclave.repaired === null) return;
  const place = { site: autoclave.site ?? undefined };
  const least = ruleValue(step.state.practice, 'sporeClearCycles', place);
  if (Math.max(autoclave.clearCycles, autoclave.clearSporeTests) < least) return;
  autoclave.holds = autoclave.holds.filter((each) => each.ends !== 'clear-test');
  autoclave.positivesInRow = 0;
  autoclave.loadsSinceNegative = [];
}
