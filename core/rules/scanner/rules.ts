import type { Rule } from '../matter.ts';
import { calibrationRule } from './calibration.ts';
import { coverRule } from './cover.ts';
import { settleWaitRule } from './settle-wait.ts';
import { wipeRule } from './wipe.ts';

/** What is due of the scanners themselves. */
export const scannerRules: readonly Rule[] = [calibrationRule, settleWaitRule, wipeRule, coverRule];
