import { gridOf, type Spectrum } from './spectrum.js';
import type { Viewing } from './viewing.js';
import { summationWeights, weightingTable } from './weighting.js';

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
 * @returns X, Y, Z with Y = 100 for the perfect reflecting diffuser
 * @throws TintladderError `unknown-illuminant`, `unknown-observer`, `illuminant-range`
 * @example tristimulus(createSpectrum({ start: 400, interval: 10, values: Array(31).fill(0.5), scale: 'fraction' }), D65_10).Y // 50
 * @see CIE 015:2018, 7.1; ASTM E308 with weights as in ASTM E2022
 */
export function tristimulus(spectrum: Spectrum, viewing: Viewing): Xyz {
  const { x, y, z } = weightingTable(viewing, gridOf(spectrum));
  const { values } = spectrum;
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let i = 0; i < values.length; i++) {
    X += x[i] * values[i];
    Y += y[i] * values[i];
    Z += z[i] * values[i];
  }
  return { X, Y, Z };
}

/**
 * Tristimulus values of the perfect reflecting diffuser: the sum of the weights that {@link tristimulus} uses, which is the
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
