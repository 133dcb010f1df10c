/** The value below which that part of the sorted values lies. */
export function percentile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(part * sorted.length) - 1)] ?? Number.NaN;
}

/** A line of p50 and p99 in ms, ours over theirs. */
export function compared(name: string, ours: readonly number[], theirs: readonly number[]): string {
  const cells = [0.5, 0.95, 0.99].map((part) => {
    const [a, b] = [percentile(ours, part), percentile(theirs, part)];
    return `p${part * 100} ${a.toFixed(0).padStart(4)} : ${b.toFixed(0).padStart(4)} ms = ${(a / b).toFixed(2)}`;
  });
  return `${name.padEnd(22)} ${String(ours.length).padStart(5)}  ${cells.join('   ')}`;
}
