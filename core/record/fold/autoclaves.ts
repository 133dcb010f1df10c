import { ruleValue } from '../../defaults/rule-value.ts';
import { MINUTE } from '../../time/instant.ts';
import { startOfDay } from '../../time/zone.ts';
import type { SaidOf } from '../entry.ts';
import { type AutoclaveState, type LoadState, type SporeTest, UNNAMED } from '../state.ts';
import { hold } from '../tip-change.ts';
import { dateAt, zoneOf } from '../where.ts';
import { clearIfDone } from './autoclave-use.ts';
import { autoclavesHere, unsaid } from './autoclaves-here.ts';
import { recall, recallNow } from './recall.ts';
import { found, type Step, type Steps, unknown } from './step.ts';

export const autoclaveSteps = {
  'autoclave-test': (step, said) => {
    const autoclave = meant(step, said.autoclave);
    if (autoclave === undefined) return;
    const { outcome, sort } = said;
    autoclave.tests = { ...autoclave.tests, [sort]: { mark: step.mark, outcome } };
    if (outcome === 'passed') return;
    const reason = `${sort} test failed`;
    autoclave.holds = hold(autoclave.holds, { sort: 'test-failed', reason, mark: step.mark, ends: 'lead' });
    found(step, { kind: 'autoclave-test-failed', items: [itemOf(autoclave)], autoclave: autoclave.id, sort });
  },
  'spore-test': (step, said) => {
    const autoclave = meant(step, said.autoclave);
    if (autoclave === undefined || toldTwice(step, autoclave, said)) return;
    const test = keepTest(step, autoclave, said);
    if (test.outcome === 'passed') negative(step, autoclave, test);
    else if (test.outcome === 'failed') positive(step, autoclave);
  },
} satisfies Steps;

function itemOf(autoclave: AutoclaveState): string {
  return autoclave.id === UNNAMED ? 'autoclave' : `autoclave:${autoclave.id}`;
}

/** The autoclave named; else the one there is, at the sites that the chat room serves. */
function meant(step: Step, id: string | undefined): AutoclaveState | undefined {
  if (id !== undefined) {
    const named = step.state.autoclaves.get(id);
    if (named === undefined) unknown(step, `autoclave:${id}`);
    return named;
  }
  const [only, ...others] = autoclavesHere(step);
  if (only !== undefined && others.length === 0) return only;
  unsaid(step, null);
  return undefined;
}

/** A result belongs to the test that was run on the date it names, else to the one that is running, else it is its own. */
function keepTest(step: Step, autoclave: AutoclaveState, said: SaidOf<'spore-test'>): SporeTest {
  const { state, mark } = step;
  const { outcome } = said;
  const running = autoclave.sporeTests.findLast(
    (each) => each.outcome === 'running' && (said.ran === undefined || each.ran === said.ran),
  );
  const ran = said.ran ?? running?.ran ?? dateAt(state.practice, autoclave.site, mark.at);
  const known =
    running ??
    (said.ran === undefined ? undefined : autoclave.sporeTests.findLast((each) => each.ran === ran));
  const zone = zoneOf(state.practice, autoclave.site);
  const ranAt = known?.ranAt ?? (said.ran === undefined ? mark.at : Math.min(mark.at, startOfDay(ran, zone)));
  const test: SporeTest = { outcome, ran, ranAt, mark };
  const others = autoclave.sporeTests.filter((each) => each !== known);
  autoclave.sporeTests = [...others, test].sort((a, b) => a.ranAt - b.ranAt).slice(-12);
  return test;
}

/** The same result of a test with no date said, soon after, is one result told by two people: not a second positive. */
function toldTwice({ state, mark }: Step, autoclave: AutoclaveState, said: SaidOf<'spore-test'>): boolean {
  const tests = autoclave.sporeTests;
  if (said.ran !== undefined || tests.some((each) => each.outcome === 'running')) return false;
  const soon = ruleValue(state.practice, 'sporeToldTwiceMinutes') * MINUTE;
  return tests.some((each) => each.outcome === said.outcome && mark.at - each.mark.at <= soon);
}

/** Clear. A repeat run after the positive puts it back in service; after a second positive it takes repair and three. */
function negative(step: Step, autoclave: AutoclaveState, test: SporeTest): void {
  const positive = autoclave.sporeTests.findLast((each) => each.outcome === 'failed');
  // The positive of a test run later than this one still stands.
  if (autoclave.positivesInRow > 0 && positive !== undefined && positive.ranAt > test.ranAt) return;
  if (autoclave.positivesInRow >= 2) {
    if (autoclave.repaired === null) return;
    autoclave.clearSporeTests += 1;
    clearIfDone(step, autoclave);
    if (autoclave.positivesInRow > 0) return;
  }
  autoclave.positivesInRow = 0;
  autoclave.holds = autoclave.holds.filter((each) => each.ends !== 'clear-test');
  autoclave.lastNegative = test;
  autoclave.loadsSinceNegative = autoclave.loadsSinceNegative.filter((key) => {
    const load = step.state.loads.get(key);
    return load !== undefined && endOf(load) > test.ranAt;
  });
}

function endOf(load: LoadState): number {
  return load.finished?.at ?? load.started?.at ?? 0;
}

/** Loads since its last negative test of which nobody said the autoclave: any of them may have been in it. */
function unsaidLoads({ state }: Step, { site, lastNegative, loadsSinceNegative }: AutoclaveState): string[] {
  if (state.practice.autoclaves.length < 2) return [];
  const since = lastNegative?.ranAt ?? Number.NEGATIVE_INFINITY;
  return state.loads
    .all()
    .filter((load) => {
      if (load.autoclave !== null || endOf(load) <= since) return false;
      return load.site === null || site === null || load.site === site;
    })
    .map(({ key }) => key)
    .filter((key) => !loadsSinceNegative.includes(key));
}

function positive(step: Step, autoclave: AutoclaveState): void {
  const { state, mark } = step;
  autoclave.positivesInRow = autoclave.sporeTests.filter(
    (each) =>
      each.outcome === 'failed' && each.ranAt > (autoclave.lastNegative?.ranAt ?? Number.NEGATIVE_INFINITY),
  ).length;
  autoclave.repaired = null;
  autoclave.clearCycles = 0;
  autoclave.clearSporeTests = 0;
  const reason = 'spore test positive';
  autoclave.holds = hold(autoclave.holds, { sort: 'spore-positive', reason, mark, ends: 'clear-test' });
  const loads: string[] = [];
  const recalledLoads: string[] = [];
  const recalledTips = new Set<string>();
  for (const key of [...autoclave.loadsSinceNegative, ...unsaidLoads(step, autoclave)]) {
    const load = state.loads.get(key);
    if (load === undefined) continue;
    loads.push(key);
    // One that is still running is looked at when it has its result.
    if (load.finished === null || !recallNow(state, autoclave, load)) continue;
    recalledLoads.push(key);
    for (const tip of recall(step, load)) recalledTips.add(tip);
  }
  found(step, {
    kind: 'spore-positive',
    items: [itemOf(autoclave)],
    autoclave: autoclave.id,
    inRow: autoclave.positivesInRow,
    loads,
    recalledLoads,
    recalledTips: [...recalledTips],
  });
}
