import type { Viewing } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { Surface } from '../kubelka-munk/index.js';
import { assertSurface } from '../kubelka-munk/internal.js';
import type { Amounts } from './amounts.js';

/** What the comparison of two reductions may be told, whether they come as spectra or as Lab. */
export interface ComparisonOptions<Colour> {
  /** Illuminant and observer. */
  readonly viewing: Viewing;
  /** The white base without colorant, one reading or several; without it the white's own K/S counts as zero. */
  readonly white?: Colour | readonly Colour[];
  /** Surface correction; without it measured values are taken as internal ones. */
  readonly surface?: Surface;
  /** Colorant and white in each reduction; without them both hold the same. */
  readonly amounts?: Amounts;
  /**
   * Standard deviation, in %, of the strength that one reading of one film gives, from earlier work; used where a side has
   * one reading.
   */
  readonly repeatability?: number;
  /** Largest difference from 100 %, in %, that counts as equal. */
  readonly margin?: number;
}

/**
 * Refuses options that no comparison can have.
 *
 * @throws TintladderError `invalid-option`
 */
export function assertComparison({ surface, repeatability, margin }: ComparisonOptions<unknown>): void {
  if (surface) assertSurface(surface);
  for (const [name, value] of Object.entries({ repeatability, margin })) {
    if (value !== undefined && !(value > 0 && value < Infinity)) {
      const expected = 'a positive number of percent';
      throw new TintladderError('invalid-option', { path: `options.${name}`, received: value, expected });
    }
  }
}
