import type { FaultNote } from '../state.ts';
import { show } from '../tip-change.ts';
import { stand } from './causes.ts';
import { takeOff } from './contact.ts';
import { holdFor } from './holds.ts';
import { finishScan } from './scan-end.ts';
import { itemParts, type Step, type Steps, scannerOf, tipOf } from './step.ts';
import { spoil } from './tips.ts';

/** Faults kept of each item: twice the 30 uses over which they are counted. */
const FAULTS_KEPT = 60;

export const faultSteps = {
  fault: (step, said) => {
    const { kind, id } = itemParts(said.item);
    if (kind === 'scanner') scannerFault(step, id, said.sort);
    else if (kind === 'tip') tipFault(step, id, said.sort);
    else if (kind === 'calibration-tip') scannerOf(step, id);
  },
} satisfies Steps;

interface Faulty {
  readonly uses: number;
  faults: readonly FaultNote[];
  faultCount: number;
}

function note(step: Step, thing: Faulty, sort: string): void {
  const fault: FaultNote = { mark: step.mark, sort, atUse: thing.uses };
  thing.faults = [...thing.faults.slice(1 - FAULTS_KEPT), fault];
  thing.faultCount += 1;
}

function scannerFault(step: Step, id: string, sort: string): void {
  const scanner = scannerOf(step, id);
  if (scanner === undefined) return;
  note(step, scanner, sort);
  if (sort !== 'dropped') return;
  finishScan(step, scanner);
  holdFor(step, scanner, 'dropped', 'pass', 'dropped');
  stand(scanner, { cause: 'dropped', mark: step.mark, step: null });
}

function tipFault(step: Step, id: string, sort: string): void {
  const tip = tipOf(step, id);
  if (tip === undefined) return;
  note(step, tip, sort);
  if (sort === 'dropped') {
    if (tip.scanner !== null) takeOff(step, tip);
    spoil(step, tip, 'dropped');
  } else if (sort === 'pack' || sort === 'indicator') spoil(step, tip, sort);
  else if (sort === 'mirror') {
    // Mirror or body damaged.
    holdFor(step, tip, 'damaged', 'placer', 'mirror damaged');
    show(tip, step.mark);
  }
}
