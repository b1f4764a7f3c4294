import type { Viewing } from '../colorimetry/index.js';
import { assertViewing } from '../colorimetry/internal.js';
import { TintladderError } from '../core/index.js';
import { assertObject, assertOneOf, assertOptions } from '../core/internal.js';
import { CLAIMS, type Claim, type Repeated } from '../evidence/index.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { assertSurface } from '../kubelka-munk/internal.js';
import type { Amounts } from './amounts.js';

/** What the comparison of two reductions may be told, whether they come as spectra or as Lab. */
export interface ComparisonOptions<Colour> {
  /** Illuminant and observer. */
  readonly viewing: Viewing;
  /** Surface correction, or `'none'` for readings that are taken as internal reflectance as they stand. */
  readonly surface: SurfaceCorrection;
  /** The white base without colorant, one reading or repeated ones; without it the white's own K/S counts as zero. */
  readonly white?: Repeated<Colour> | undefined;
  /** Colorant and white in each reduction; without them both hold the same. */
  readonly amounts?: Amounts | undefined;
  /**
   * Standard deviation, in %, of the strength that one weigh-up gives, with its drawdown and its reading, from earlier work. It carries
   * a claim about the mill base where a side was weighed up once, and is a floor elsewhere.
   */
  readonly repeatability?: number | undefined;
  /**
   * What is to be claimed. Left out, the highest that the design carries, but nothing is found about a film: its finding must be asked for.
   */
  readonly claim?: Claim | undefined;
  /** Largest difference from 100 %, in %, that counts as equal. */
  readonly margin?: number | undefined;
}

const OPTIONS = ['viewing', 'surface', 'white', 'amounts', 'repeatability', 'margin', 'claim'];

/**
 * Refuses options that no comparison can have.
 *
 * @param more - options that the function takes beside those of every comparison
 * @throws TintladderError `invalid-option`, `wrong-type`, `unknown-illuminant`, `unknown-observer`
 */
export function assertComparison(options: ComparisonOptions<unknown>, more: readonly string[]): void {
  assertObject(options, 'options');
  assertOptions(options, [...OPTIONS, ...more]);
  const { viewing, surface, amounts, repeatability, margin, claim } = options;
  assertViewing(viewing, 'options.viewing');
  if (amounts !== undefined) {
    assertObject(amounts, 'options.amounts');
    assertObject(amounts.reference, 'options.amounts.reference');
    assertObject(amounts.trial, 'options.amounts.trial');
  }
  if (claim !== undefined) assertOneOf(claim, CLAIMS, 'options.claim');
  assertSurface(surface, 'options.surface');
  for (const [name, value] of Object.entries({ repeatability, margin })) {
    if (value !== undefined && !(typeof value === 'number' && value > 0 && value < Infinity)) {
      const expected = 'a positive number of percent';
      throw new TintladderError('invalid-option', { path: `options.${name}`, received: value, expected });
    }
  }
}
