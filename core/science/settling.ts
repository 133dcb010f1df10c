import { timeToWithin } from './first-order.ts';

/** What settling depends on; kelvin and minutes. */
export interface Settling {
  /** Difference from the room's air on arrival, either sign. */
  readonly gapKelvin: number;
  /** Close enough: ISO 9022-2 calls an optical instrument settled within 3 K. */
  readonly withinKelvin: number;
  readonly tauMinutes: number;
}

/** Minutes until an instrument has settled, unrounded: τ · ln(ΔT/δ), 0 when ΔT ≤ δ (Newton's law of cooling). */
export function settlingMinutes(settling: Settling): number {
  return timeToWithin(settling.gapKelvin, settling.withinKelvin, settling.tauMinutes);
}

/** What the difference on arrival depends on; kelvin and minutes. */
export interface Journey {
  /** Difference between the readings of the two sites, either sign. */
  readonly gapKelvin: number;
  readonly journeyMinutes: number;
  /** Difference that a long enough journey leaves, whatever the sites. */
  readonly carKelvin: number;
  readonly tauMinutes: number;
}

/**
 * Difference, kelvin, on arrival: that of the sites fades on the way while the car's grows,
 * gap · e^(-d/τ) + car · (1 - e^(-d/τ)). The worst case is taken: both count the same way.
 */
export function gapOnArrival(journey: Journey): number {
  const left = Math.exp(-Math.max(0, journey.journeyMinutes) / journey.tauMinutes);
  return Math.abs(journey.gapKelvin) * left + journey.carKelvin * (1 - left);
}

/** Rounded up to the whole minute; what only rounding noise lifts above a whole minute stays there. */
export function wholeMinutesUp(minutes: number): number {
  return Math.max(0, Math.ceil(minutes - 1e-9));
}
