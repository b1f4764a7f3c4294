import type { Interval } from '../decision/index.js';
import { decimalsFor, formatFixed, formatInterval } from './format.js';

/**
 * The value of a figure without its unit, which its column states; a figure that is missing is a dash.
 *
 * @param like - the figure whose decimals it shares, such as the limit it is held against
 */
export function valueWords(value: number | undefined, unit: string, like = value): string {
  return value === undefined ? '–' : formatFixed(value, decimalsFor(unit, like ?? value));
}

/** A 95 % interval without its unit, to the decimals of `like`; a dash where the readings give none. */
export function intervalWords(interval: Interval | undefined, unit: string, like: number): string {
  return interval ? formatInterval(interval, decimalsFor(unit, like)) : '–';
}

/** Value and interval in one cell: `104.2 (102.9 to 105.5)`. */
export function estimateWords(
  estimate: { readonly value: number; readonly interval?: Interval } | undefined,
  unit: string,
  like = estimate?.value,
): string {
  if (!estimate) return '–';
  const value = valueWords(estimate.value, unit, like);
  return estimate.interval ? `${value} (${intervalWords(estimate.interval, unit, like ?? estimate.value)})` : value;
}
