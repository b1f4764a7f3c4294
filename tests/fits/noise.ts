/** Standard normal deviates from a seed: the mulberry32 generator and the Box-Muller transform. */
export function noiseFrom(seed: number): () => number {
  let state = seed;
  const uniform = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** Share of the intervals, in %, that hold the truth; an open one doesn't count as held. */
export function coverage(
  truth: number,
  intervals: readonly ({ readonly low: number; readonly high: number } | undefined)[],
): number {
  const held = intervals.filter((interval) => interval && interval.low <= truth && truth <= interval.high);
  return (100 * held.length) / intervals.length;
}

/** Median of the relative errors, in %. */
export function medianError(truth: number, values: readonly number[]): number {
  const errors = values.map((value) => 100 * Math.abs(value / truth - 1)).sort((a, b) => a - b);
  return errors[Math.floor(errors.length / 2)];
}
