/**
 * Two values before the first, by the polynomial of fourth degree through the first five; mirrored, two after the last. The published
 * end rules are exact for straight lines only, and the first two intervals would suffer.
 */
const BEFORE = [
  [15, -40, 45, -24, 5],
  [5, -10, 10, -5, 1],
];

/** Rows: the coefficients of 1, t, t^2 ... t^5 from the six values around an interval. */
const INSIDE = [
  [0, 0, 24, 0, 0, 0],
  [2, -16, 0, 16, -2, 0],
  [-1, 16, -30, 16, -1, 0],
  [-9, 39, -70, 66, -33, 7],
  [13, -64, 126, -124, 61, -12],
  [-5, 25, -50, 50, -25, 5],
].map((row) => row.map((c) => c / 24));

/**
 * Sprague's fifth-order interpolation between evenly spaced values: exact for polynomials up to the fourth degree, smooth up to the second
 * derivative, and equal to the values at their places.
 *
 * @param values - six or more, at unit spacing
 * @returns the curve, for positions from 0 to `values.length - 1`
 * @see CIE 167:2005; Sprague (1880), J. Inst. Actuaries 22
 */
export function interpolateSprague(values: Float64Array): (position: number) => number {
  const [b2, b1] = BEFORE.map((row) => combine(row, values));
  const [a2, a1] = BEFORE.map((row) => combine(row, values.slice(-5).reverse()));
  const padded = Float64Array.of(b2, b1, ...values, a1, a2);
  return (position) => {
    const left = Math.min(Math.floor(position), values.length - 2);
    const t = position - left;
    const around = padded.subarray(left, left + 6);
    return INSIDE.reduceRight((sum, row) => sum * t + combine(row, around), 0);
  };
}

function combine(coefficients: readonly number[], values: Float64Array): number {
  return coefficients.reduce((sum, coefficient, i) => sum + coefficient * values[i], 0);
}
