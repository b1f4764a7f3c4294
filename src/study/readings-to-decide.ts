import type { Limit } from '../decision/index.js';
import { replicatesNeeded } from '../strength/index.js';
import type { Figure } from './figure.js';

/** Beyond this many drawdowns nobody goes on measuring: the figure is as good as on the limit. */
const MOST_READINGS = 1000;

/**
 * Readings a side that would decide an undecided figure, if it stays where it is and scatters as it did.
 *
 * @returns undefined where the scatter is unknown, or the figure lies so close to its limit that no reasonable number decides it
 */
export function readingsToDecide({ value, standardDeviation }: Figure, { lower, upper }: Limit): number | undefined {
  if (standardDeviation === undefined || standardDeviation === 0) return undefined;
  const difference = Math.min(
    lower === undefined ? Infinity : Math.abs(value - lower),
    upper === undefined ? Infinity : Math.abs(value - upper),
  );
  // the sample size grows with the square of scatter over distance; this keeps hopeless cases from being counted out
  if (difference * Math.sqrt(MOST_READINGS) < 3 * standardDeviation) return undefined;
  return replicatesNeeded({ standardDeviation, difference });
}
