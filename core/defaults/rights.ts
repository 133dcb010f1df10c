import type { RuleDefault } from './rule-default.ts';

/** Whose word is taken. */
export const rightsRules = {
  signedDevices: {
    type: 'choice',
    value: 'encrypted',
    choices: ['encrypted', 'always', 'never'],
    why: 'a release, a load passed after all or an incident closed has to be typed on a device that its owner has verified: in encrypted chat rooms, always (then never in a plain one), or never',
    origin: 'assumed',
    scope: 'practice',
  },
  privateNotes: {
    type: 'switch',
    value: false,
    why: 'notes are also taken from direct messages to the program, where colleagues do not see them; asking there is always allowed',
    origin: 'assumed',
    scope: 'practice',
  },
} as const satisfies Record<string, RuleDefault>;
