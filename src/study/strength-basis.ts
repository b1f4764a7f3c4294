import { meanSpectrum, type Spectrum } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { Measurement } from '../exchange/index.js';
import { relativeTintingStrength, type StrengthResult } from '../strength/index.js';
import { strengthsAgainst } from '../strength/internal.js';
import type { Study } from './study.js';

/** How the readings of a cell become colours, and colours strengths. */
export interface StrengthBasis<Colour> {
  readonly colourOf: (reading: Measurement) => Colour;
  readonly mean: (colours: readonly Colour[]) => Colour;
  /** Strength of one colour against another, over the white where there is one. */
  readonly strength: (reference: Colour, trial: Colour, white: Colour | undefined) => StrengthResult;
  /** The bare figures of many trials against one reference, %: a large study asks for tens of thousands. */
  readonly percents: (reference: Colour, white: Colour | undefined) => (trial: Colour) => number;
  /** The trials brought to the strength of the reference. */
  readonly matched: (reference: Colour, white: Colour | undefined) => (trial: Colour) => Colour;
}

/** Strengths from spectra, by the criterion of the study. */
export function spectralBasis(study: Study): StrengthBasis<Spectrum> {
  const { viewing, strengthCriterion: criterion } = study;
  const surface = study.surface;
  const against = (reference: Spectrum, white: Spectrum | undefined) =>
    strengthsAgainst(reference, white, { criterion, viewing, surface });
  return {
    colourOf: spectrumOf,
    mean: meanSpectrum,
    strength: (reference, trial, white) =>
      relativeTintingStrength(reference, trial, { criterion, viewing, surface, white }),
    percents: (reference, white) => against(reference, white).percentOf,
    matched: (reference, white) => against(reference, white).matchedOf,
  };
}

function spectrumOf({ name, spectrum }: Measurement): Spectrum {
  if (spectrum) return spectrum;
  throw new TintladderError('kinds-mixed', {
    path: `spectrum of measurement ${JSON.stringify(name)}`,
    received: spectrum,
    expected: 'a reflectance spectrum',
  });
}
