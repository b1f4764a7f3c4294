import { decimalsFor, formatFixed, withUnit } from '../core/internal.js';
import type { Interval } from './interval.js';

/** A value and, where the readings give one, its 95 % interval. */
export interface Estimate {
  readonly value: number;
  readonly interval?: Interval | undefined;
  /** One that holds together with those of all other figures compared; where it is there, decisions rest on it. */
  readonly joint?: Interval | undefined;
}

/** An interval in words, since a dash between signed numbers is misread. */
export function formatInterval({ low, high }: Interval, decimals: number): string {
  return `${formatFixed(low, decimals)} to ${formatFixed(high, decimals)}`;
}

/** An interval as short as it can be read: with a dash where no minus sign could be mistaken for it. */
export function shortInterval(interval: Interval, decimals: number): string {
  const { low, high } = interval;
  return low < 0 ? formatInterval(interval, decimals) : `${formatFixed(low, decimals)}–${formatFixed(high, decimals)}`;
}

/**
 * Value and interval for a place that states the unit elsewhere: `104.2 (102.9 to 105.5)`.
 *
 * @param decimals - of value and interval alike
 * @param between - how the interval is written
 */
export function formatEstimate({ value, interval }: Estimate, decimals: number, between = formatInterval): string {
  const text = formatFixed(value, decimals);
  return interval ? `${text} (${between(interval, decimals)})` : text;
}

/** A figure as a sentence quotes it: `112.3 % (95 % interval 111.0 to 113.6)`, with its joint interval where it has one. */
export function quoteEstimate({ value, interval, joint }: Estimate, unit: string, like = value): string {
  const decimals = decimalsFor(unit, like);
  const text = withUnit(formatFixed(value, decimals), unit);
  if (joint) return `${text} (joint interval ${formatInterval(joint, decimals)})`;
  return interval ? `${text} (95\u00a0% interval ${formatInterval(interval, decimals)})` : text;
}
