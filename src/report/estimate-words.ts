import type { Interval } from '../rubout/index.js';
import { decimalsFor, formatFixed, formatInterval } from './format.js';

/** The value of a figure without its unit, which its column states; a figure that is missing is a dash. */
export function valueWords(value: number | undefined, unit: string): string {
  return value === undefined ? '–' : formatFixed(value, decimalsFor(unit, value));
}

/** A 95 % interval without its unit; a dash where the readings give none. */
export function intervalWords(interval: Interval | undefined, unit: string): string {
  if (!interval) return '–';
  return formatInterval(interval, decimalsFor(unit, Math.max(Math.abs(interval.low), Math.abs(interval.high))));
}

/** Value and interval in one cell: `104.2 (102.9 to 105.5)`. */
export function estimateWords(
  estimate: { readonly value: number; readonly interval?: Interval } | undefined,
  unit: string,
): string {
  if (!estimate) return '–';
  const value = valueWords(estimate.value, unit);
  return estimate.interval ? `${value} (${intervalWords(estimate.interval, unit)})` : value;
}
