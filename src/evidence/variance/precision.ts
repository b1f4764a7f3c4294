import { TintladderError } from '../../core/index.js';
import { LEVELS, type Level } from '../readings/level.js';
import type { VarianceTerm } from './variance-term.js';

/**
 * What a laboratory knows of its scatter from earlier work, such as control reductions: one standard deviation for each level.
 *
 * A level that is left out counts as held by the one above it: a `weighing` estimated from weigh-ups of one drawdown each holds the drawdown.
 */
export interface Precision extends Readonly<Partial<Record<Level, number | undefined>>> {
  /** How many each standard deviation was estimated on: one number for all levels or one for each. */
  readonly degreesOfFreedom: number | Readonly<Partial<Record<Level, number | undefined>>>;
  /** Where it comes from, for the report: `control reductions of the last half year`. */
  readonly source?: string | undefined;
}

const KEYS = [...LEVELS, 'degreesOfFreedom', 'source'];

/** The variances of a history, level by level; checked. */
export type KnownVariances = ReadonlyMap<Level, VarianceTerm>;

/**
 * Reads a history of scatter.
 *
 * @param precision - standard deviations in the unit of the readings (0.01 for 1 % where readings are natural logarithms)
 * @throws TintladderError `precision-invalid` for a standard deviation below 0, one without its degrees of freedom, or a key that is none
 */
export function knownVariances(precision: Precision | undefined, path = 'options.precision'): KnownVariances {
  const known = new Map<Level, VarianceTerm>();
  if (precision === undefined) return known;
  const refuse = (at: string, received: unknown, expected: string, hint?: string): never => {
    throw new TintladderError('precision-invalid', { path: at, received, expected, hint });
  };
  if (typeof precision !== 'object' || precision === null || Array.isArray(precision)) {
    return refuse(path, precision, 'standard deviations by level');
  }
  const strange = Object.keys(precision).find((key) => !KEYS.includes(key));
  if (strange !== undefined) refuse(`${path}.${strange}`, strange, `one of ${KEYS.join(', ')}`);
  const { degreesOfFreedom } = precision;
  for (const level of LEVELS) {
    const deviation: unknown = precision[level];
    if (deviation === undefined) continue;
    if (typeof deviation !== 'number' || !(deviation >= 0 && deviation < Infinity)) {
      return refuse(`${path}.${level}`, deviation, 'a standard deviation of 0 or more');
    }
    const n: unknown = typeof degreesOfFreedom === 'object' ? degreesOfFreedom?.[level] : degreesOfFreedom;
    if (typeof n !== 'number' || !(n > 0)) {
      const hint =
        'A standard deviation without its degrees of freedom (values it came from, less one) supports no interval.';
      return refuse(`${path}.degreesOfFreedom`, n, `how many degrees of freedom ${level} was estimated on`, hint);
    }
    known.set(level, { variance: deviation * deviation, degreesOfFreedom: n });
  }
  if (known.size === 0) refuse(path, precision, 'a standard deviation for at least one level');
  return known;
}
