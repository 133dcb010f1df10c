import { added } from './added.ts';
import { autoclaveTest } from './autoclave-test.ts';
import { booked } from './booked.ts';
import { calibrated } from './calibrated.ts';
import { cancelled } from './cancelled.ts';
import { cleanTips } from './clean-tips.ts';
import { covered } from './covered.ts';
import { departed } from './departed.ts';
import { fault } from './fault.ts';
import { fitted } from './fitted.ts';
import type { Frame } from './frame.ts';
import { held, released, retired } from './holds.ts';
import { inspected } from './inspected.ts';
import { loadFinished } from './load-finished.ts';
import { loadStarted } from './load-started.ts';
import { found, missing } from './missing.ts';
import { moved } from './moved.ts';
import { closed, hours } from './opening.ts';
import { removed } from './removed.ts';
import { repaired } from './repaired.ts';
import { scanFinished, scanStarted } from './scanning.ts';
import { sent } from './sent.ts';
import { shown } from './shown.ts';
import { sporeTest } from './spore-test.ts';
import { sterile } from './sterile.ts';
import { swapped } from './swapped.ts';
import { temperature } from './temperature.ts';
import { used } from './used.ts';
import { bagged, washed } from './washed.ts';
import { wiped } from './wiped.ts';

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
  cleanTips,
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
