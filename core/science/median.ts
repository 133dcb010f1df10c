/** Middle value, or the mean of the two middle ones; undefined of nothing. */
export function median(values: readonly number[]): number | undefined {
  const sorted = values.toSorted((a, b) => a - b);
  const low = sorted[Math.floor((sorted.length - 1) / 2)];
  const high = sorted[Math.floor(sorted.length / 2)];
  return low === undefined || high === undefined ? undefined : (low + high) / 2;
}

/** Least value that at least `share` (above 0 up to 1) of the values do not exceed (nearest rank); undefined of nothing. */
export function percentile(values: readonly number[], share: number): number | undefined {
  return values.toSorted((a, b) => a - b)[Math.max(0, Math.ceil(share * values.length) - 1)];
}
