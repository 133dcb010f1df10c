import { ruleValue } from '../../defaults/rule-value.ts';
import { DAY, HOUR } from '../../time/instant.ts';
import { autoclaveTold, loadName, loadsMeant, newLoadKey } from '../load-key.ts';
import { type LoadState, UNNAMED } from '../state.ts';
import { isBack, setStage } from '../tip-change.ts';
import { reasonsAgainst } from '../tip-safety.ts';
import { dateAt, siteOfRoom } from '../where.ts';
import { checkAutoclave } from './autoclave-use.ts';
import { autoclavesHere, unsaid } from './autoclaves-here.ts';
import { takeOff } from './contact.ts';
import { takeResult } from './load-result.ts';
import { found, type Step, type Steps, tipsOf } from './step.ts';
import { checkLimit } from './tips.ts';

export const loadSteps = {
  'load-started': (step, said) => {
    const name = {
      ...loadName(said.load),
      ...(said.autoclave === undefined ? {} : { autoclave: said.autoclave }),
    };
    const known = loadsMeant(step.state, name);
    const same = ruleValue(step.state.practice, 'sameOpenLoadHours') * HOUR;
    const open = known.filter(
      (each) => each.finished === null && each.started !== null && step.mark.at - each.started.at <= same,
    );
    const told = open.at(-1);
    const load = told ?? openLoad(step, name.number, name.autoclave, known.at(-1));
    if (told !== undefined && told.autoclave === null && name.autoclave !== null) {
      const named = { ...told, autoclave: name.autoclave };
      useAutoclave(step, named);
      autoclaveTold(step.state, named);
    }
    addTips(step, load.key, said.tips ?? []);
  },
  'load-finished': (step, said) => {
    const name = {
      ...loadName(said.load),
      ...(said.autoclave === undefined ? {} : { autoclave: said.autoclave }),
    };
    // Named by its key where a person was asked which and neither has an autoclave.
    const exact = step.state.loads.get(said.load);
    const known = exact === undefined ? loadsMeant(step.state, name) : [exact];
    const open = known.filter((each) => each.finished === null);
    const meant = open.length > 0 ? open : known.filter((each) => isOf(each, said.outcome, step));
    if (meant.length > 1) {
      const items = meant.map(
        (each) => `load:${each.autoclave === null ? '' : `${each.autoclave}/`}${each.number}`,
      );
      const loads = meant.map((each) => each.key);
      found(step, { kind: 'load-ambiguous', items, number: name.number, loads });
      return;
    }
    const load = meant[0] ?? newLoadHere(step, name.number, name.autoclave, false);
    if (load.tips.length === 0 && load.started === null && load.results.length === 0)
      found(step, { kind: 'load-without-tips', items: [`load:${said.load}`], load: load.key });
    takeResult(step, load.key, said);
  },
} satisfies Steps;

function isOf(load: LoadState, outcome: 'passed' | 'failed', step: Step): boolean {
  if (load.finished === null) return true;
  return outcome === 'failed' || step.mark.at - load.finished.at <= samePass(step);
}

function samePass({ state }: Step): number {
  return ruleValue(state.practice, 'loadNumberAgainDays') * DAY;
}

function openLoad(
  step: Step,
  number: string,
  autoclave: string | null,
  earlier: LoadState | undefined,
): LoadState {
  const load = newLoadHere(step, number, autoclave, true);
  // The number has its result already: the counter has started again, or the number is a slip.
  if (earlier?.finished != null && step.mark.at - earlier.finished.at <= samePass(step))
    found(step, {
      kind: 'load-number-again',
      items: [`load:${number}`],
      load: load.key,
      earlier: earlier.key,
    });
  useAutoclave(step, load);
  return load;
}

/** In the only autoclave that the note can mean; where there are several and none was said, that is noticed. */
function newLoadHere(step: Step, number: string, autoclave: string | null, started: boolean): LoadState {
  const here = step.state.practice.autoclaves.length > 0 && autoclave === null ? autoclavesHere(step) : [];
  const load = newLoad(step, number, here.length === 1 ? (here[0]?.id ?? null) : autoclave, started);
  if (here.length > 1) unsaid(step, load.key);
  return load;
}

/** The load is in that autoclave, from its start or told later: is it held, has it been tested today? */
function useAutoclave(step: Step, load: LoadState): void {
  const autoclave = step.state.autoclaves.get(load.autoclave ?? UNNAMED);
  if (autoclave === undefined) return;
  const onHeldAutoclave = checkAutoclave(step, autoclave, load);
  step.state.loads.set(load.key, { ...load, site: autoclave.site ?? load.site, onHeldAutoclave });
}

function newLoad(step: Step, number: string, autoclave: string | null, started: boolean): LoadState {
  const { state, entry, mark } = step;
  const site = state.autoclaves.get(autoclave ?? UNNAMED)?.site ?? siteOfRoom(state.practice, entry.room);
  const date = dateAt(state.practice, site, mark.at);
  const load: LoadState = {
    key: newLoadKey(state, { number, autoclave }, date),
    number,
    autoclave,
    site,
    date,
    tips: [],
    left: [],
    started: started ? mark : null,
    finished: null,
    results: [],
    status: 'open',
    failedWhy: null,
    wet: false,
    doubt: null,
    beforeDoubt: null,
    released: null,
    counted: false,
    recalled: null,
    onHeldAutoclave: false,
  };
  state.loads.set(load.key, load);
  const others = state.loadsByNumber.get(number) ?? [];
  state.loadsByNumber.set(number, [...others, { key: load.key, autoclave }]);
  return load;
}

function addTips(step: Step, key: string, ids: readonly string[]): void {
  const { state, mark } = step;
  for (const tip of tipsOf(step, ids)) {
    const load = state.loads.get(key);
    if (load === undefined) return;
    // Told again: of several loads that it is said to be in, the one named last decides.
    if (tip.openLoads.includes(key) && tip.stage === 'in-load') {
      tip.load = key;
      continue;
    }
    if (tip.scanner !== null) takeOff(step, tip);
    isBack(tip, mark);
    tip.departed = null;
    checkLimit(step, tip, 'load-started');
    // Nothing happened to it since a load passed, and it is not past its day: it goes through a second time for nothing.
    const idle = tip.loadsSinceUse.length > 0 && tip.needs.every((each) => each.why === 'reprocessing');
    const good = reasonsAgainst(state, tip, mark.at).every((each) => each.why === 'reprocessing');
    const items = [`tip:${tip.id}`, `load:${load.number}`];
    if (tip.openLoads.some((each) => each !== key))
      found(step, { kind: 'in-two-loads', items, tip: tip.id, loads: [...tip.openLoads, key] });
    else if (idle && good)
      found(step, {
        kind: 'never-used-in-two-loads',
        items,
        tip: tip.id,
        loads: [...tip.loadsSinceUse, key],
      });
    if (tip.site === null) tip.site = load.site;
    tip.load = key;
    tip.openLoads = [...tip.openLoads.filter((each) => each !== key), key];
    tip.loadsSinceUse = [...tip.loadsSinceUse.slice(-7), key];
    tip.sterile = null;
    tip.usedSinceFitted = false;
    state.history.tipLoads.add(tip.id, key);
    const tips = load.tips.includes(tip.id) ? load.tips : [...load.tips, tip.id];
    // Put in again after it had come out: part of it once more.
    const left = load.left.filter((each) => each.tip !== tip.id);
    state.loads.set(key, { ...load, tips, left });
    setStage(tip, 'in-load', mark);
  }
}
