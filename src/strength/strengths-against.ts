import { createSpectrum, gridOf, type Spectrum, type Viewing } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { maximumOf, noAbsorption } from './criteria/absorption-maximum.js';
import { solveCriterion } from './criteria/solve.js';
import type { StrengthCriterion } from './criteria/strength-criterion.js';
import { spectralBands } from './reduction/bands.js';
import { absorptionOf, addedAbsorption } from './reduction/colorant-absorption.js';
import { type Dilution, dilutedReflectances } from './reduction/dilution.js';

/** Strengths of single trials against one reference in one white. */
export interface StrengthsAgainst {
  /** As `percent` of `relativeTintingStrength`. */
  readonly percentOf: (trial: Spectrum) => number;
  /** As `matched` of `relativeTintingStrength`. */
  readonly matchedOf: (trial: Spectrum) => Spectrum;
}

/**
 * The bare figures of `relativeTintingStrength` for many single trials: what reference and white give is computed once, and nothing is
 * noted, compared in colour or said in words.
 *
 * @param reference - one spectrum, as the white
 * @param options - checked already
 * @throws TintladderError what `relativeTintingStrength` throws for the readings: of reference and white at once, of a trial when it is asked for
 */
export function strengthsAgainst(
  reference: Spectrum,
  white: Spectrum | undefined,
  options: { readonly criterion: StrengthCriterion; readonly viewing: Viewing; readonly surface: SurfaceCorrection },
): StrengthsAgainst {
  const { criterion, viewing, surface } = options;
  const first = asSpectrum(reference, 'reference');
  const grid = gridOf(first);
  const bands = spectralBands(viewing, grid);
  const absorptionsOf = (reading: Spectrum, path: string) => {
    const spectrum = asSpectrum(reading, path);
    assertSameGrid(first, spectrum, path);
    return absorptionOf(spectrum.values, surface, bands, path);
  };
  const whole = absorptionsOf(first, 'reference');
  const ofWhite = white ? absorptionsOf(white, 'white') : new Float64Array(bands.count);
  const added = addedAbsorption(whole, ofWhite);
  const blank = { bands, surface, white: ofWhite, reference: added, trial: added, measuredReference: first.values };
  const strongest = maximumOf(blank);
  if (!(added[strongest] > 0)) throw noAbsorption(`reference at ${bands.nameOf(strongest)}`, added[strongest]);
  const solve = (trial: Spectrum) => {
    const dilution: Dilution = { ...blank, trial: addedAbsorption(absorptionsOf(trial, 'trial'), ofWhite) };
    return { dilution, factor: solveCriterion(criterion, dilution).factor };
  };
  return {
    percentOf: (trial) => 100 / solve(trial).factor,
    matchedOf: (trial) => {
      const { dilution, factor } = solve(trial);
      const { start, step } = grid;
      return createSpectrum({ start, step, values: dilutedReflectances(dilution, factor), scale: 'fraction' });
    },
  };
}
