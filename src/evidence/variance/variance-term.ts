/** A share of a variance, and on how many degrees of freedom it is known; Infinity where it is stated and not estimated. */
export interface VarianceTerm {
  readonly variance: number;
  readonly degreesOfFreedom: number;
}

/**
 * The sum of independent variances with the degrees of freedom of the sum.
 *
 * @see Satterthwaite (1946), Biometrics Bulletin 2, 110; JCGM 100:2008, G.4.2
 */
export function sumOfVariances(terms: readonly VarianceTerm[]): VarianceTerm {
  const variance = terms.reduce((sum, term) => sum + term.variance, 0);
  const inverse = terms.reduce((sum, term) => sum + (term.variance / variance) ** 2 / term.degreesOfFreedom, 0);
  return { variance, degreesOfFreedom: variance > 0 && inverse > 0 ? 1 / inverse : Number.POSITIVE_INFINITY };
}

/** A variance times a constant. */
export function scaledVariance({ variance, degreesOfFreedom }: VarianceTerm, factor: number): VarianceTerm {
  return { variance: factor * variance, degreesOfFreedom };
}
