import { ruleValue } from '../defaults/rule-value.ts';
import { gapOnArrival, settlingMinutes, wholeMinutesUp } from '../science/settling.ts';
import { HOUR, type Instant } from '../time/instant.ts';
import type { Arrival, Reading, State } from './state.ts';

/** The site's latest reading at or before that instant and not older than settling may use; the room's own first. */
export function readingAt(
  state: State,
  site: string | null,
  room: string | null,
  at: Instant,
): Reading | null {
  const readings = site === null ? undefined : state.sites.get(site)?.readings;
  if (site === null || readings === undefined) return null;
  const fresh = ruleValue(state.practice, 'settleReadingFreshHours', { site }) * HOUR;
  const holds = (each: Reading) => each.mark.at <= at && at - each.mark.at < fresh;
  const ofRoom = room === null ? undefined : readings.findLast((each) => each.room === room && holds(each));
  return ofRoom ?? readings.findLast(holds) ?? null;
}

/** Whole minutes that a scanner needs after that journey; the assumed difference where readings or journey are not known. */
export function minutesToSettle(
  state: State,
  scanner: string,
  arrival: Pick<Arrival, 'site' | 'gap' | 'journeyMinutes'>,
): number {
  const at = { site: arrival.site, scanner };
  const { practice } = state;
  const tauMinutes = ruleValue(practice, 'settleTauMinutes', at);
  const gapKelvin =
    arrival.gap === null || arrival.journeyMinutes === null
      ? ruleValue(practice, 'settleAssumedCelsius', at)
      : gapOnArrival({
          gapKelvin: arrival.gap,
          journeyMinutes: arrival.journeyMinutes,
          carKelvin: ruleValue(practice, 'settleCarCelsius', at),
          tauMinutes,
        });
  const withinKelvin = ruleValue(practice, 'settleWithinCelsius', at);
  return wholeMinutesUp(settlingMinutes({ gapKelvin, withinKelvin, tauMinutes }));
}
