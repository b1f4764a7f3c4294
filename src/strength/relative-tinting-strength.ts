import { createSpectrum, gridOf, type Spectrum, spectrumWarnings } from '../colorimetry/index.js';
import { assertSameGrid } from '../colorimetry/internal.js';
import type { Warning } from '../core/index.js';
import type { Repeated } from '../evidence/index.js';
import { type ReadRepeated, readRepeated } from '../evidence/internal.js';
import { conditionsOnSurface } from '../kubelka-munk/internal.js';
import { assertCriterion, type StrengthCriterion } from './criteria/strength-criterion.js';
import { type Bands, FIRST_WAVELENGTH, LAST_WAVELENGTH, spectralBands } from './reduction/bands.js';
import { sideOf } from './reduction/side.js';
import { compareReductions } from './strength-comparison.js';
import { assertComparison, type ComparisonOptions } from './strength-options.js';
import { type StrengthReading, spectrumOf } from './strength-reading.js';
import type { StrengthResult } from './strength-result.js';

/** Options of {@link relativeTintingStrength}; `criterion`, `viewing` and `surface` are always stated. */
export interface StrengthOptions<Criterion extends StrengthCriterion = StrengthCriterion>
  extends ComparisonOptions<StrengthReading> {
  readonly criterion: Criterion;
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
 * Each side is one reading, or readings under the name of what was repeated: `{ weighing: [a, b, c] }`, and deeper
 * `{ weighing: [{ spot: [a, b] }, { spot: [c] }] }`. The figure is that of the mean reflectances. The 95 % interval comes from the
 * scatter of the logarithm of strength between the units of the outermost level that was repeated: each reading's strength against
 * the means of the other sides, averaged within its unit, variances `s²/n` added, degrees of freedom by Welch and Satterthwaite.
 * `claim` says what that interval speaks of: spots and drawdowns carry a claim about this film only. A white read once counts as
 * exact. Where a side was weighed up once, `repeatability` gives the interval with the normal quantile; elsewhere it is a floor.
 * `finding` is `undecided` without an interval and where the design carries no claim above this film, unless `claim: 'film'` asks
 * for that; it is `equal-within-margin` only if a margin is stated and holds the interval.
 *
 * Readings that carry their conditions, such as measurements from a file, are compared by them over all sides: specular mode or geometry
 * stated and different, from each other or from `surface`, are a fault; another instrument, session or band-pass correction is a warning, as is
 * once a condition that only some state. A bare spectrum states nothing.
 *
 * @param reference - one spectrum, or a reading that holds one, or repeated ones
 * @param trial - the same of the trial, on the same grid
 * @param options - criterion, viewing, surface, and what is known of white, amounts and scatter
 * @returns strength in % with its method, claim and statement, residual difference, interval and warnings. Warning codes: `white-darker`,
 * `negative-absorption`, `absorption-maximum-at-end`, `absorption-saturated`, `absorption-weak`, `near-neutral`,
 * `several-solutions`, `specular-modes-differ`, `range-cut-short`, `no-interval`, `replicates-identical`, `scatter-borrowed`,
 * `condition-not-stated`, `instruments-differ`, `sessions-differ`, `band-passes-differ`, and those of `spectrumWarnings`
 * @throws TintladderError `no-absorption` where a colorant adds none to its white, naming the wavelength; `no-solution` if
 * no amount of the trial equals the reference; `zero-reflectance`, `no-internal-reflectance` or
 * `reflectance-out-of-range` naming reading and wavelength; `repetition-unstated` for a bare list; `level-misplaced`, `grid-mismatch`, `grid-invalid`, `empty`,
 * `conditions-mismatch` naming reading and condition; `kinds-mixed` for a reading without a spectrum; `invalid-option`,
 * `unknown-illuminant`, `unknown-observer`, `illuminant-range`
 * @example
 * const tint = (...values) => createSpectrum({ start: 400, step: 20, values, scale: 'percent' });
 * const reference = tint(38, 44, 50, 47, 38, 29, 22, 17, 14, 13, 14, 16, 18, 20, 24, 30);
 * const options = { criterion: 'absorption-maximum', viewing: D65_10, surface: 'none' };
 * relativeTintingStrength(reference, reference, options).percent // 100
 * @example
 * const tint = (amount) => reflectanceFromKOverS(amount);
 * const film = (amount) => createSpectrum({ start: 400, step: 20, values: [1, 2, 3, 1].map((k) => tint(k * amount)), scale: 'fraction' });
 * const options = { criterion: 'absorption-maximum', viewing: D65_10, surface: 'none' };
 * relativeTintingStrength({ spot: [film(0.1), film(0.102)] }, { spot: [film(0.12), film(0.121)] }, options).claim // 'film'
 * @see `STRENGTH_CRITERIA` for the source of each criterion; ASTM D387 and D4838; Kubelka & Munk (1931)
 */
export function relativeTintingStrength<Criterion extends StrengthCriterion>(
  reference: Repeated<StrengthReading>,
  trial: Repeated<StrengthReading>,
  options: StrengthOptions<Criterion>,
): StrengthResult<Criterion>;
export function relativeTintingStrength(
  reference: Repeated<StrengthReading>,
  trial: Repeated<StrengthReading>,
  options: StrengthOptions,
): StrengthResult {
  assertComparison(options, ['criterion']);
  const { criterion, viewing, white } = options;
  assertCriterion(criterion);
  const given = {
    reference: readRepeated(reference, 'reference'),
    trial: readRepeated(trial, 'trial'),
    white: white === undefined ? undefined : readRepeated(white, 'white'),
  };
  const firstOf = ({ readings }: ReadRepeated<StrengthReading>) => spectrumOf(readings[0]);
  const first = firstOf(given.reference);
  const sideFrom = (name: string, read: ReadRepeated<StrengthReading>) =>
    sideOf(name, read, (placed) => {
      const spectrum = spectrumOf(placed);
      assertSameGrid(first, spectrum, placed.path);
      return spectrum.values;
    });
  const sides = {
    reference: sideFrom('reference', given.reference),
    trial: sideFrom('trial', given.trial),
    white: given.white && sideFrom('white', given.white),
  };
  const readings = [given.reference, given.trial, given.white].flatMap((side) => side?.readings ?? []);
  const conditions = conditionsOnSurface(readings, options.surface);
  const grid = gridOf(first);
  const bands = spectralBands(viewing, grid);
  const { figure, matched, choice } = compareReductions(sides, bands, criterion, options);
  const { start, step } = grid;
  return {
    ...figure,
    kind: 'strength',
    approximate: false,
    matched: createSpectrum({ start, step, values: matched, scale: 'fraction' }),
    ...(choice.band !== undefined && { wavelength: start + choice.band * step }),
    grid,
    warnings: [
      ...figure.warnings,
      ...conditions.warnings,
      ...noteShortRange(criterion, bands),
      ...noteSpectrum('reference', first),
      ...noteSpectrum('trial', firstOf(given.trial)),
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
