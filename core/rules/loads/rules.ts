import type { Rule } from '../matter.ts';
import { doubtsWaiting } from './doubt-waiting.ts';
import { leakTestsDue, sporeTestsDue } from './test-due.ts';

/** What is due of loads and autoclaves. */
export const loadRules: readonly Rule[] = [doubtsWaiting, sporeTestsDue, leakTestsDue];
