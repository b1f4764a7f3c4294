import { TintladderError } from '../core/index.js';
import { assertObject } from '../core/internal.js';
import type { Interval } from '../decision/index.js';

/** A relative tinting strength as it is known: the figure, %, and its 95 % interval. */
export interface KnownStrength {
  readonly percent: number;
  readonly interval?: Interval | undefined;
}

/**
 * Refuses what is no strength above 0 % with an interval that holds it.
 *
 * @throws TintladderError `wrong-type`, `out-of-range`, `invalid-interval`
 */
export function knownStrength(value: unknown, path: string): KnownStrength {
  assertObject(value, path, 'a strength with percent');
  const { percent, interval } = value as Partial<KnownStrength>;
  assertAbove(percent, `${path}.percent`, 'a strength above 0 %');
  if (interval === undefined) return { percent };
  assertObject(interval, `${path}.interval`, 'an interval with low and high');
  const { low, high } = interval;
  const numbers = typeof low === 'number' && typeof high === 'number';
  if (numbers && low > 0 && low <= percent && percent <= high && high < Infinity) return { percent, interval };
  throw new TintladderError('invalid-interval', {
    path: `${path}.interval`,
    received: interval,
    expected: `an interval above 0 % that holds the strength, ${percent}`,
  });
}

/** Refuses what is no finite number above zero. */
export function assertAbove(value: unknown, path: string, expected: string): asserts value is number {
  if (typeof value === 'number' && value > 0 && value < Infinity) return;
  throw new TintladderError('out-of-range', { path, received: value, expected });
}

/** A figure at both ends of what it is reckoned from, in order; nothing where the ends aren't known. */
export function ends({ interval }: KnownStrength, figure: (percent: number) => number): Interval | undefined {
  if (!interval) return undefined;
  const [low, high] = [figure(interval.low), figure(interval.high)].sort((a, b) => a - b);
  return { low, high };
}

/** Independent shares of an uncertainty add up as squares, on each side by itself. @see JCGM 100:2008, 5.1.2 */
export function addInQuadrature(value: number, shares: readonly (Interval | undefined)[]): Interval | undefined {
  const known = shares.filter((share) => share !== undefined);
  if (known.length === 0) return undefined;
  return {
    low: value - Math.hypot(...known.map(({ low }) => value - low)),
    high: value + Math.hypot(...known.map(({ high }) => high - value)),
  };
}
