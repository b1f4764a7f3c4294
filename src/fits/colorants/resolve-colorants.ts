import type { Spectrum } from '../../colorimetry/index.js';
import { TintladderError, type Warning } from '../../core/index.js';
import {
  assertFiniteArray,
  assertNonEmptyArray,
  assertNumberList,
  assertObject,
  assertOptions,
  assertString,
} from '../../core/internal.js';
import type { Claim, Repeated, Repetition } from '../../evidence/index.js';
import { describeRepetition, highestClaim } from '../../evidence/internal.js';
import { mean } from '../../numeric/internal.js';
import { factorLeastSquares } from './least-squares.js';
import { type RelativeChange, relativeChange } from './relative-change.js';
import { reflectancePerKOverS } from './spectral-k-over-s.js';
import { arePaired, noteScatter, tintArea } from './tint-area.js';

/** A colorant known to be in the tint. */
export interface TintColorant {
  readonly name: string;
  /** K/S that it adds to the white at each wavelength of the readings, for any amount; see `addedKOverS` */
  readonly kOverS: ArrayLike<number>;
}

/** What is known of the tint. */
export interface ResolveOptions {
  readonly colorants: readonly TintColorant[];
  /**
   * Internal reflectance of the white base, whose mean counts as exact; without it its absorption counts as none, and its scattering can't be
   * resolved
   */
  readonly white?: Repeated<Spectrum> | undefined;
}

/** The change of one colorant: of the absorption that it brings into the layer read. */
export interface ResolvedColorant extends RelativeChange {
  readonly name: string;
  /** Amount found in the unrubbed area, in units of the colorant's K/S as given */
  readonly amount: number;
}

/** The change of a tint, resolved into what is in it. */
export interface ResolvedChange {
  readonly kind: 'resolved-change';
  readonly version: 1;
  readonly changes: readonly ResolvedColorant[];
  /** Change of the scattering of the white */
  readonly white: RelativeChange;
  /**
   * False if a change of the white can't be told from a common change of all colorants. Then `changes` holds for an unchanged white, and
   * `white` for unchanged colorants: two readings of the same finding.
   */
  readonly separable: boolean;
  /** What `changes` leaves unexplained of the rubbed area, root mean square in reflectance */
  readonly residualReflectance: number;
  /** The same if only the white changed */
  readonly residualReflectanceOfWhiteAlone: number;
  /** What the changes can speak of: no more than what was made anew */
  readonly claim: Claim;
  readonly repetition: { readonly unrubbed: Repetition; readonly rubbed: Repetition };
  readonly warnings: readonly Warning[];
}

/** Colorants whose spectra are closer to dependent than this can't be told apart at the noise of an instrument. */
const WORST_CONDITION = 1e3;
/** The white's own absorption is all that tells it from the colorants, and is known only roughly: the limit is lower. */
const WORST_CONDITION_WITH_WHITE = 50;

/**
 * Resolves what rubbing did to a tint into the change of each colorant and of the white, by signed least squares on K/S.
 *
 * `F = F(white) + Σ c u` with one amount c for each colorant's K/S u, in both areas; wavelengths are weighted so that an equal error of
 * reflectance counts equally. A change of the white's scattering scales the whole of F: `F (1 + σ) = F(white) + Σ c u`. It differs from
 * a common change of all colorants only by the white's own absorption, so the two can be told apart only with `white` and only where
 * that is large enough; `separable` says so. Every reading is resolved on its own, so that noise that is common to all its wavelengths counts as
 * it should, and averaged over its unit. Intervals are Student's t: of the differences of drawdowns (or weigh-ups, or grinds), whose areas pair
 * by position; of the difference of two means with pooled scatter for spots of one film.
 *
 * @param unrubbed - internal reflectance of the unrubbed area, one reading or several under the name of what was repeated
 * @param rubbed - the same of the rubbed area
 * @param options - colorants with their K/S; white base
 * @returns the relative change of each colorant and of the white, with intervals; whether the two can be told apart; residuals; what was
 * repeated and what that can speak of; warnings `white-not-separable`, `no-interval`, `scatter-borrowed`, `replicates-identical`
 * @throws TintladderError `ill-conditioned` for colorants whose spectra are linearly dependent, or more of them than wavelengths;
 * `no-absorption` for a colorant that the unrubbed area doesn't show; `empty` for no colorant or a level without units; `repetition-unstated`
 * for a bare list; `wrong-length` also for areas with different numbers of drawdowns; `level-misplaced`; `wrong-type`; `invalid-option`;
 * `not-finite`; `grid-mismatch`; `zero-reflectance`; `reflectance-out-of-range`; what `createSpectrum` throws
 * @example
 * const tint = (a, b) => createSpectrum({ start: 400, step: 10, scale: 'fraction',
 *   values: [a + 0.1 * b, a + b, 0.2 * a + b].map((F) => reflectanceFromKOverS(F)) });
 * const colorants = [{ name: 'red', kOverS: [1, 1, 0.2] }, { name: 'blue', kOverS: [0.1, 1, 1] }];
 * resolveColorants(tint(0.2, 0.1), tint(0.2, 0.11), { colorants }).changes[1].relative // 0.100
 * @see Kubelka & Munk (1931); Duncan (1940), Proc. Phys. Soc. 52, 390-401, for the additivity of K
 */
export function resolveColorants(
  unrubbed: Repeated<Spectrum>,
  rubbed: Repeated<Spectrum>,
  options: ResolveOptions,
): ResolvedChange {
  assertObject(options, 'options', 'the colorants of the tint');
  assertOptions(options, ['colorants', 'white']);
  const before = tintArea(unrubbed, 'unrubbed');
  const after = tintArea(rubbed, 'rubbed', before.first);
  const paired = arePaired(before, after);
  const white = options.white === undefined ? undefined : tintArea(options.white, 'options.white', before.first);
  const count = before.first.values.length;
  const { colorants } = options;
  assertColorants(colorants, count);

  const whiteRatio = white?.meanRatio ?? new Float64Array(count);
  const weights = before.meanReflectance.map(reflectancePerKOverS);
  const weigh = (values: ArrayLike<number>) => weights.map((weight, i) => weight * values[i]);
  const added = (ratio: Float64Array) => weigh(ratio.map((value, i) => value - whiteRatio[i]));
  const change = (figureOf: (ratio: Float64Array) => number, unit: number) =>
    relativeChange({ unrubbed: before.figuresOf(figureOf), rubbed: after.figuresOf(figureOf), paired }, unit);

  const units = colorants.map(({ kOverS }) => weigh(kOverS));
  const whole = { before: weigh(before.meanRatio), after: weigh(after.meanRatio) };
  const alone = units.length <= count ? factorLeastSquares(units) : { condition: Infinity, solve: () => [] };
  if (!(alone.condition <= WORST_CONDITION)) {
    throw new TintladderError('ill-conditioned', {
      path: 'options.colorants',
      received: colorants.map(({ name }) => name),
      expected: 'a set of colorants whose K/S spectra are linearly independent',
      hint: 'Leave out a colorant, or give two that look alike as one.',
    });
  }
  const withWhite =
    white && units.length < count ? factorLeastSquares([...units, whole.after.map((value) => -value)]) : undefined;
  const separable = withWhite !== undefined && withWhite.condition <= WORST_CONDITION_WITH_WHITE;
  const solver = separable ? withWhite : alone;
  const solved = (j: number) => (ratio: Float64Array) => solver.solve(added(ratio))[j];

  const changes = colorants.map(({ name }, j) => {
    const amount = mean(before.figuresOf(solved(j)));
    if (!(amount > 0)) {
      throw new TintladderError('no-absorption', {
        path: `options.colorants[${j}]`,
        received: { name, amount },
        expected: 'an amount above 0 in the unrubbed area',
      });
    }
    return { name, amount, ...change(solved(j), amount) };
  });
  // The scattering of a reading relative to the unrubbed mean, if nothing but the white differs.
  const scale = (F: Float64Array) => dot(weigh(F), whole.before) / dot(weigh(F), weigh(F));
  const whiteAlone = change(scale, 1);
  const j = colorants.length;
  const whiteChange = separable ? change(solved(j), 1) : whiteAlone;

  const found = solver.solve(added(after.meanRatio));
  const explained = (i: number) => units.reduce((sum, unit, n) => sum + found[n] * unit[i], weights[i] * whiteRatio[i]);
  const sigma = separable ? found[j] : 0;
  const rest = whole.after.map((value, i) => value - (explained(i) - sigma * value));
  const restOfWhite = whole.after.map((value, i) => value - whole.before[i] / (1 + whiteAlone.relative));
  return {
    kind: 'resolved-change',
    version: 1,
    changes,
    white: whiteChange,
    separable,
    residualReflectance: Math.sqrt(dot(rest, rest) / count),
    residualReflectanceOfWhiteAlone: Math.sqrt(dot(restOfWhite, restOfWhite) / count),
    claim: highestClaim([before.read, after.read]),
    repetition: { unrubbed: describeRepetition(before.read), rubbed: describeRepetition(after.read) },
    warnings: [...(separable ? [] : [WHITE_NOT_SEPARABLE]), ...noteScatter([before, after])],
  };
}

const WHITE_NOT_SEPARABLE: Warning = {
  code: 'white-not-separable',
  message:
    'A change of the white leaves the same spectra as a common, opposite change of all colorants: the changes of the colorants hold for an unchanged white, that of the white for unchanged colorants.',
};

function assertColorants(colorants: readonly TintColorant[], count: number): void {
  assertNonEmptyArray(colorants, 'options.colorants');
  colorants.forEach((colorant, j) => {
    const path = `options.colorants[${j}]`;
    assertObject(colorant, path, 'a colorant with its K/S');
    const { name, kOverS } = colorant;
    assertString(name, `${path}.name`);
    assertNumberList(kOverS, `${path}.kOverS`);
    if (kOverS.length !== count) {
      throw new TintladderError('wrong-length', {
        path: `${path}.kOverS.length`,
        received: kOverS.length,
        expected: `one value for each wavelength, ${count}`,
      });
    }
    assertFiniteArray(kOverS, `${path}.kOverS`);
  });
}

function dot(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * b[i], 0);
}
