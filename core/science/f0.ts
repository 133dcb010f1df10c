/** One reading of a cycle's profile. */
export interface ProfilePoint {
  readonly minute: number;
  readonly celsius: number;
}

/** What an F0 is measured by; the reference must be stated with every F0 (121, 121.1 and 121.11 are all in use). */
export interface F0Reference {
  readonly celsius: number;
  /** kelvin for a tenfold change of rate */
  readonly z: number;
}

/** 121.1 °C (250 °F) and z = 10 K: the usual definition (Lundahl, PDA J Pharm Sci Technol 2007, quoted). */
export const F0_REFERENCE: F0Reference = { celsius: 121.1, z: 10 };

/** Equivalent minutes at the reference per minute at `celsius`: 10^((T - reference)/z). */
export function lethalRate(celsius: number, reference: F0Reference = F0_REFERENCE): number {
  return 10 ** ((celsius - reference.celsius) / reference.z);
}

/** F0 in minutes of a hold of `minutes` at `celsius`. For interest only: it never passes a load that missed its band. */
export function f0OfHold(celsius: number, minutes: number, reference: F0Reference = F0_REFERENCE): number {
  return minutes * lethalRate(celsius, reference);
}

/** F0 in minutes of a profile, by the trapezium rule on the lethal rate; points in order of time; RangeError if not. */
export function f0OfProfile(points: readonly ProfilePoint[], reference: F0Reference = F0_REFERENCE): number {
  let total = 0;
  let before: ProfilePoint | undefined;
  for (const point of points) {
    if (before !== undefined) {
      const step = point.minute - before.minute;
      if (!(step >= 0)) throw new RangeError(`profile goes back in time at minute ${point.minute}`);
      total += (step * (lethalRate(before.celsius, reference) + lethalRate(point.celsius, reference))) / 2;
    }
    before = point;
  }
  return total;
}
