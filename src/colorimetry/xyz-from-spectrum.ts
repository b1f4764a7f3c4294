import { asSpectrum, gridOf, type Spectrum } from './spectrum.js';
import type { Viewing } from './viewing.js';
import { summationWeights, type WeightingTable, weightingTable } from './weighting.js';
import { type SummationOptions, wideStepOf } from './wide-step.js';

/** CIE tristimulus values; Y of the white is 100. */
export interface Xyz {
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}

/**
 * Tristimulus values of a reflectance spectrum.
 *
 * @param spectrum - reflectance factor, any grid that {@link createSpectrum} accepts
 * @param viewing - illuminant and observer
 * @param options - how readings more than 10 nm apart are interpolated
 * @returns X, Y, Z with Y = 100 for the perfect reflecting diffuser
 * @throws TintladderError `unknown-illuminant`, `unknown-observer`, `illuminant-range`; `invalid-option`
 * @example xyzFromSpectrum(createSpectrum({ start: 400, step: 10, values: Array(31).fill(0.5), scale: 'fraction' }), D65_10).Y // 50
 * @see CIE 015:2018, 7.1; ASTM E308 with weights as in ASTM E2022
 */
export function xyzFromSpectrum(spectrum: Spectrum, viewing: Viewing, options: SummationOptions = {}): Xyz {
  const read = asSpectrum(spectrum, 'spectrum');
  return weighted(read.values, 0, weightingTable(viewing, gridOf(read), wideStepOf(options)));
}

/** The weighted sums of one spectrum among many, unchecked: the one kernel of the single and the batch form. */
export function weighted(values: Float64Array, offset: number, { x, y, z }: WeightingTable): Xyz {
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let i = 0; i < x.length; i++) {
    const value = values[offset + i];
    X += x[i] * value;
    Y += y[i] * value;
    Z += z[i] * value;
  }
  return { X, Y, Z };
}

/**
 * Tristimulus values of the perfect reflecting diffuser: the sum of the weights that {@link xyzFromSpectrum} uses, which is the
 * same on every grid.
 *
 * @param viewing - illuminant and observer
 * @returns X, Y, Z with Y = 100
 * @throws TintladderError `unknown-illuminant`, `unknown-observer`
 * @example whitePoint(D65_10).Y // 100
 * @see CIE 015:2018, 7.1
 */
export function whitePoint(viewing: Viewing): Xyz {
  return summationWeights(viewing).white;
}
