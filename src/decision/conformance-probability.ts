import { TintladderError } from '../core/index.js';
import { assertObject, assertOptions, refuseNonFinite } from '../core/internal.js';
import { studentProbability } from '../numeric/internal.js';
import { assertLimit, type Limit } from './limit.js';

/** A figure with its standard deviation; all in the unit of the limit. */
export interface UncertainFigure {
  readonly value: number;
  /** Of the figure itself, not of one reading. */
  readonly standardDeviation: number;
  /** On which the standard deviation is known; absent where it is taken as known. */
  readonly degreesOfFreedom?: number | undefined;
}

/**
 * Probability that the true value lies within a limit.
 *
 * The true value is distributed around the figure as Student's t says, where nothing was known of it beforehand. For a strength pass
 * logarithms of figure and limit: they scatter evenly.
 *
 * @param figure - value and standard deviation; its degrees of freedom where it was estimated
 * @param limit - `lower`, `upper` or both
 * @returns 0 to 1
 * @throws TintladderError `wrong-type`; `not-finite`; `invalid-option` for a standard deviation that is not positive or degrees of freedom that
 * aren't; `invalid-limit`
 * @example conformanceProbability({ value: 0.8, standardDeviation: 0.1 }, { upper: 1 }) // 0.9772
 * @example conformanceProbability({ value: 0.8, standardDeviation: 0.1, degreesOfFreedom: 4 }, { upper: 1 }) // 0.9419
 * @see JCGM 106:2012, 7.2 to 7.4; JCGM 100:2008, G.3, for Student's t
 */
export function conformanceProbability(figure: UncertainFigure, limit: Limit): number {
  assertObject(figure, 'figure', 'a value with its standard deviation');
  assertOptions(figure, ['value', 'standardDeviation', 'degreesOfFreedom'], 'figure');
  assertObject(limit, 'limit');
  assertLimit(limit);
  const { value, standardDeviation, degreesOfFreedom = Number.POSITIVE_INFINITY } = figure;
  refuseNonFinite(value, 'figure.value');
  if (typeof standardDeviation !== 'number' || !(standardDeviation > 0 && standardDeviation < Infinity)) {
    const expected = 'a positive number';
    throw new TintladderError('invalid-option', {
      path: 'figure.standardDeviation',
      received: standardDeviation,
      expected,
    });
  }
  if (typeof degreesOfFreedom !== 'number' || !(degreesOfFreedom > 0)) {
    const expected = 'a positive number';
    throw new TintladderError('invalid-option', {
      path: 'figure.degreesOfFreedom',
      received: degreesOfFreedom,
      expected,
    });
  }
  // Beyond so many degrees of freedom Student's t is the normal distribution to more digits than any figure has.
  const n = Math.min(degreesOfFreedom, 1e7);
  const below = (bound: number) => studentProbability((bound - value) / standardDeviation, n);
  const { lower, upper } = limit;
  return (upper === undefined ? 1 : below(upper)) - (lower === undefined ? 0 : below(lower));
}
