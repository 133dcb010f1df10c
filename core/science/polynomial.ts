/** c0 + c1·x + c2·x² + … (coefficients lowest power first), by Horner's rule. */
export function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
