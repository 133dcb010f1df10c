import type { Guide } from '../guide.ts';
import type { GuidePlace } from './guide-place.ts';
import { secondsWords } from './warm-up.ts';

/** Common practice: a mirror colder than the dew point of breath mists; what to look at, the commonest first. */
export function foggingGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { tip, scanner } = place;
  return {
    when: 'Breath is warm and damp: it mists a mirror that is too cold.',
    steps: [
      `Warm the tip ${secondsWords(place)}, just before scanning; the colder the room, the longer.`,
      'Tip pushed fully home? Only then does it take up heat.',
      'Mirror clean and dry? A film mists first. Never wipe it in the mouth with a finger or glove.',
      'Scanner just in from a cold car? Let it settle first.',
      `Still? Take another sterile tip, and tell me: “tip ${tip} keeps fogging”.`,
    ],
    otherwise: [
      `Every tip on one scanner mists? Its heating may be at fault: “${scanner} is not heating”.`,
      'A temperature helps me tell the seconds: “21.5 in surgery 1”.',
    ],
  };
}
