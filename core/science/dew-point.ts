/** Constants of a Magnus equation e(T) = e0 · exp(a·T / (b + T)), over water. */
export interface MagnusConstants {
  readonly a: number;
  /** °C */
  readonly b: number;
  /** hPa at 0 °C */
  readonly e0: number;
  readonly source: string;
}

/** The three published sets in use; they differ by under 0.03 °C of dew point at room temperature. */
export const MAGNUS = {
  alduchovEskridge: {
    a: 17.625,
    b: 243.04,
    e0: 6.1094,
    source: 'Alduchov & Eskridge, J Appl Meteor 1996;35:601-609, -40 to 60 °C',
  },
  sonntag: {
    a: 17.62,
    b: 243.12,
    e0: 6.112,
    source: 'Sonntag, Z Meteorol 1990;70:340-344, as in WMO-No. 8',
  },
  bolton: {
    a: 17.67,
    b: 243.5,
    e0: 6.112,
    source: 'Bolton, Mon Wea Rev 1980;108:1047, eq. 10, -35 to 35 °C',
  },
} as const satisfies Record<string, MagnusConstants>;

/** Saturation vapour pressure over water, hPa, at `celsius`. */
export function saturationPressure(
  celsius: number,
  constants: MagnusConstants = MAGNUS.alduchovEskridge,
): number {
  return constants.e0 * Math.exp((constants.a * celsius) / (constants.b + celsius));
}

/** Dew point, °C, of air whose water vapour has the pressure `hectopascals`. RangeError unless it is above 0. */
export function dewPointOfPressure(
  hectopascals: number,
  constants: MagnusConstants = MAGNUS.alduchovEskridge,
): number {
  if (!(hectopascals > 0)) throw new RangeError(`vapour pressure must be above 0 hPa: ${hectopascals}`);
  const gamma = Math.log(hectopascals / constants.e0);
  return (constants.b * gamma) / (constants.a - gamma);
}

/**
 * Dew point, °C, of air at `celsius` and `relativeHumidity` (a fraction, above 0 up to 1).
 * A surface colder than this fogs. RangeError outside that range.
 */
export function dewPoint(
  celsius: number,
  relativeHumidity: number,
  constants: MagnusConstants = MAGNUS.alduchovEskridge,
): number {
  if (!(relativeHumidity > 0 && relativeHumidity <= 1)) {
    throw new RangeError(`relative humidity must be a fraction above 0 up to 1: ${relativeHumidity}`);
  }
  const gamma = Math.log(relativeHumidity) + (constants.a * celsius) / (constants.b + celsius);
  return (constants.b * gamma) / (constants.a - gamma);
}

/** Relative humidity, a fraction, of air at `celsius` whose dew point is `dewPointCelsius`. */
export function relativeHumidity(
  celsius: number,
  dewPointCelsius: number,
  constants: MagnusConstants = MAGNUS.alduchovEskridge,
): number {
  return saturationPressure(dewPointCelsius, constants) / saturationPressure(celsius, constants);
}
