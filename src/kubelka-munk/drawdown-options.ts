import { TintladderError } from '../core/index.js';
import type { SurfaceCorrection } from './surface.js';

/** What must be known to evaluate a drawdown over a chart. */
export interface DrawdownOptions {
  /** The surface of the film, or `'none'` for readings that are internal reflectances already */
  readonly surface: SurfaceCorrection;
  /**
   * Standard deviation of one measured reflectance, a fraction: of the reading and its place on the film, not of the instrument alone.
   *
   * @default 0.001
   */
  readonly noise?: number | undefined;
}

/** About what a spectrophotometer repeats on another place of a good film (common practice, no source). */
const USUAL_NOISE = 0.001;

/**
 * The stated noise, or the usual one.
 *
 * @throws TintladderError `invalid-option`
 */
export function noiseOf({ noise = USUAL_NOISE }: DrawdownOptions): number {
  if (typeof noise === 'number' && noise >= 0 && noise < 1) return noise;
  const expected = 'a standard deviation of reflectance, a fraction from 0 to below 1';
  throw new TintladderError('invalid-option', { path: 'options.noise', received: noise, expected });
}
