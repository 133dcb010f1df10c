import type { Rule } from '../matter.ts';
import { nearLimits } from './cycle-limit.ts';

/** What is due of tips. */
export const tipRules: readonly Rule[] = [nearLimits];
