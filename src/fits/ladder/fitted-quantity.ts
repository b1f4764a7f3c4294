import type { Warning } from '../../core/index.js';
import type { Interval } from '../../decision/index.js';
import type { Bounds } from './profile-interval.js';

/** A figure that a fit gives, with what bounds it. */
export interface FittedQuantity {
  readonly value: number;
  /** 95 %; absent where the data leave one end open, and for what depends on an end that was never read. */
  readonly interval?: Interval;
  /** The lower end, where the figure has one and no interval: it is at least this. */
  readonly atLeast?: number;
  /** True where the figure lies beyond the first or last step that was read, so that the curve had to be extrapolated to it. */
  readonly extrapolated: boolean;
}

/** Puts a figure together and says what a reader must know of it. */
export function fittedQuantity(
  name: string,
  value: number,
  bounds: Bounds,
  range?: { readonly first: number; readonly last: number; readonly axis: string },
): { readonly quantity: FittedQuantity; readonly warnings: readonly Warning[] } {
  const warnings: Warning[] = [];
  const extrapolated = range !== undefined && (value < range.first || value > range.last);
  if (range && extrapolated) {
    const [edge, word] = value > range.last ? [range.last, 'last'] : [range.first, 'first'];
    warnings.push({
      code: 'extrapolated',
      path: name,
      message: `The ${name}, ${format(value)}, lies outside the ladder: ${edge} was the ${word} ${range.axis} read.`,
      figures: { value, [word]: edge },
    });
  }
  const { low, high } = bounds;
  if (low !== undefined && high !== undefined)
    return { quantity: { value, interval: { low, high }, extrapolated }, warnings };
  const known =
    low !== undefined
      ? `at least ${format(low)}, without an upper bound`
      : high !== undefined
        ? `at most ${format(high)}, without a lower bound`
        : 'not bounded at all';
  warnings.push({
    code: 'interval-open',
    path: name,
    message: `At 95 % confidence the data show the ${name} to be ${known}.`,
    figures: { value, ...(low !== undefined && { low }), ...(high !== undefined && { high }) },
  });
  return { quantity: { value, ...(low !== undefined && { atLeast: low }), extrapolated }, warnings };
}

/** A figure that hangs on an end which was never read: what is known of it is its lower bound. */
export function atLeastOnly({ value, interval, atLeast, extrapolated }: FittedQuantity): FittedQuantity {
  const low = interval?.low ?? atLeast;
  return { value, ...(low !== undefined && { atLeast: low }), extrapolated };
}

function format(value: number): string {
  return String(Number(value.toPrecision(4)));
}
