import type { Line } from '../../words/message.ts';
import { placeWords } from '../../words/place-words.ts';
import { type Moment, readinessOf } from '../readiness.ts';
import { inWords, scannerWords } from '../tips/tip-words.ts';

/** Ids of the scanners that are ready now, in the practice file's order, this one left out. */
export function readyScanners(moment: Moment, except: string): readonly string[] {
  const ids = [...moment.state.scanners.keys()].filter((id) => id !== except);
  return ids.filter((id) => readinessOf(moment, id).ready);
}

/** The way out: which scanner to take instead, here first, then elsewhere. */
export function readyInstead(moment: Moment, site: string | null, except: string): Line {
  const { practice, state } = moment;
  const ready = readyScanners(moment, except).filter((id) => state.scanners.get(id)?.scan == null);
  const here = ready.filter((id) => state.scanners.get(id)?.site === site);
  if (here.length > 0)
    return ['Ready here: ', { strong: inWords(here.map((id) => scannerWords(practice, id))) }, '.'];
  const away = ready.map((id) => {
    return `${scannerWords(practice, id)} at ${placeWords(practice, state.scanners.get(id)?.site ?? null, null)}`;
  });
  if (away.length > 0) return [`No other scanner is ready here; ready elsewhere: ${inWords(away)}.`];
  return ['No other scanner is ready.'];
}
