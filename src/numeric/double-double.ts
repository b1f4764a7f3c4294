// Differences of nearly equal products lose every digit in doubles. An unevaluated sum of two doubles carries 32 digits through
// them, with plain arithmetic.

/** A number as the unevaluated sum of two doubles; the second is the rounding error of the first. */
export type DoubleDouble = readonly [high: number, low: number];

/** a + b, exact. @see Knuth, The Art of Computer Programming 2, 4.2.2, theorem B */
export function sum(a: number, b: number): DoubleDouble {
  const high = a + b;
  const part = high - a;
  return [high, a - (high - part) + (b - part)];
}

/** a - b, exact. */
export function difference(a: number, b: number): DoubleDouble {
  return sum(a, -b);
}

/** a × b, exact unless it underflows. @see Dekker (1971), Numerische Mathematik 18, 224-242 */
export function product(a: number, b: number): DoubleDouble {
  const high = a * b;
  const [a1, a2] = halves(a);
  const [b1, b2] = halves(b);
  return [high, a2 * b2 - (high - a1 * b1 - a2 * b1 - a1 * b2)];
}

/** The product of two double-doubles to 31 digits. */
export function multiply(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const [high, low] = product(a[0], b[0]);
  return sum(high, low + (a[0] * b[1] + a[1] * b[0]));
}

/** a - b of two double-doubles, rounded to one double. */
export function subtract(a: DoubleDouble, b: DoubleDouble): number {
  const [high, low] = difference(a[0], b[0]);
  return high + (low + (a[1] - b[1]));
}

function halves(a: number): DoubleDouble {
  const shifted = a * 134217729; // 2^27 + 1
  const high = shifted - (shifted - a);
  return [high, a - high];
}
