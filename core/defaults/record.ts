import type { RuleDefault } from './rule-default.ts';

/** What is done so that the record can be trusted later. */
export const recordRules = {
  nightlyHash: {
    type: 'switch',
    value: false,
    why: "at the day's last closing each chat room gets one short line with the number and hash of the record's last line: `verify --expect` shows later whether anything up to there was changed",
    origin: 'assumed',
    scope: 'practice',
  },
} as const satisfies Record<string, RuleDefault>;
