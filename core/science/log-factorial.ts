/** ln(n!) for a whole n ≥ 0: the product itself up to 20!, Stirling's series beyond; absolute error under 1e-13. */
export function logFactorial(n: number): number {
  if (n <= 20) {
    let product = 1;
    for (let factor = 2; factor <= n; factor++) product *= factor;
    return Math.log(product);
  }
  const inverse = 1 / n;
  const square = inverse * inverse;
  const series = inverse * (1 / 12 - square * (1 / 360 - square * (1 / 1260 - square / 1680)));
  return n * Math.log(n) - n + 0.5 * Math.log(2 * Math.PI * n) + series;
}
