import type { RuleDefault } from './rule-default.ts';

/** Wiping down and covering a scanner. Contact times are the practice's own product's, never ours. */
export const betweenPatientsRules = {
  wipeAfterMinutes: {
    type: 'number',
    value: 10,
    unit: 'minutes',
    min: 1,
    max: 30,
    why: 'a reminder when a finished scan is this old and the scanner is not wiped down',
    origin: 'assumed',
    scope: 'scanner',
  },
  coverAfterMinutes: {
    type: 'number',
    value: 15,
    unit: 'minutes',
    min: 1,
    max: 120,
    why: 'a reminder when a scanner used that day stands this long with no tip and no cover',
    origin: 'assumed',
    scope: 'scanner',
  },
  lateNoteMinutes: {
    type: 'number',
    value: 60,
    unit: 'minutes',
    min: 15,
    max: 240,
    why: 'a note typed this long after its time starts no wipe, cover or warm-up reminder',
    origin: 'assumed',
    scope: 'practice',
  },
  toldTwiceMinutes: {
    type: 'number',
    value: 10,
    unit: 'minutes',
    min: 0,
    max: 60,
    why: 'two notes of one scan’s end, or of a tip used, this close are one told twice; later, on a named scanner, it is another patient',
    origin: 'practice',
    scope: 'practice',
  },
} as const satisfies Record<string, RuleDefault>;
