import { booked, cancelled, closed, hours } from './days.ts';
import { fault } from './faults.ts';
import type { Frame } from './frame.ts';
import { held, released, retired } from './holds.ts';
import { loadFinished, loadStarted } from './loads.ts';
import { calibrated, covered, scanFinished, scanStarted, wiped } from './scanner-care.ts';
import { shown } from './shown.ts';
import { swapped } from './swapped.ts';
import { temperature } from './temperature.ts';
import { autoclaveTest, sporeTest } from './tests.ts';
import { added, bagged, fitted, inspected, removed, sent, sterile, used, washed } from './tips-round.ts';
import { departed, found, missing, moved, repaired } from './whereabouts.ts';

/** Every frame, the surer before the looser: of two that explain a clause equally well the first is taken. */
export const frames: readonly Frame[] = [
  sporeTest,
  autoclaveTest,
  calibrated,
  loadFinished,
  loadStarted,
  shown,
  closed,
  hours,
  cancelled,
  booked,
  held,
  released,
  retired,
  missing,
  found,
  fault,
  repaired,
  added,
  scanStarted,
  scanFinished,
  inspected,
  sterile,
  sent,
  bagged,
  washed,
  wiped,
  covered,
  used,
  swapped,
  removed,
  fitted,
  temperature,
  departed,
  moved,
];
