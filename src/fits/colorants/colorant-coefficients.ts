import type { Spectrum } from '../../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../../colorimetry/internal.js';
import { TintladderError, type Warning } from '../../core/index.js';
import { assertArray, assertObject, assertOptions } from '../../core/internal.js';
import { bronzingWarnings } from '../../kubelka-munk/index.js';
import { opaqueReflectance } from '../../kubelka-munk/internal.js';
import { factorLeastSquares } from './least-squares.js';
import { reflectancePerKOverS, spectralKOverS } from './spectral-k-over-s.js';

/** One reduction of a colorant in white. */
export interface Reduction {
  /** Colorant per white, in any one unit of mass or volume, > 0 */
  readonly amount: number;
  /** Internal reflectance of the opaque layer */
  readonly spectrum: Spectrum;
}

/** The readings from which K and S of a colorant follow: internal reflectances of opaque layers, all on one grid. */
export interface ColorantLadder {
  readonly white: Spectrum;
  readonly reductions: readonly Reduction[];
  /** The colorant alone, without white */
  readonly masstone?: Spectrum | undefined;
}

/** K and S of a colorant relative to the scattering of its white (S of the white = 1), at each wavelength. */
export interface ColorantCoefficients {
  readonly kind: 'colorant-coefficients';
  readonly version: 1;
  readonly start: number;
  readonly step: number;
  /** K per unit amount of colorant */
  readonly absorption: readonly number[];
  /** S per unit amount of colorant */
  readonly scattering: readonly number[];
  /** K/S of the white, which is its K */
  readonly white: readonly number[];
  /** Amounts of the reductions that the ladder had, ascending; between and beyond them the coefficients are extrapolated */
  readonly amounts: readonly number[];
  /** Root mean square difference in reflectance between readings and fit, over all steps and wavelengths */
  readonly residual: number;
  readonly warnings: readonly Warning[];
}

/** A condition number above this would turn a reading error of 0.0001 into K and S that mean nothing. */
const WORST_CONDITION = 1e4;
/** Rounds of reweighting; the weights depend on S only weakly and settle in four or five. */
const ROUNDS = 8;

/**
 * Two-constant coefficients of a colorant from a ladder of reductions in white, by least squares at each wavelength.
 *
 * A mixture has `K/S = (Kw + c k) / (1 + c s)` with S of the white = 1. Multiplied out this is linear in k and s; the rows are weighted
 * so that an equal error of reflectance counts equally. A k or s that comes out negative is refitted as 0, which a warning says.
 *
 * @param ladder - white, reductions with their amounts, and the masstone where there is one
 * @returns k and s at each wavelength, the residual in reflectance, warnings `negative-scattering`, `negative-absorption`,
 * `bronzing`
 * @throws TintladderError `too-few-points` for fewer than two different steps; `ill-conditioned` naming the wavelength where the steps
 * look alike (add the masstone or a stronger reduction); `out-of-range` for an amount that is not positive; `grid-mismatch`;
 * `zero-reflectance`; `reflectance-out-of-range`; `wrong-type`; `invalid-option` for a reading that a ladder has not; what `createSpectrum` throws
 * @example
 * const flat = (R) => createSpectrum({ start: 400, step: 10, values: [R, R], scale: 'fraction' });
 * const reduction = (amount) => ({ amount, spectrum: flat(reflectanceFromKOverS((3 * amount) / (1 + 2 * amount))) });
 * fitColorantCoefficients({ white: flat(1), reductions: [reduction(0.05), reduction(0.2)] }).scattering[0] // 2.00
 * @see Duncan (1940), Proc. Phys. Soc. 52, 390-401, for the additivity of K and S; Judd & Wyszecki, Color in Business, Science and
 * Industry, on two-constant theory
 */
export function fitColorantCoefficients(ladder: ColorantLadder): ColorantCoefficients {
  const { white, reductions, masstone } = readLadder(ladder);
  const different = new Set(reductions.map(({ amount }) => amount)).size + (masstone ? 1 : 0);
  if (reductions.length === 0 || different < 2) {
    throw new TintladderError('too-few-points', {
      path: 'ladder.reductions',
      received: different,
      expected: 'at least two different amounts, one of which may be a masstone',
    });
  }
  const { start, step } = white;
  const whiteRatio = spectralKOverS(white, 'ladder.white');
  const steps = reductions.map(({ amount, spectrum }, i) => ({
    amount,
    ratio: spectralKOverS(spectrum, `ladder.reductions[${i}].spectrum`),
    values: spectrum.values,
  }));
  if (masstone) {
    steps.push({ amount: Infinity, ratio: spectralKOverS(masstone, 'ladder.masstone'), values: masstone.values });
  }
  const absorption = new Float64Array(white.values.length);
  const scattering = new Float64Array(white.values.length);
  const negative: Record<'absorption' | 'scattering', string[]> = { absorption: [], scattering: [] };
  let squares = 0;
  for (let i = 0; i < absorption.length; i++) {
    const path = `${start + i * step} nm`;
    const readings = steps.map((step) => ({
      amount: step.amount,
      ratio: step.ratio[i],
      sensitivity: reflectancePerKOverS(step.values[i]),
    }));
    const found = fitBand(readings, whiteRatio[i], path);
    absorption[i] = found.k;
    scattering[i] = found.s;
    if (found.negative) negative[found.negative].push(path);
    for (const { amount, ratio, sensitivity } of readings) {
      const miss = sensitivity * (mixtureRatio(whiteRatio[i], amount, found.k, found.s) - ratio);
      // A colorant that neither absorbs nor scatters has no masstone: such a fit misses the whole reading.
      squares += Number.isFinite(miss) ? miss ** 2 : opaqueReflectance(ratio) ** 2;
    }
  }
  const amounts = [...new Set(reductions.map(({ amount }) => amount))].sort((a, b) => a - b);
  const residual = Math.sqrt(squares / (steps.length * absorption.length));
  const warnings: Warning[] = (['absorption', 'scattering'] as const)
    .filter((quantity) => negative[quantity].length > 0)
    .map(
      (quantity): Warning => ({
        code: `negative-${quantity}` as const,
        path: negative[quantity].join(', '),
        message: `The ladder asks for a negative ${quantity} of the colorant at ${negative[quantity].length} wavelengths; it is taken as 0 there.`,
      }),
    );
  if (masstone) warnings.push(...bronzes(masstone, reductions));
  return {
    kind: 'colorant-coefficients',
    version: 1,
    start,
    step,
    absorption: [...absorption],
    scattering: [...scattering],
    white: [...whiteRatio],
    amounts,
    residual,
    warnings,
  };
}

/** The ladder as it was passed, its spectra checked and on one grid. */
function readLadder(ladder: ColorantLadder): ColorantLadder {
  assertObject(ladder, 'ladder', 'white, reductions and masstone');
  assertOptions(ladder, ['white', 'reductions', 'masstone'], 'ladder');
  assertArray(ladder.reductions, 'ladder.reductions');
  const white = asSpectrum(ladder.white, 'ladder.white');
  const onGrid = (given: Spectrum, path: string) => {
    const spectrum = asSpectrum(given, path);
    assertSameGrid(white, spectrum, path);
    return spectrum;
  };
  const reductions = ladder.reductions.map((reduction, i) => {
    const path = `ladder.reductions[${i}]`;
    assertObject(reduction, path, 'an amount with its spectrum');
    const { amount, spectrum } = reduction;
    if (!(typeof amount === 'number' && amount > 0 && amount < Infinity)) {
      const expected = 'a finite amount above 0';
      throw new TintladderError('out-of-range', { path: `${path}.amount`, received: amount, expected });
    }
    return { amount, spectrum: onGrid(spectrum, `${path}.spectrum`) };
  });
  const { masstone } = ladder;
  return { white, reductions, masstone: masstone === undefined ? undefined : onGrid(masstone, 'ladder.masstone') };
}

/** What the strongest reduction says of the masstone. */
function bronzes(masstone: Spectrum, reductions: readonly Reduction[]): Warning[] {
  const strongest = reductions.reduce((most, step) => (step.amount > most.amount ? step : most), reductions[0]);
  return bronzingWarnings(masstone, strongest.spectrum);
}

/** K/S of a mixture of white (S = 1) and an amount of colorant; an infinite amount is the colorant alone. */
function mixtureRatio(white: number, amount: number, k: number, s: number): number {
  return amount === Infinity ? k / s : (white + amount * k) / (1 + amount * s);
}

interface BandReading {
  readonly amount: number;
  readonly ratio: number;
  readonly sensitivity: number;
}

function fitBand(readings: readonly BandReading[], white: number, path: string) {
  let k = 0;
  let s = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const rows = readings.map(({ amount, ratio, sensitivity }) => {
      // The masstone is the limit of a large amount; in the first round, before s is known, any finite weight will do.
      if (amount === Infinity) return { weight: sensitivity / (s > 0 ? s : 1), amount: 1, ratio, target: 0 };
      return { weight: sensitivity / (1 + amount * s), amount, ratio, target: ratio - white };
    });
    const kColumn = rows.map(({ weight, amount }) => weight * amount);
    const sColumn = rows.map(({ weight, amount, ratio }) => -weight * amount * ratio);
    const target = rows.map(({ weight, target }) => weight * target);
    const { condition, solve } = factorLeastSquares([kColumn, sColumn]);
    if (!(condition <= WORST_CONDITION)) {
      throw new TintladderError('ill-conditioned', {
        path: `ladder at ${path}`,
        received: condition,
        expected: `a condition number of at most ${WORST_CONDITION}`,
        hint: 'The steps look alike there; add the masstone or a stronger reduction.',
      });
    }
    [k, s] = solve(target);
    if (k < 0) return { k: 0, s: alone(sColumn, target), negative: 'absorption' as const };
    if (s < 0) return { k: alone(kColumn, target), s: 0, negative: 'scattering' as const };
  }
  return { k, s, negative: undefined };
}

/** The only unknown left, not below 0. */
function alone(column: readonly number[], target: readonly number[]): number {
  let [cross, square] = [0, 0];
  column.forEach((value, i) => {
    cross += value * target[i];
    square += value * value;
  });
  return Math.max(0, cross / square);
}
