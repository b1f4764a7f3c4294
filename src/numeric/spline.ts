/**
 * Natural cubic spline through evenly spaced values, evaluated at every whole step of `1 / factor` of the spacing.
 *
 * The observers are smooth and printed every 5 nm; splined to 1 nm they give the white points of ASTM E308 that
 * `tests/published` holds.
 *
 * @param values - n values at unit spacing, n >= 3
 * @param factor - how many steps each spacing is divided into
 * @returns (n - 1) * factor + 1 values
 * @see Press et al., Numerical Recipes, section 3.3, for the tridiagonal form
 */
export function refineBySpline(values: Float64Array, factor: number): Float64Array {
  const n = values.length;
  // The first and the last stay 0: that is what makes the spline natural.
  const second = new Float64Array(n);
  const carry = new Float64Array(n);
  for (let i = 1; i < n - 1; i++) {
    const pivot = second[i - 1] / 2 + 2;
    second[i] = -0.5 / pivot;
    carry[i] = (3 * (values[i + 1] - 2 * values[i] + values[i - 1]) - carry[i - 1] / 2) / pivot;
  }
  for (let i = n - 2; i >= 0; i--) second[i] = second[i] * second[i + 1] + carry[i];
  const refined = new Float64Array((n - 1) * factor + 1);
  for (let j = 0; j < refined.length; j++) {
    const i = Math.min(Math.floor(j / factor), n - 2);
    const b = j / factor - i;
    const a = 1 - b;
    refined[j] =
      a * values[i] + b * values[i + 1] + ((a * a * a - a) * second[i] + (b * b * b - b) * second[i + 1]) / 6;
  }
  return refined;
}
