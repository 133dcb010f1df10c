import { ruleValue } from '../../defaults/rule-value.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Reading, State } from '../../record/state.ts';
import { warmUpSeconds } from '../../science/warm-up.ts';
import { HOUR, type Instant } from '../../time/instant.ts';

/** How long a tip warms on the scanner before its mirror stays clear of breath. */
export interface WarmUpFor {
  /** Whole seconds. */
  readonly seconds: number;
  readonly why:
    | { readonly by: 'reading'; readonly reading: Reading }
    /** No reading under 12 h old. */
    | { readonly by: 'no-reading' };
}

interface Moment {
  readonly practice: Practice;
  readonly state: State;
  readonly now: Instant;
}

/** Seconds by the room's own fresh reading, else the site's latest, else the time taken where none is known. */
export function warmUpFor(
  { practice, state, now }: Moment,
  scanner: string,
  site: string | null,
  room: string | null,
): WarmUpFor {
  const at = { site: site ?? undefined, scanner };
  const fresh = ruleValue(practice, 'warmUpReadingFreshHours', at) * HOUR;
  const readings = (site === null ? undefined : state.sites.get(site)?.readings) ?? [];
  const usable = readings.filter(({ mark }) => mark.at <= now && now - mark.at < fresh);
  const own = room === null ? undefined : usable.findLast((each) => each.room === room);
  const reading = own ?? usable.at(-1);
  if (reading === undefined)
    return { seconds: ruleValue(practice, 'warmUpUnknownSeconds', at), why: { by: 'no-reading' } };
  const seconds = warmUpSeconds(reading.celsius, {
    heaterCelsius: ruleValue(practice, 'warmUpTowardCelsius', at),
    breathDewPointCelsius: ruleValue(practice, 'breathCelsius', at),
    tauSeconds: ruleValue(practice, 'warmUpTauSeconds', at),
    leastSeconds: ruleValue(practice, 'warmUpLeastSeconds', at),
  });
  return { seconds: Math.round(seconds), why: { by: 'reading', reading } };
}
