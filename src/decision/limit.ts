import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';

/** A bound on a quantity, in the unit of the quantity: from below, from above, or both. */
export interface Limit {
  readonly lower?: number;
  readonly upper?: number;
}

/**
 * Refuses a limit without bounds, with a bound that is no finite number, or with `lower` above `upper`.
 *
 * @throws TintladderError `wrong-type`, `invalid-limit`
 */
export function assertLimit(limit: Limit): void {
  assertObject(limit, 'limit', 'a limit with lower, upper or both');
  const { lower, upper } = limit;
  if (lower === undefined && upper === undefined) {
    throw new TintladderError('invalid-limit', {
      path: 'limit',
      received: limit,
      expected: 'a lower bound, an upper bound or both',
    });
  }
  for (const [name, bound] of Object.entries({ lower, upper })) {
    if (bound !== undefined && !Number.isFinite(bound)) {
      const expected = 'a finite number, or no such bound';
      throw new TintladderError('invalid-limit', { path: `limit.${name}`, received: bound, expected });
    }
  }
  if (lower !== undefined && upper !== undefined && lower > upper) {
    const expected = `a bound at or below the upper one, ${upper}`;
    throw new TintladderError('invalid-limit', { path: 'limit.lower', received: lower, expected });
  }
}
