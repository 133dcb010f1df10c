import { roomOf } from '../../practice/look-up.ts';
import { MINUTE } from '../../time/instant.ts';
import { placeWords } from '../../words/place-words.ts';
import type { View } from '../matter.ts';
import { celsiusWords, timeAt } from '../scanner/time-words.ts';
import { warmUpFor } from '../scanner/warm-up.ts';

/** Where the mirror that fogged was. */
export interface FoggedAt {
  readonly scanner: string;
  readonly site: string | null;
  readonly room: string | null;
  /** Seconds from fitting to the scan, where both were noted to the minute or better; `null`: not known. */
  readonly warmedSeconds: number | null;
}

/** What to do about fogging, by cause: a mirror too cold for the room, a tip that takes up no heat, a film on the mirror. */
export function foggingAdvice(view: View, at: FoggedAt): readonly string[] {
  return [
    warmLonger(view, at),
    'Tip pushed fully home, so that it takes up heat.',
    'Mirror clean and dry: a film fogs first.',
  ];
}

function warmLonger(view: View, { scanner, site, room, warmedSeconds }: FoggedAt): string {
  const { seconds, why } = warmUpFor(view, scanner, site, room);
  // Notes are typed by hand: a gap of minutes says only that it was long enough.
  const warmed = warmedSeconds !== null && warmedSeconds * 1000 < 10 * MINUTE ? warmedSeconds : null;
  const told = warmed === null ? '' : ` By the notes it had ${warmed} s.`;
  if (why.by === 'no-reading')
    return `Warm it ${seconds} s just before scanning: no fresh reading of the room is known.${told}`;
  const { reading } = why;
  const where =
    site === null
      ? ''
      : ` in ${(reading.room === null ? undefined : roomOf(view.practice, site, reading.room)?.name) ?? placeWords(view.practice, site, null)}`;
  return `Warm it ${seconds} s just before scanning: it was ${celsiusWords(reading.celsius)}${where} at ${timeAt(view, site, reading.mark.at)}.${told}`;
}
