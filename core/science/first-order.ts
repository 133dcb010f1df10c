/**
 * Newton's law of heating and cooling: T(t) = Ta + (T0 - Ta) · e^(-t/τ).
 * Any temperature scale and any unit of time do, as long as each is used throughout.
 */

/** Temperature after `elapsed` of something that began at `start` in surroundings at `ambient`. */
export function temperatureAfter(start: number, ambient: number, elapsed: number, tau: number): number {
  return ambient + (start - ambient) * Math.exp(-elapsed / tau);
}

/** Time until a difference of `gap` (either sign) has shrunk to `within`; 0 when it is there already. */
export function timeToWithin(gap: number, within: number, tau: number): number {
  const distance = Math.abs(gap);
  if (distance <= within) return 0;
  return within > 0 ? tau * Math.log(distance / within) : Number.POSITIVE_INFINITY;
}

/** Time to go from `start` to `target` in surroundings at `ambient`; Infinity when it never gets there. */
export function timeToReach(start: number, ambient: number, target: number, tau: number): number {
  if (start === target) return 0;
  const shareLeft = (target - ambient) / (start - ambient);
  return shareLeft > 0 && shareLeft < 1 ? -tau * Math.log(shareLeft) : Number.POSITIVE_INFINITY;
}

/**
 * Time constant from one later reading: began at `start`, read `reading` after `elapsed`.
 * RangeError unless the reading lies strictly between start and ambient.
 */
export function timeConstantFrom(start: number, ambient: number, reading: number, elapsed: number): number {
  const shareLeft = (reading - ambient) / (start - ambient);
  if (!(shareLeft > 0 && shareLeft < 1)) {
    throw new RangeError(`a reading of ${reading} is not between ${start} and ${ambient}`);
  }
  return -elapsed / Math.log(shareLeft);
}

/** Share (0 to 1) of the whole change that is done after `constants` time constants. */
export function shareDoneAfter(constants: number): number {
  return -Math.expm1(-constants);
}

/**
 * Unknown surroundings from three readings at equal steps of time, oldest first.
 * Undefined when the readings do not bend (nothing can be said) or do not settle toward anything.
 */
export function ambientFrom(first: number, second: number, third: number): number | undefined {
  const ratio = (third - second) / (second - first);
  if (!(ratio > 0 && ratio < 1)) return undefined;
  return (first * third - second * second) / (first + third - 2 * second);
}
