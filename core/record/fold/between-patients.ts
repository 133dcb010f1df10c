import { takeOff } from './contact.ts';
import { finishScan } from './scan-end.ts';
import { type Steps, scannerOf } from './step.ts';

export const betweenPatientsSteps = {
  wiped: (step, said) => {
    const scanner = scannerOf(step, said.scanner);
    if (scanner === undefined) return;
    // Wiping the lens or the base alone is not a wipe-down.
    if (said.part !== 'all') {
      scanner.lastPartWipe = step.mark;
      return;
    }
    finishScan(step, scanner);
    scanner.dirtySince = null;
    scanner.warnedNotWiped = null;
    scanner.lastWipe = step.mark;
  },
  covered: (step, said) => {
    const scanner = scannerOf(step, said.scanner);
    if (scanner === undefined) return;
    finishScan(step, scanner);
    const tip = scanner.tip === null ? undefined : step.state.tips.get(scanner.tip);
    // The cover goes where the tip was: it has come off.
    if (tip !== undefined) takeOff(step, tip);
    scanner.covered = step.mark;
  },
} satisfies Steps;
