import { celsiusWords, timeAt } from '../../rules/scanner/time-words.ts';
import { warmUpFor } from '../../rules/scanner/warm-up.ts';
import { placeWords } from '../../words/place-words.ts';
import type { Guide } from '../guide.ts';
import { type GuidePlace, sameOrEach } from './guide-place.ts';

/** Common practice. */
export function warmUpGuide(place: GuidePlace): Omit<Guide, 'title'> {
  const { tip, scanner } = place;
  return {
    when: 'Just before each scan: breath mists a mirror that is colder than its dew point.',
    steps: [
      'Take the oldest sterile tip. Bag whole and dry, indicator changed; if not, take another.',
      'Push it fully home, so that it takes up heat.',
      `Tell me: “tip ${tip} on ${scanner}”. I mark your note when the time is up.`,
      `Warm it ${secondsWords(place)}.`,
      'Scan straight away: it cools while it waits. Never warm it with a flame, hot water or hot air.',
    ],
    otherwise: ['Mists all the same? Ask me “why is it misting up?”'],
  };
}

/** "45 s (21.5 °C, Surgery 1, 08:40)": by the fresh readings where the scanners stand, else the time taken when none is known. */
export function secondsWords({ scanners, view }: GuidePlace): string {
  return sameOrEach(
    scanners.map(({ id, name, home }) => {
      const state = view.state.scanners.get(id);
      const site = state?.site ?? home;
      const { seconds, why } = warmUpFor(view, id, site, state?.room ?? null);
      if (why.by === 'no-reading') return [name, `${seconds} s (no fresh reading of the room)`] as const;
      const { celsius, room, mark } = why.reading;
      const at = `${placeWords(view.practice, site, room)}, ${timeAt(view, site, mark.at)}`;
      return [name, `${seconds} s (${celsiusWords(celsius)}, ${at})`] as const;
    }),
  );
}
