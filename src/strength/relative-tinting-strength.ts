import { createSpectrum, gridOf, type Spectrum, spectrumWarnings } from '../colorimetry/index.js';
import { assertSameGrid } from '../colorimetry/internal.js';
import type { Warning } from '../core/index.js';
import { asReadings } from '../core/internal.js';
import { assertCriterion, type StrengthCriterion } from './criteria/strength-criterion.js';
import { type Bands, FIRST_WAVELENGTH, LAST_WAVELENGTH, spectralBands } from './reduction/bands.js';
import { sideOf } from './reduction/side.js';
import { compareReductions } from './strength-comparison.js';
import { assertComparison, type ComparisonOptions } from './strength-options.js';
import type { StrengthResult } from './strength-result.js';

/** Options of {@link relativeTintingStrength}; `criterion` and `viewing` are always stated. */
export interface StrengthOptions extends ComparisonOptions<Spectrum> {
  readonly criterion: StrengthCriterion;
}

/**
 * Relative tinting strength of a trial reduction against a reference reduction in the same white.
 *
 * The white base's K/S is subtracted wavelength by wavelength, which leaves the K/S q that the colorant adds. The trial
 * at t times its amount then has `F(t) = F white + t q`, and through the surface again a reflectance, XYZ and Lab. Each
 * criterion of {@link STRENGTH_CRITERIA} solves its own equation for the t at which the trial equals the reference; the
 * strength is 100/t %, times the ratio of the amounts. Absorption maximum and Kubelka-Munk sum look at 400 to 700 nm only,
 * since the band edge of a rutile white at shorter wavelengths is no absorption of the colorant.
 *
 * Each side may be one reading or several of the same kind; the figure is that of the mean reflectances. The 95 % interval
 * comes from the scatter of the logarithm of strength: each reading's strength against the means of the other sides,
 * variances `s²/n` added, degrees of freedom by Welch and Satterthwaite. A white read once counts as exact. With one
 * reading per side, `repeatability` gives the interval with the normal quantile; without either there is none. `finding` is
 * `equal-within-margin` only if a margin is stated and holds the interval, and `undecided` without an interval.
 *
 * @param reference - one spectrum or its replicates, at least one
 * @param trial - one spectrum or its replicates, on the same grid
 * @param options - criterion, viewing, and what is known of white, surface, amounts and scatter
 * @returns strength in % with its method, residual difference, interval and warnings. Warning codes: `white-darker`,
 * `negative-absorption`, `absorption-maximum-at-end`, `absorption-saturated`, `absorption-weak`, `near-neutral`,
 * `several-solutions`, `specular-modes-differ`, `range-cut-short`, `no-interval`, `replicates-identical`, `scatter-borrowed`, and those of `spectrumWarnings`
 * @throws TintladderError `no-absorption` where a colorant adds none to its white, naming the wavelength; `no-solution` if
 * no amount of the trial equals the reference; `zero-reflectance`, `no-internal-reflectance` or
 * `reflectance-out-of-range` naming reading and wavelength; `grid-mismatch`, `grid-invalid`, `empty`, `invalid-option`,
 * `unknown-illuminant`, `unknown-observer`, `illuminant-range`
 * @example
 * const tint = (...values) => createSpectrum({ start: 400, step: 20, values, scale: 'percent' });
 * const reference = tint(38, 44, 50, 47, 38, 29, 22, 17, 14, 13, 14, 16, 18, 20, 24, 30);
 * relativeTintingStrength(reference, reference, { criterion: 'absorption-maximum', viewing: D65_10 }).percent // 100
 * @see ISO 18314-2; ISO 787-24; ASTM D387 and D4838; Kubelka & Munk (1931)
 */
export function relativeTintingStrength(
  reference: Spectrum | readonly Spectrum[],
  trial: Spectrum | readonly Spectrum[],
  options: StrengthOptions,
): StrengthResult {
  const { criterion, viewing, white } = options;
  assertCriterion(criterion);
  assertComparison(options);
  const references = asReadings(reference, 'reference');
  const trials = asReadings(trial, 'trial');
  const [first] = references;
  const sideFrom = (name: string, readings: readonly Spectrum[]) => {
    readings.forEach((reading, i) => {
      assertSameGrid(first, reading, readings.length === 1 ? name : `${name}[${i}]`);
    });
    return sideOf(
      name,
      readings.map(({ values }) => values),
    );
  };
  const sides = {
    reference: sideFrom('reference', references),
    trial: sideFrom('trial', trials),
    white: white === undefined ? undefined : sideFrom('white', asReadings(white, 'white')),
  };
  const grid = gridOf(first);
  const bands = spectralBands(viewing, grid);
  const { figure, matched, choice } = compareReductions(sides, bands, criterion, options);
  const { start, step } = grid;
  return {
    ...figure,
    matched: createSpectrum({ start, step, values: matched, scale: 'fraction' }),
    ...(choice.band !== undefined && { wavelength: start + choice.band * step }),
    grid,
    warnings: [
      ...figure.warnings,
      ...noteShortRange(criterion, bands),
      ...noteSpectrum('reference', first),
      ...noteSpectrum('trial', trials[0]),
    ],
  };
}

/** What the first reading of a side says of the others too: features too narrow for the grid, reflectance above 1. */
function noteSpectrum(side: string, spectrum: Spectrum): Warning[] {
  return spectrumWarnings(spectrum).map(({ code, message, path }) => ({
    code,
    message: `In the ${side}: ${message}`,
    path: `${side} at ${path}`,
  }));
}

function noteShortRange(criterion: StrengthCriterion, { first, last, nameOf }: Bands): Warning[] {
  if (criterion !== 'absorption-maximum' && criterion !== 'kubelka-munk-sum') return [];
  const [from, to] = [nameOf(first), nameOf(last)];
  if (Number.parseFloat(from) <= FIRST_WAVELENGTH + 20 && Number.parseFloat(to) >= LAST_WAVELENGTH - 20) return [];
  return [
    {
      code: 'range-cut-short',
      message: `The readings cover ${from} to ${to} of the ${FIRST_WAVELENGTH} to ${LAST_WAVELENGTH} nm that the criterion looks at.`,
      path: `${from} to ${to}`,
    },
  ];
}
