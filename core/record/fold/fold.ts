import type { Entry, SaidKind, SaidMap } from '../entry.ts';
import type { Mark, State } from '../state.ts';
import { autoclaveSteps } from './autoclaves.ts';
import { betweenPatientsSteps } from './between-patients.ts';
import { calibrationSteps } from './calibration.ts';
import { decisionSteps } from './decisions.ts';
import { faultSteps } from './faults.ts';
import { holdSteps } from './holds.ts';
import { loadSteps } from './loads.ts';
import { placeSteps } from './place.ts';
import { scanSteps } from './scans.ts';
import { siteSteps } from './site.ts';
import type { AllSteps, Step } from './step.ts';
import { tipSteps } from './tips.ts';
import { usedSteps } from './used.ts';

/** What each kind of entry does, one small table a subject. */
const STEPS: AllSteps = {
  ...placeSteps,
  ...calibrationSteps,
  ...betweenPatientsSteps,
  ...scanSteps,
  ...usedSteps,
  ...tipSteps,
  ...loadSteps,
  ...autoclaveSteps,
  ...siteSteps,
  ...holdSteps,
  ...faultSteps,
  ...decisionSteps,
};

/** Folds one entry into a state that only the caller holds, changing it. Entries come in the record's order. */
export function foldEntry(state: State, entry: Entry): void {
  const mark: Mark = {
    at: entry.when,
    earliest: entry.earliest ?? entry.when,
    noted: entry.noted,
    by: entry.by,
    from: entry.from,
    room: entry.room,
    entry: entry.id,
  };
  if (entry.from !== '') {
    const spoke = state.spoke.get(entry.from);
    if (spoke === undefined || spoke < entry.noted) state.spoke.set(entry.from, entry.noted);
  }
  run({ state, entry, mark }, entry.fact.kind, entry.fact);
}

function run<K extends SaidKind>(step: Step, kind: K, said: SaidMap[K]): void {
  STEPS[kind](step, said);
}
