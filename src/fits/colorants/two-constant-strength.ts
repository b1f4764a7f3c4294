import type { Spectrum } from '../../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../../colorimetry/internal.js';
import { TintladderError, type Warning } from '../../core/index.js';
import { assertObject, assertOptions } from '../../core/internal.js';
import { coefficientsOnGrid } from './coefficients-on-grid.js';
import type { ColorantCoefficients } from './colorant-coefficients.js';
import { spectralKOverS } from './spectral-k-over-s.js';

/** Options of {@link twoConstantStrength}. */
export interface TwoConstantOptions {
  /** K and S of the colorant from a ladder in the same white */
  readonly colorant: ColorantCoefficients;
  /**
   * Difference between the two strengths, in % of strength, above which they count as different.
   *
   * @default 1
   */
  readonly notableDifference?: number | undefined;
}

/** Strength by two constants beside that by one. */
export interface TwoConstantStrength {
  readonly kind: 'two-constant-strength';
  readonly version: 1;
  /** Strength of the trial by two-constant theory, reference = 100 */
  readonly percent: number;
  /** The same by single-constant theory, which neglects what the colorant scatters */
  readonly singleConstantPercent: number;
  /** True if the two differ by more than the notable difference */
  readonly differs: boolean;
  /** Where the reference absorbs most, nm */
  readonly wavelength: number;
  /** Amounts of the ladder's colorant that would read as the reference and as the trial, per white */
  readonly effectiveAmounts: { readonly reference: number; readonly trial: number };
  readonly warnings: readonly Warning[];
}

const FIRST_WAVELENGTH = 400;
const LAST_WAVELENGTH = 700;

/**
 * Relative tinting strength at the absorption maximum by two-constant theory, for colorants that scatter notably themselves.
 *
 * Each reduction is read as the amount c of the ladder's colorant that gives its K/S: `c = (F - Kw) / (k - F s)`; the strength is the ratio
 * of the amounts. Where s = 0 this is the single-constant figure. Both are reductions in the same white at the same ratio.
 *
 * @param reference - internal reflectance of the reference reduction
 * @param trial - internal reflectance of the trial reduction, on the same grid
 * @param options - colorant: its coefficients; notableDifference: where the two theories count as different, %
 * @returns both strengths, whether they differ, the wavelength, effective amounts; warning `theories-differ`
 * @throws TintladderError `no-absorption` if the reference absorbs no more than the white; `no-solution` if a reduction absorbs as much as the
 * colorant alone; `grid-mismatch`; `zero-reflectance`; `reflectance-out-of-range`; `invalid-option`; `wrong-type`;
 * `wrong-length`; `not-finite`; what `createSpectrum` throws
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: [R, R], scale: 'fraction' });
 * const tint = (amount) => flat(reflectanceFromKOverS((3 * amount) / (1 + 2 * amount)));
 * const reductions = [0.05, 0.2].map((amount) => ({ amount, spectrum: tint(amount) }));
 * const colorant = fitColorantCoefficients({ white: flat(1), reductions });
 * twoConstantStrength(tint(0.1), tint(0.11), { colorant }).percent // 110.0
 * @see Duncan (1940), Proc. Phys. Soc. 52, 390-401; ISO 18314-2:2023 for strength at the absorption maximum
 */
export function twoConstantStrength(
  reference: Spectrum,
  trial: Spectrum,
  options: TwoConstantOptions,
): TwoConstantStrength {
  assertObject(options, 'options', 'the coefficients of the colorant');
  assertOptions(options, ['colorant', 'notableDifference']);
  const { notableDifference = 1 } = options;
  if (!(typeof notableDifference === 'number' && notableDifference >= 0 && notableDifference < Infinity)) {
    throw new TintladderError('invalid-option', {
      path: 'options.notableDifference',
      received: notableDifference,
      expected: 'a percentage of at least 0',
    });
  }
  const sides = { reference: asSpectrum(reference, 'reference'), trial: asSpectrum(trial, 'trial') };
  assertSameGrid(sides.reference, sides.trial, 'trial');
  const colorant = coefficientsOnGrid(options.colorant, sides.reference, 'options.colorant');
  const { start, step, absorption, scattering, white } = colorant;
  const referenceRatio = spectralKOverS(sides.reference, 'reference');
  const trialRatio = spectralKOverS(sides.trial, 'trial');
  const i = strongestBand(referenceRatio, white, start, step);
  const wavelength = start + i * step;
  const added = { reference: referenceRatio[i] - white[i], trial: trialRatio[i] - white[i] };
  if (!(added.reference > 0)) {
    throw new TintladderError('no-absorption', {
      path: `reference at ${wavelength} nm`,
      received: referenceRatio[i],
      expected: `a K/S above that of the white, ${white[i]}`,
    });
  }
  const amountOf = (ratio: number, side: 'reference' | 'trial') => {
    const room = absorption[i] - ratio * scattering[i];
    if (room > 0) return added[side] / room;
    throw new TintladderError('no-solution', {
      path: `K/S of the ${side} at ${wavelength} nm`,
      received: ratio,
      expected: `a K/S below that of the colorant alone, ${absorption[i] / scattering[i]}`,
    });
  };
  const effectiveAmounts = {
    reference: amountOf(referenceRatio[i], 'reference'),
    trial: amountOf(trialRatio[i], 'trial'),
  };
  const percent = (100 * effectiveAmounts.trial) / effectiveAmounts.reference;
  const singleConstantPercent = (100 * added.trial) / added.reference;
  const differs = Math.abs(percent - singleConstantPercent) > notableDifference;
  const message =
    `Two-constant theory gives ${percent.toFixed(1)} %, single-constant theory ${singleConstantPercent.toFixed(1)} %: ` +
    'the colorant scatters too much for the single constant.';
  return {
    kind: 'two-constant-strength',
    version: 1,
    percent,
    singleConstantPercent,
    differs,
    wavelength,
    effectiveAmounts,
    warnings: differs ? [{ code: 'theories-differ', message }] : [],
  };
}

function strongestBand(ratio: Float64Array, white: readonly number[], start: number, step: number): number {
  let best = -1;
  ratio.forEach((value, i) => {
    const wavelength = start + i * step;
    if (wavelength < FIRST_WAVELENGTH || wavelength > LAST_WAVELENGTH) return;
    if (best < 0 || value - white[i] > ratio[best] - white[best]) best = i;
  });
  if (best >= 0) return best;
  throw new TintladderError('grid-invalid', {
    path: 'reference',
    received: { start, step, count: ratio.length },
    expected: `a grid with readings between ${FIRST_WAVELENGTH} and ${LAST_WAVELENGTH} nm`,
  });
}
