/** Least span of an axis, in proportion to its values and by itself: a narrower one has no ticks that could be told apart. */
const LEAST_SPAN = 1e-9;

/** The range that holds all values; widened around them where they are all but the same. */
export function rangeOf(values: readonly number[]): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  const size = Math.max(Math.abs(low), Math.abs(high), 1);
  return high - low > LEAST_SPAN * size ? [low, high] : [low - 0.05 * size, high + 0.05 * size];
}
