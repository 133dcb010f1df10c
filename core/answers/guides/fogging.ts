import { capital, inWords, scannerWords } from '../../rules/tips/tip-words.ts';
import type { Guide } from '../guide.ts';
import type { GuidePlace } from './guide-place.ts';
import { secondsWords } from './warm-up.ts';

/** Common practice: a mirror colder than the dew point of breath mists; what to look at, the commonest first. */
export function foggingGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { tip, scanner, sites } = place;
  const room = sites[0]?.rooms[0]?.name ?? 'here';
  return {
    when: 'Breath is warm and damp: it mists a mirror that is too cold.',
    steps: [
      ...mistedOften(place),
      `Warm the tip ${secondsWords(place)}, just before scanning; the colder the room, the longer.`,
      'Tip pushed fully home? Only then does it take up heat.',
      'Mirror clean and dry? A film mists first. Never wipe it in the mouth with a finger or glove.',
      'Scanner just in from a cold car? Let it settle first.',
      `Still? Take another sterile tip, and tell me: “tip ${tip} keeps fogging”.`,
    ],
    otherwise: [
      `Every tip on one scanner mists? Its heating may be at fault: “${scanner} is not heating”.`,
      `A temperature helps me tell the seconds: “21.5 in ${room}”.`,
    ],
  };
}

/** Noted to mist this often, a tip or scanner is named (assumed): once is chance. */
const OFTEN = 2;

/** What the record shows of these sites: tips to leave out, scanners to look at. */
function mistedOften({ view, sites, scanners }: GuidePlace): readonly string[] {
  const { practice, state } = view;
  const isOften = ({ faults }: { readonly faults: readonly { readonly sort: string }[] }) =>
    faults.filter(({ sort }) => sort === 'fogging').length >= OFTEN;
  const tips = [...state.tips.values()]
    .filter((each) => each.retired === null && sites.some(({ id }) => id === each.site) && isOften(each))
    .map(({ id }) => id);
  const here = scanners.filter(({ id }) => {
    const found = state.scanners.get(id);
    return found !== undefined && isOften(found);
  });
  return [
    ...(tips.length === 0
      ? []
      : [
          `By the record ${tips.length === 1 ? 'tip' : 'tips'} ${inWords(tips)} misted more than once: take another.`,
        ]),
    ...here.map(
      ({ id }) =>
        `${capital(scannerWords(practice, id))} misted more than once on record: look at its lens and heating first.`,
    ),
  ];
}
