import { timeToReach } from './first-order.ts';

/** What warming a mirror depends on; °C and seconds. */
export interface WarmUp {
  /** Temperature that the mirror is warmed toward. */
  readonly heaterCelsius: number;
  /** A mirror at this temperature or above does not fog in breath. */
  readonly breathDewPointCelsius: number;
  readonly tauSeconds: number;
  /** Never less than this, however warm the room. */
  readonly leastSeconds: number;
}

/**
 * Breath saturated at 34 °C (textbook value, from memory; measured breath is 31 to 35 °C);
 * 40 °C and 41 s are assumed, set so that a room at 22 °C gives 45 s; common practice is 30 to 60 s.
 */
export const WARM_UP: WarmUp = {
  heaterCelsius: 40,
  breathDewPointCelsius: 34,
  tauSeconds: 41,
  leastSeconds: 30,
};

/**
 * Seconds, unrounded, to warm a mirror from a room at `roomCelsius` until breath does not fog it:
 * τ · ln((heater - room) / (heater - dew point)). Infinity when the heater never gets there.
 */
export function warmUpSeconds(roomCelsius: number, warmUp: WarmUp = WARM_UP): number {
  const { heaterCelsius, breathDewPointCelsius, tauSeconds, leastSeconds } = warmUp;
  if (roomCelsius >= breathDewPointCelsius) return leastSeconds;
  return Math.max(leastSeconds, timeToReach(roomCelsius, heaterCelsius, breathDewPointCelsius, tauSeconds));
}
