import { SET_UP_STEPS } from '../../rules/scanner/arrival.ts';
import type { Guide } from '../guide.ts';
import { type GuidePlace, ownNotes, settleWords } from './guide-place.ts';

/** Common practice. */
export function setUpGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { scanner, sites, view } = place;
  const at = view.practice.sites.length > 1 ? (sites[0]?.name ?? '…') : (sites[0]?.rooms[0]?.name ?? '…');
  return {
    when: null,
    steps: [
      ...SET_UP_STEPS,
      ...ownNotes(place, 'set-up'),
      `Tell me where it is: “${scanner} at ${at}”.`,
      `From another site: let it settle ${settleWords(place)}, then calibrate. I tell you when.`,
      'Cover on while it waits.',
    ],
    otherwise: [
      'A plug that does not fit, or you are not sure where it goes? Leave it out and ask: no adapter, no guess.',
      `Damaged cable or plug? Do not use it. Tell me: “cable damaged on ${scanner}”.`,
    ],
  };
}
