import type { Limit } from '../decision/index.js';
import { replicatesNeeded } from '../strength/index.js';
import type { Figure } from './figure.js';

/** Beyond this many units nobody goes on: the figure is as good as on the limit. */
const MOST_UNITS = 1000;

/**
 * Units per side that would decide an undecided figure, if it stays where it is and they scatter as they did.
 *
 * @returns undefined where the scatter is unknown, or the figure lies so close to its limit that no reasonable number decides it
 */
export function readingsToDecide({ value, scatter }: Figure, { lower, upper }: Limit): number | undefined {
  if (scatter === undefined || scatter.standardDeviation === 0) return undefined;
  const { standardDeviation } = scatter;
  const difference = Math.min(
    lower === undefined ? Infinity : Math.abs(value - lower),
    upper === undefined ? Infinity : Math.abs(value - upper),
  );
  // the sample size grows with the square of scatter over distance; this keeps hopeless cases from being counted out
  if (difference * Math.sqrt(MOST_UNITS) < 3 * standardDeviation) return undefined;
  return replicatesNeeded({ standardDeviation, difference });
}
