import type { SurfaceCorrection } from './surface.js';

/** Measured reflectances of one wavelength; the bare fields where they were read. */
export interface MeasuredBand {
  readonly overBlack: number;
  readonly overWhite: number;
  readonly substrates?: { readonly black: number; readonly white: number };
}

/** What is known about the readings beside themselves. */
export interface BandConditions {
  readonly surface: SurfaceCorrection;
  /** Standard deviation of one measured reflectance */
  readonly noise: number;
  /** What K and S are divided by */
  readonly thickness: number;
}
