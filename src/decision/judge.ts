import { refuseNonFinite } from '../core/internal.js';
import { assertInterval, type Interval } from './interval.js';
import { assertLimit, type Limit } from './limit.js';
import type { Outcome } from './outcome.js';

/**
 * Compares a figure with its limit with a guard band: it meets the limit only if its whole interval does, fails only if its
 * whole interval does, and is undecided in between.
 *
 * An end of the interval that lies on the limit is on the side of the limit that is allowed. A figure that is exact, such
 * as a count, has an interval of no width; a figure of unknown uncertainty has none, and then nothing is decided.
 *
 * @param value - the figure
 * @param interval - its coverage interval, usually 95 %, which holds the value; `undefined` where the scatter is unknown
 * @param limit - `lower`, `upper` or both
 * @returns `meets`, `fails` or `undecided`
 * @throws TintladderError `invalid-limit` for a limit without bounds, with a bound that is no finite number, or with
 * `lower` above `upper`; `invalid-interval` for one of negative width, with an end that is no finite number, or that does
 * not hold the value; `not-finite` for the value; `wrong-type`
 * @example judge(0.8, { low: 0.6, high: 0.95 }, { upper: 1 }) // 'meets'
 * @example judge(0.8, { low: 0.5, high: 1.1 }, { upper: 1 }) // 'undecided'
 * @example judge(92, { low: 91, high: 93 }, { lower: 95, upper: 105 }) // 'fails'
 * @example judge(0.8, { low: 1.1, high: 0.5 }, { upper: 1 }) // throws invalid-interval
 * @see JCGM 106:2012, decision rules with guard bands
 */
export function judge(value: number, interval: Interval | undefined, limit: Limit): Outcome {
  assertLimit(limit);
  refuseNonFinite(value, 'value');
  if (interval === undefined) return 'undecided';
  assertInterval(value, interval);
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = limit;
  const { low, high } = interval;
  if (low >= lower && high <= upper) return 'meets';
  if (high < lower || low > upper) return 'fails';
  return 'undecided';
}
