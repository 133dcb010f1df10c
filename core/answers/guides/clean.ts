import type { Guide } from '../guide.ts';
import { type GuidePlace, ownNotes } from './guide-place.ts';

/** Common practice; visible blood: standards name a stronger disinfectant, so the local code decides. */
export function cleanGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { scanner, tip } = place;
  return {
    when: 'After every scan, before the next patient.',
    steps: [
      `Tip off, to reprocessing. It is used, whatever it looks like: “used tip ${tip}”.`,
      'Wipe the whole scanner and its base with your practice’s product. Keep it wet for the time on its label.',
      'No spray and no liquid into the lens, where the tip sits, or any plug.',
      'Look at the lens: no smear, hair or dust. Clean it only with what its maker allows.',
      ...ownNotes(place, 'clean'),
      'Cover on: it protects the lens.',
      `Tell me: “${scanner} wiped down, cover on”.`,
    ],
    otherwise: [
      'Blood or dirt that you can see? Clean it off first, then disinfect, as your local code says.',
      `Only the lens or only the base done? Say so (“lens wiped on ${scanner}”): it is not a wipe-down.`,
    ],
  };
}
