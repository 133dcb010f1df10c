import { PACK_STEPS } from '../../rules/scanner/departure.ts';
import type { Guide } from '../guide.ts';
import { type GuidePlace, ownNotes, settleWords } from './guide-place.ts';

/** Common practice. */
export function moveGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { scanner, view, scanners } = place;
  const home = scanners[0]?.home;
  const there = view.practice.sites.find(({ id }) => id !== home);
  const name = there === undefined ? 'the other room' : there.name;
  return {
    when: null,
    steps: [
      'Switch off and unplug as its maker says: pull the plug, not the cable.',
      'Tip off, scanner and base wiped down.',
      ...PACK_STEPS,
      ...ownNotes(place, 'pack'),
      ...(there === undefined
        ? [`There: base steady, cable off the floor. Tell me: “${scanner} is in …”.`]
        : [
            `Tell me when you leave (“${scanner} left for ${name}”) and when it is there (“${scanner} at ${name}”).`,
            `There: set it up, let it settle ${settleWords(place)}, calibrate, then use it.`,
          ]),
    ],
    otherwise: [
      'Only to another room of the same site? It need not be calibrated for that.',
      `Dropped or knocked on the way? Tell me (“dropped ${scanner}”), and do not use it before it has passed its calibration.`,
      ...(there === undefined
        ? []
        : [`No sterile tips there? Take some. Ask me: “how many sterile tips at ${name}?”`]),
    ],
  };
}
