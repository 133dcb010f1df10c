import type { RuleDefault } from './rule-default.ts';

/** When a tip or scanner has more faults than chance would give it. */
export const faultRules = {
  faultTail: {
    type: 'number',
    value: 0.01,
    unit: 'share',
    min: 0.0001,
    max: 0.2,
    why: 'named when so many faults would come by chance less often than this (exact binomial tail)',
    origin: 'assumed',
    scope: 'practice',
  },
  faultUses: {
    type: 'number',
    value: 30,
    unit: 'count',
    whole: true,
    min: 5,
    max: 500,
    why: 'over this many of its last uses',
    origin: 'assumed',
    scope: 'practice',
  },
  faultLeast: {
    type: 'number',
    value: 3,
    unit: 'count',
    whole: true,
    min: 2,
    max: 20,
    why: 'and at least this many faults',
    origin: 'assumed',
    scope: 'practice',
  },
} as const satisfies Record<string, RuleDefault>;
