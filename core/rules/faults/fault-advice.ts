import type { FactOf } from '../../reading/fact.ts';

type Sort = FactOf<'fault'>['sort'];

const NO_LOAD = 'It counts as used until its next passed load.';

/**
 * What a fault means in the record and what to look at first, by common practice; the maker's instructions come before it.
 * Fogging has its own advice, by its cause.
 */
export function faultAdvice(kind: 'tip' | 'scanner', sort: Exclude<Sort, 'fogging'>): readonly string[] {
  return kind === 'tip' ? TIP[sort] : SCANNER[sort];
}

const TIP: Readonly<Record<Exclude<Sort, 'fogging'>, readonly string[]>> = {
  dropped: [NO_LOAD, 'Look at mirror and body: cracked or loose, it is retired.'],
  lens: ['Look at lens and mirror for smears, hairs and dust.'],
  mirror: [
    'It is held: a damaged mirror or body must not go in a mouth. Retire it, or release it if it is sound.',
  ],
  cable: ['Take it off and look at its contacts.'],
  connection: ['Take it off, look at its contacts, and push the next one fully home.'],
  heating: ['Push it fully home, so that it takes up heat; if it stays cold, try another.'],
  pack: [NO_LOAD, 'Re-pack it: a wet, torn or opened pack does not keep it sterile.'],
  indicator: [NO_LOAD, 'Look at the load it came from: were the other strips changed?'],
  other: ['In doubt, hold it: “don’t use it”.'],
};

const SCANNER: Readonly<Record<Exclude<Sort, 'fogging'>, readonly string[]>> = {
  dropped: [
    'It is held until it passes its calibration.',
    'Look at body, lens and cable first: anything cracked or loose, call support.',
  ],
  lens: ['Clean the lens as its maker says; look for smears, hairs and dust.'],
  mirror: ['The mirror is the tip’s: change the tip, and note which it was.'],
  cable: ['Look along the cable for kinks and damage. Damaged: do not use it, call support.'],
  connection: ['Check each plug where the maker says; never a network socket or switch. Start it again.'],
  heating: ['Try another tip, pushed fully home. Still cold: call support.'],
  pack: ['In doubt, hold it: “out of service”.'],
  indicator: ['In doubt, hold it: “out of service”.'],
  other: ['In doubt, hold it: “out of service”.'],
};
