import type { Figure } from './figure.js';
import type { Judgement } from './result.js';

/** A figure as it is quoted in a sentence: `112.3 % (95 % interval 111.0 to 113.6)`. */
export function figureText({ value, unit, interval }: Pick<Figure, 'value' | 'unit' | 'interval'>): string {
  const range = interval ? ` (95 % interval ${rounded(interval.low, unit)} to ${rounded(interval.high, unit)})` : '';
  return `${rounded(value, unit)} ${unit}${range}`;
}

/** A limit as it is quoted in a sentence: `at most 1.00 ΔE*ab`. */
export function limitText({ limit: { lower, upper }, unit }: Pick<Judgement, 'limit' | 'unit'>): string {
  if (lower !== undefined && upper !== undefined) return `${rounded(lower, unit)} to ${rounded(upper, unit)} ${unit}`;
  return lower === undefined
    ? `at most ${rounded(upper ?? 0, unit)} ${unit}`
    : `at least ${rounded(lower, unit)} ${unit}`;
}

/** Colour differences to two decimals, percentages to one, anything else to three significant digits. */
function rounded(value: number, unit: string): string {
  const text = unit.startsWith('ΔE')
    ? value.toFixed(2)
    : unit === '%'
      ? value.toFixed(1)
      : String(Number(value.toPrecision(3)));
  return text.replace(/^-/, '−');
}
