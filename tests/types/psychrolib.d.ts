declare module 'psychrolib' {
  /** The part of psychrolib 1.1.1 that the checks use. A singleton: call SetUnitSystem first. */
  interface Psychrometrics {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** °C, fraction 0-1 → °C */
    GetTDewPointFromRelHum(dryBulb: number, relativeHumidity: number): number;
    /** °C, °C → fraction */
    GetRelHumFromTDewPoint(dryBulb: number, dewPoint: number): number;
    /** °C → Pa */
    GetSatVapPres(dryBulb: number): number;
    /** °C, °C, Pa → kg/kg */
    GetHumRatioFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
    GetTDewPointFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
    GetRelHumFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
  }
  const psychrolib: Psychrometrics;
  export = psychrolib;
}
