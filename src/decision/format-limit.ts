import { decimalsFor, formatFixed, withUnit } from '../core/internal.js';
import type { Limit } from './limit.js';

/** A limit as it is quoted: `at least 100.0 %`, `0.05 to 0.10 kg`. */
export function formatLimit({ lower, upper }: Limit, unit: string): string {
  const decimals = decimalsFor(unit, upper ?? lower ?? 0);
  const figure = (value: number) => formatFixed(value, decimals);
  if (lower !== undefined && upper !== undefined) return withUnit(`${figure(lower)} to ${figure(upper)}`, unit);
  if (lower !== undefined) return withUnit(`at least ${figure(lower)}`, unit);
  return upper === undefined ? 'no limit' : withUnit(`at most ${figure(upper)}`, unit);
}
