import type { Rule } from '../matter.ts';
import { unanswered } from './unanswered.ts';

/** What is due of incidents. */
export const incidentRules: readonly Rule[] = [unanswered];
