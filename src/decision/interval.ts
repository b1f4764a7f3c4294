import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';

/** Both ends of an interval, in the unit of the figure. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/**
 * Refuses an interval of negative width, with an end that is no finite number, or that does not hold the value.
 *
 * @throws TintladderError `wrong-type`, `invalid-interval`
 */
export function assertInterval(value: number, interval: Interval): void {
  assertObject(interval, 'interval', 'an interval with low and high');
  const { low, high } = interval;
  for (const [name, end] of Object.entries({ low, high })) {
    if (!Number.isFinite(end)) {
      const expected = 'a finite number';
      throw new TintladderError('invalid-interval', { path: `interval.${name}`, received: end, expected });
    }
  }
  if (low > high) {
    const expected = `an end at or above the lower one, ${low}`;
    throw new TintladderError('invalid-interval', { path: 'interval.high', received: high, expected });
  }
  if (value < low || value > high) {
    throw new TintladderError('invalid-interval', {
      path: 'value',
      received: value,
      expected: `a figure inside its interval, ${low} to ${high}`,
    });
  }
}
