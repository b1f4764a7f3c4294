import type { Dilution } from '../reduction/dilution.js';
import { assertReachable } from '../reduction/dilution.js';
import { maximumOf, noAbsorption } from './absorption-maximum.js';
import { noteSensitivity } from './sensitivity.js';
import type { Solution } from './solution.js';

/**
 * The sum of the added K/S of trial and reference made equal over the readings from 400 to 700 nm.
 *
 * @throws TintladderError `no-absorption` where reference or trial adds none in all; `no-solution`
 * @see common practice, no source: ISO 18314-2 has the weighted sum only
 */
export function solveKubelkaMunkSum(dilution: Dilution): Solution {
  const { first, last } = dilution.bands;
  return solveSum(dilution, (band) => (band >= first && band <= last ? 1 : 0));
}

/**
 * The sum of the added K/S of trial and reference made equal, each reading weighted with the illuminant times
 * `x̄ + ȳ + z̄`.
 *
 * @throws TintladderError `no-absorption` where reference or trial adds none in all; `no-solution`
 * @see ISO 18314-2:2023 for the weighted K/S sum
 */
export function solveWeightedSum(dilution: Dilution): Solution {
  const { x, y, z } = dilution.bands;
  return solveSum(dilution, (band) => x[band] + y[band] + z[band]);
}

function solveSum(dilution: Dilution, weightOf: (band: number) => number): Solution {
  const sumOf = (added: Float64Array) => added.reduce((sum, ratio, band) => sum + weightOf(band) * ratio, 0);
  const reference = sumOf(dilution.reference);
  const trial = sumOf(dilution.trial);
  if (!(reference > 0)) throw noAbsorption('weighted sum of the reference', reference);
  if (!(trial > 0)) throw noAbsorption('weighted sum of the trial', trial);
  const factor = reference / trial;
  assertReachable(dilution, factor);
  return { factor, choice: {}, warnings: noteSensitivity(dilution, maximumOf(dilution)) };
}
