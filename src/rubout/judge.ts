import { TintladderError } from '../errors.js';

/** A bound on a quantity, in the unit of the quantity: from below, from above, or both. */
export interface Limit {
  readonly lower?: number;
  readonly upper?: number;
}

/** What a figure with its interval says about a limit. */
export type Outcome = 'meets' | 'fails' | 'undecided';

/** Both ends of an interval, in the unit of the figure. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Holds a figure against a limit with a guard band: it meets the limit only if its whole interval does, fails only if its
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
 * not hold the value; `not-finite` for the value
 * @example judge(0.8, { low: 0.6, high: 0.95 }, { upper: 1 }) // 'meets'
 * @example judge(0.8, { low: 0.5, high: 1.1 }, { upper: 1 }) // 'undecided'
 * @example judge(92, { low: 91, high: 93 }, { lower: 95, upper: 105 }) // 'fails'
 * @example judge(0.8, { low: 1.1, high: 0.5 }, { upper: 1 }) // throws invalid-interval
 * @see JCGM 106:2012, decision rules with guard bands
 */
export function judge(value: number, interval: Interval | undefined, limit: Limit): Outcome {
  assertLimit(limit);
  if (!Number.isFinite(value)) {
    throw new TintladderError('not-finite', { place: 'value', seen: value, expected: 'a finite number' });
  }
  if (interval === undefined) return 'undecided';
  assertInterval(value, interval);
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = limit;
  const { low, high } = interval;
  if (low >= lower && high <= upper) return 'meets';
  if (high < lower || low > upper) return 'fails';
  return 'undecided';
}

/**
 * The worst of several outcomes: one that fails decides, and one that is undecided keeps the whole undecided.
 *
 * @param outcomes - one or more
 * @returns `fails` if any fails, otherwise `undecided` if any is undecided, otherwise `meets`
 * @throws TintladderError `empty` without any outcome, since nothing that was not judged meets a limit
 * @example worstOutcome(['meets', 'undecided', 'meets']) // 'undecided'
 */
export function worstOutcome(outcomes: readonly Outcome[]): Outcome {
  if (outcomes.length === 0) {
    throw new TintladderError('empty', { place: 'outcomes', seen: 'an empty list', expected: 'one outcome or more' });
  }
  return outcomes.includes('fails') ? 'fails' : outcomes.includes('undecided') ? 'undecided' : 'meets';
}

function assertLimit({ lower, upper }: Limit): void {
  if (lower === undefined && upper === undefined) {
    throw new TintladderError('invalid-limit', {
      place: 'limit',
      seen: 'without bounds',
      expected: 'a lower bound, an upper bound or both',
    });
  }
  for (const [name, bound] of Object.entries({ lower, upper })) {
    if (bound !== undefined && !Number.isFinite(bound)) {
      const expected = 'a finite number, or no such bound,';
      throw new TintladderError('invalid-limit', { place: `limit.${name}`, seen: bound, expected });
    }
  }
  if (lower !== undefined && upper !== undefined && lower > upper) {
    const expected = `a bound at or below the upper one, ${upper},`;
    throw new TintladderError('invalid-limit', { place: 'limit.lower', seen: lower, expected });
  }
}

function assertInterval(value: number, { low, high }: Interval): void {
  for (const [name, end] of Object.entries({ low, high })) {
    if (!Number.isFinite(end)) {
      const expected = 'a finite number';
      throw new TintladderError('invalid-interval', { place: `interval.${name}`, seen: end, expected });
    }
  }
  if (low > high) {
    const expected = `an end at or above the lower one, ${low},`;
    throw new TintladderError('invalid-interval', { place: 'interval.high', seen: high, expected });
  }
  if (value < low || value > high) {
    throw new TintladderError('invalid-interval', {
      place: 'value',
      seen: value,
      expected: `a figure inside its interval, ${low} to ${high},`,
    });
  }
}
