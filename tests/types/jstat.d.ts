declare module 'jstat' {
  /** The part of jstat 1.9.6 that the checks use. */
  interface Distributions {
    readonly normal: {
      cdf(x: number, mean: number, sd: number): number;
      inv(p: number, mean: number, sd: number): number;
    };
    readonly binomial: { cdf(hits: number, trials: number, rate: number): number };
    readonly poisson: { cdf(count: number, mean: number): number };
    readonly beta: { inv(p: number, a: number, b: number): number };
  }
  const jstat: { readonly jStat: Distributions };
  export = jstat;
}
