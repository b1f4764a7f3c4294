/**
 * A figure as far as the readings tell it: the value where they do, and the 95 % bounds that noise leaves. A bound that is absent is open.
 */
export interface BoundedFigure {
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
}

/** A figure without what is not finite: an infinite bound is an open one. */
export function boundedFigure(value: number | undefined, low: number, high: number): BoundedFigure {
  return {
    ...(value !== undefined && Number.isFinite(value) && { value }),
    ...(low > Number.NEGATIVE_INFINITY && { low }),
    ...(high < Number.POSITIVE_INFINITY && { high }),
  };
}

/**
 * Bounds of a value from what it becomes when each reading on its own is moved to its own bounds: deviations to one side add up as squares,
 * as those of independent readings do.
 *
 * @param value - the value of the readings as they are
 * @param moved - the value with one reading moved, one entry for each move
 * @see JCGM 100:2008, 5.1.3, with finite differences instead of derivatives
 */
export function boundsFromMoves(value: number, moved: readonly number[]): { low: number; high: number } {
  let [down, up] = [0, 0];
  for (const other of moved) {
    // A move that leaves nothing to be said leaves no bound.
    if (Number.isNaN(other)) [down, up] = [Infinity, Infinity];
    else if (other < value) down += (value - other) ** 2;
    else up += (other - value) ** 2;
  }
  return { low: value - Math.sqrt(down), high: value + Math.sqrt(up) };
}
