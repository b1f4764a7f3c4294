import { type Lab, xyzFromLab } from '../colorimetry/index.js';
import { assertLab } from '../colorimetry/internal.js';
import type { Repeated } from '../evidence/index.js';
import { readRepeated } from '../evidence/internal.js';
import { assertCriterion, type StrengthCriterion } from './criteria/strength-criterion.js';
import { type Bands, tristimulusBands } from './reduction/bands.js';
import { labOf } from './reduction/dilution.js';
import { sideOf } from './reduction/side.js';
import { compareReductions } from './strength-comparison.js';
import { assertComparison, type ComparisonOptions } from './strength-options.js';
import type { StrengthFromLabResult } from './strength-result.js';

/** Options of {@link relativeTintingStrengthFromLab}. */
export interface StrengthFromLabOptions extends ComparisonOptions<Lab> {
  /** @default 'absorption-maximum' */
  readonly criterion?: StrengthCriterion | undefined;
}

/**
 * Relative tinting strength when only CIELAB values are at hand: an approximation.
 *
 * X, Y and Z relative to the white point are taken as reflectances of three broad bands, and everything else is done as for
 * spectra: the absorption maximum is the band in which the reference's colorant absorbs most, the sums run over three bands.
 * A broad band also holds light that the colorant hardly absorbs, so the figure is too close to 100 %, by an amount that
 * depends on hue and depth; `issues/0001-strength-from-lab.md` has the errors over simulated pigments.
 *
 * @param reference - CIELAB under `viewing`, one reading or repeated ones: `{ weighing: [a, b, c] }`
 * @param trial - the same of the trial
 * @param options - viewing, surface, and what is known of white, amounts and scatter
 * @returns strength in %, flagged `approximate`, with `tristimulus` naming the band where one was chosen
 * @throws TintladderError as `relativeTintingStrength`, naming X, Y or Z in the place of a wavelength; `not-finite`
 * @example
 * const reference = { L: 60, a: -10, b: -35 };
 * relativeTintingStrengthFromLab(reference, reference, { viewing: D65_10, surface: 'none' }).percent // 100
 * @see Kubelka & Munk (1931); the use of broad bands is common practice, no source
 */
export function relativeTintingStrengthFromLab(
  reference: Repeated<Lab>,
  trial: Repeated<Lab>,
  options: StrengthFromLabOptions,
): StrengthFromLabResult {
  assertComparison(options, ['criterion']);
  const { criterion = 'absorption-maximum', viewing, white } = options;
  assertCriterion(criterion);
  const bands = tristimulusBands(viewing);
  const sideFrom = (name: string, given: Repeated<Lab>) =>
    sideOf(name, readRepeated(given, name), ({ reading, path }) => {
      assertLab(reading, path);
      return reflectancesOf(reading, bands);
    });
  const sides = {
    reference: sideFrom('reference', reference),
    trial: sideFrom('trial', trial),
    white: white === undefined ? undefined : sideFrom('white', white),
  };
  const { figure, matched, choice } = compareReductions(sides, bands, criterion, options);
  return {
    ...figure,
    kind: 'strength-from-lab',
    ...(choice.band !== undefined && { tristimulus: (['X', 'Y', 'Z'] as const)[choice.band] }),
    approximate: true,
    matched: labOf(bands, matched),
  };
}

function reflectancesOf(lab: Lab, { white }: Bands): Float64Array {
  const { X, Y, Z } = xyzFromLab(lab, white);
  return Float64Array.of(X / white.X, Y / white.Y, Z / white.Z);
}
