import { TintladderError } from '../../core/index.js';
import { assertObject, assertOptions } from '../../core/internal.js';
import { studentQuantile } from '../../numeric/internal.js';

/** What {@link replicatesNeeded} takes; standard deviation and difference in one unit, % for strengths. */
export interface ReplicatesNeededOptions {
  /** Standard deviation of what one reading of one film gives. */
  readonly standardDeviation: number;
  /** The difference between the two sides that is to be proven. */
  readonly difference: number;
  /**
   * Confidence of the two-sided interval.
   *
   * @default 0.95
   */
  readonly level?: number | undefined;
  /**
   * Chance that the interval proves a difference that is there.
   *
   * @default 0.8
   */
  readonly power?: number | undefined;
}

/**
 * Number of readings per side that prove a difference at the given scatter.
 *
 * The smallest n with `n >= 2 (t(1 - α/2) + t(power))² (s/d)²`, both t with 2n - 2 degrees of freedom, so found by trial; it
 * supposes that both sides scatter alike. From n = 4 on it is within one reading of the exact answer by the noncentral t.
 *
 * @param options - scatter of one reading, difference, level and power
 * @returns readings per side, at least 2
 * @throws TintladderError `invalid-option` for a scatter or difference that is not positive, or a level or power not
 * between 0 and 1 (power above half)
 * @example replicatesNeeded({ standardDeviation: 1, difference: 0.5 }) // 64
 * @see NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.2, for the iteration; Cohen (1992), Psychol. Bull. 112, for check values
 */
export function replicatesNeeded(options: ReplicatesNeededOptions): number {
  assertObject(options, 'options');
  assertOptions(options, ['standardDeviation', 'difference', 'level', 'power']);
  const { standardDeviation, difference, level = 0.95, power = 0.8 } = options;
  for (const [name, value] of Object.entries({ standardDeviation, difference })) {
    if (!(typeof value === 'number' && value > 0 && value < Infinity)) throw invalid(name, value, 'a positive number');
  }
  if (!(typeof level === 'number' && level > 0 && level < 1)) throw invalid('level', level, 'a number between 0 and 1');
  if (!(typeof power === 'number' && power >= 0.5 && power < 1))
    throw invalid('power', power, 'a number from 0.5 to below 1');
  const ratio = standardDeviation / difference;
  const needed = (degreesOfFreedom: number) =>
    2 * ((studentQuantile((1 + level) / 2, degreesOfFreedom) + studentQuantile(power, degreesOfFreedom)) * ratio) ** 2;
  let count = Math.max(2, Math.ceil(needed(Number.POSITIVE_INFINITY)));
  while (count < needed(2 * count - 2)) count++;
  return count;
}

function invalid(name: string, received: number, expected: string): TintladderError {
  return new TintladderError('invalid-option', { path: `options.${name}`, received, expected });
}
