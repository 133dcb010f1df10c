import type { RuleDefault } from './rule-default.ts';

/** How long a fitted tip warms before its mirror stays clear: seconds = τ · ln((toward − room) / (toward − breath)). */
export const warmUpRules = {
  breathCelsius: {
    type: 'number',
    value: 34,
    unit: '°C',
    min: 31,
    max: 37,
    why: 'dew point of breath: a mirror colder than this fogs',
    origin: {
      source:
        'textbook, from memory: 34 °C, saturated; measured breath is 31–35 °C (Mansour et al. 2020, Sensors and Actuators B 304:127371, abstract)',
    },
    scope: 'scanner',
  },
  warmUpTowardCelsius: {
    type: 'number',
    value: 40,
    unit: '°C',
    min: 38,
    max: 60,
    why: 'temperature toward which the scanner warms the mirror',
    origin: 'assumed',
    scope: 'scanner',
  },
  warmUpTauSeconds: {
    type: 'number',
    value: 41,
    unit: 'seconds',
    min: 5,
    max: 300,
    why: 'time constant of the mirror, set so that a room at 22 °C gives 45 s',
    origin: 'assumed',
    scope: 'scanner',
  },
  warmUpLeastSeconds: {
    type: 'number',
    value: 30,
    unit: 'seconds',
    min: 0,
    max: 300,
    why: 'a tip warms at least this long just before scanning',
    origin: 'practice',
    scope: 'scanner',
  },
  warmUpUnknownSeconds: {
    type: 'number',
    value: 60,
    unit: 'seconds',
    min: 30,
    max: 300,
    why: 'a tip warms this long where no fresh reading of the room is known',
    origin: 'practice',
    scope: 'scanner',
  },
  warmUpReadingFreshHours: {
    type: 'number',
    value: 12,
    unit: 'hours',
    min: 1,
    max: 24,
    why: 'a room reading younger than this counts for warming up',
    origin: 'assumed',
    scope: 'site',
  },
} as const satisfies Record<string, RuleDefault>;
