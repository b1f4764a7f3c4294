import type { Spectrum } from '../../colorimetry/index.js';
import { assertSameGrid } from '../../colorimetry/internal.js';
import { TintladderError, type Warning } from '../../core/index.js';
import { mean, meanRow, squaresAroundMean, studentQuantile } from '../../numeric/internal.js';
import { factorLeastSquares } from './least-squares.js';
import { reflectancePerKOverS, spectralKOverS } from './spectral-k-over-s.js';

/** A colorant known to be in the tint. */
export interface TintColorant {
  readonly name: string;
  /** K/S that it adds to the white at each wavelength of the readings, for any amount; see `addedKOverS` */
  readonly kOverS: ArrayLike<number>;
}

/** What is known of the tint. */
export interface ResolveOptions {
  readonly colorants: readonly TintColorant[];
  /** Internal reflectance of the white base; without it its absorption counts as none, and its scattering can't be resolved */
  readonly white?: Spectrum | undefined;
}

/** A relative change: 0.08 is 8 % more in the rubbed area. */
export interface RelativeChange {
  readonly relative: number;
  /** 95 % interval; absent where neither side was read twice */
  readonly interval?: { readonly low: number; readonly high: number };
}

/** The change of one colorant: of the absorption that it brings into the layer read. */
export interface ResolvedColorant extends RelativeChange {
  readonly name: string;
  /** Amount found in the unrubbed area, in units of the colorant's K/S as given */
  readonly amount: number;
}

/** The change of a tint, resolved into what is in it. */
export interface ResolvedChange {
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
  readonly readings: { readonly unrubbed: number; readonly rubbed: number };
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
 * that is large enough; `separable` says so. Every reading is resolved on its own, and intervals are Student's t for the difference of two means with pooled
 * scatter: noise that is common to all wavelengths of a reading then counts as it should.
 *
 * @param unrubbed - internal reflectance of the unrubbed area, one reading or several
 * @param rubbed - the same of the rubbed area
 * @param options - colorants with their K/S; white base
 * @returns the relative change of each colorant and of the white, with intervals; whether the two can be told apart; residuals; warnings
 * `white-not-separable`, `no-interval`
 * @throws TintladderError `ill-conditioned` for colorants whose spectra are linearly dependent, or more of them than wavelengths;
 * `no-absorption` for a colorant that the unrubbed area doesn't show; `empty` for a side without readings or no colorant;
 * `wrong-length`; `not-finite`; `grid-mismatch`; `zero-reflectance`; `reflectance-out-of-range`
 * @example
 * const tint = (a, b) => createSpectrum({ start: 400, step: 10, scale: 'fraction',
 *   values: [a + 0.1 * b, a + b, 0.2 * a + b].map((F) => reflectanceFromKOverS(F)) });
 * const colorants = [{ name: 'red', kOverS: [1, 1, 0.2] }, { name: 'blue', kOverS: [0.1, 1, 1] }];
 * resolveColorants(tint(0.2, 0.1), tint(0.2, 0.11), { colorants }).changes[1].relative // 0.100
 * @see Kubelka & Munk (1931); Duncan (1940), Proc. Phys. Soc. 52, 390-401, for the additivity of K
 */
export function resolveColorants(
  unrubbed: Spectrum | readonly Spectrum[],
  rubbed: Spectrum | readonly Spectrum[],
  { colorants, white }: ResolveOptions,
): ResolvedChange {
  const before = readingsOf(unrubbed, 'unrubbed');
  const after = readingsOf(rubbed, 'rubbed');
  const [first] = before;
  [...before, ...after].forEach((spectrum, i) => {
    assertSameGrid(first, spectrum, i < before.length ? `unrubbed[${i}]` : `rubbed[${i - before.length}]`);
  });
  if (white) assertSameGrid(first, white, 'options.white');
  assertColorants(colorants, first.values.length);

  const count = first.values.length;
  const ratios = {
    before: before.map((spectrum, i) => spectralKOverS(spectrum, `unrubbed[${i}]`)),
    after: after.map((spectrum, i) => spectralKOverS(spectrum, `rubbed[${i}]`)),
  };
  const whiteRatio = white ? spectralKOverS(white, 'options.white') : new Float64Array(count);
  const meanReflectance = meanRow(before.map(({ values }) => values));
  const weights = meanReflectance.map(reflectancePerKOverS);
  const weigh = (values: ArrayLike<number>) => weights.map((weight, i) => weight * values[i]);
  const added = (ratio: Float64Array) => weigh(ratio.map((value, i) => value - whiteRatio[i]));

  const units = colorants.map(({ kOverS }) => weigh(kOverS));
  const whole = { before: weigh(meanRow(ratios.before)), after: weigh(meanRow(ratios.after)) };
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
  const amounts = {
    before: ratios.before.map((F) => solver.solve(added(F))),
    after: ratios.after.map((F) => solver.solve(added(F))),
  };

  const changes = colorants.map(({ name }, j) => {
    const side = { before: amounts.before.map((c) => c[j]), after: amounts.after.map((c) => c[j]) };
    const amount = mean(side.before);
    if (!(amount > 0)) {
      throw new TintladderError('no-absorption', {
        path: `options.colorants[${j}]`,
        received: { name, amount },
        expected: 'an amount above 0 in the unrubbed area',
      });
    }
    return { name, amount, ...changeOf(side.before, side.after, amount) };
  });
  // The scattering of a reading relative to the unrubbed mean, if nothing but the white differs.
  const scale = (F: Float64Array) => dot(weigh(F), whole.before) / dot(weigh(F), weigh(F));
  const whiteAlone = changeOf(ratios.before.map(scale), ratios.after.map(scale), 1);
  const j = colorants.length;
  const whiteChange = separable
    ? changeOf(
        amounts.before.map((c) => c[j]),
        amounts.after.map((c) => c[j]),
        1,
      )
    : whiteAlone;

  const found = solver.solve(added(meanRow(ratios.after)));
  const explained = (i: number) => units.reduce((sum, unit, n) => sum + found[n] * unit[i], weights[i] * whiteRatio[i]);
  const sigma = separable ? found[j] : 0;
  const rest = whole.after.map((value, i) => value - (explained(i) - sigma * value));
  const restOfWhite = whole.after.map((value, i) => value - whole.before[i] / (1 + whiteAlone.relative));
  return {
    changes,
    white: whiteChange,
    separable,
    residualReflectance: Math.sqrt(dot(rest, rest) / count),
    residualReflectanceOfWhiteAlone: Math.sqrt(dot(restOfWhite, restOfWhite) / count),
    readings: { unrubbed: before.length, rubbed: after.length },
    warnings: warningsFor(separable, before.length + after.length > 2),
  };
}

function readingsOf(side: Spectrum | readonly Spectrum[], path: string): readonly Spectrum[] {
  const readings: readonly Spectrum[] =
    'values' in side && !Array.isArray(side) ? [side as Spectrum] : (side as readonly Spectrum[]);
  if (readings.length > 0) return readings;
  throw new TintladderError('empty', { path, received: readings, expected: 'at least one reading' });
}

function assertColorants(colorants: readonly TintColorant[], count: number): void {
  if (colorants.length === 0) {
    throw new TintladderError('empty', {
      path: 'options.colorants',
      received: colorants,
      expected: 'at least one colorant',
    });
  }
  colorants.forEach(({ kOverS }, j) => {
    const path = `options.colorants[${j}].kOverS`;
    if (kOverS.length !== count) {
      throw new TintladderError('wrong-length', {
        path: `${path}.length`,
        received: kOverS.length,
        expected: `one value for each wavelength, ${count}`,
      });
    }
    const bad = Array.from(kOverS).findIndex((value) => !Number.isFinite(value));
    if (bad < 0) return;
    throw new TintladderError('not-finite', {
      path: `${path}[${bad}]`,
      received: kOverS[bad],
      expected: 'a finite number',
    });
  });
}

/** The change of a mean relative to `unit`, with its interval by pooled scatter. */
function changeOf(before: readonly number[], after: readonly number[], unit: number): RelativeChange {
  const relative = (mean(after) - mean(before)) / unit;
  const degreesOfFreedom = before.length + after.length - 2;
  if (degreesOfFreedom < 1) return { relative };
  const variance = (squaresAroundMean(before) + squaresAroundMean(after)) / degreesOfFreedom;
  const error = Math.sqrt(variance * (1 / before.length + 1 / after.length)) / unit;
  const reach = studentQuantile(0.975, degreesOfFreedom) * error;
  return { relative, interval: { low: relative - reach, high: relative + reach } };
}

function warningsFor(separable: boolean, replicated: boolean): Warning[] {
  const warnings: Warning[] = [];
  if (!separable) {
    warnings.push({
      code: 'white-not-separable',
      message:
        'A change of the white leaves the same spectra as a common, opposite change of all colorants: the changes of the colorants hold for an unchanged white, that of the white for unchanged colorants.',
    });
  }
  if (!replicated) {
    warnings.push({ code: 'no-interval', message: 'Each area was read once, so that the changes have no interval.' });
  }
  return warnings;
}

function dot(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * b[i], 0);
}
