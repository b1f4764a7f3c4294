import type { Spectrum } from '../colorimetry/index.js';
import { asSpectrum, assertSameGrid } from '../colorimetry/internal.js';
import { TintladderError, type Warning } from '../core/index.js';
import { assertArray, assertObject, assertOneOf, assertOptions } from '../core/internal.js';
import { studentQuantile } from '../numeric/internal.js';
import type { BoundedFigure } from './bounded-figure.js';
import type { MeasuredLadder } from './ladder-misfit.js';
import { SURFACE_GEOMETRIES, type Surface, type SurfaceGeometry } from './surface.js';
import { type ProfiledSurface, profileSurface } from './surface-profile.js';

/** Readings from which a surface can be found: measured reflectances of opaque layers on one grid. */
export interface SurfaceFitReadings {
  /** The colorant alone; the deepest one at hand */
  readonly masstone?: Spectrum | undefined;
  /** The white base; with at least two reductions in it (or one and the mass tone) it makes a ladder */
  readonly white?: Spectrum | undefined;
  /** Reductions of the colorant in this white; amount is colorant per white */
  readonly reductions?: readonly { readonly amount: number; readonly spectrum: Spectrum }[] | undefined;
}

/** A surface found from readings. */
export interface SurfaceFit {
  readonly kind: 'surface-fit';
  readonly version: 1;
  /** What it was found from: a ladder, or the lowest reading of a mass tone alone */
  readonly basis: 'ladder' | 'masstone';
  /** k1, with 95 % bounds (of a mass tone alone: what is possible) */
  readonly external: BoundedFigure;
  /** k2, with 95 % bounds; nothing of a mass tone alone */
  readonly internal: BoundedFigure;
  /** Whether the readings hold the specular reflection, as far as they tell it */
  readonly specular: 'included' | 'excluded' | 'not-told';
  /** The surface to go on with; of a mass tone alone with k2 0.6 */
  readonly surface: Surface;
  /** Root mean square of measured minus fitted reflectance, of a ladder */
  readonly residualReflectance?: number;
  readonly warnings: readonly Warning[];
}

/** k1 of a binder of n = 1.5, where readings without the specular reflection don't tell it. */
const USUAL_EXTERNAL = 0.04;
/** Internal reflectance at the lowest reading of a deep mass tone, as it would be measured; and at most (common practice, no source). */
const DEEP = { likely: 0.002, most: 0.01 };
/** k1 is looked for up to here. */
const HIGHEST = 0.1;

/**
 * k1, k2 and whether the specular reflection was read, from a laboratory's own readings: a ladder of one colorant, or its deepest mass tone.
 *
 * From a ladder the surface is that with which the two-constant mixture `K/S = (Kw + c k) / (1 + c s)`, k and s free at each wavelength, comes
 * nearest to all readings. It needs at least three readings beside the white. k and s of the colorant can stand in for a wrong k1, so that a
 * ladder without a deep mass tone tells k2 and leaves k1 open downwards; with one, k1 is looked for from 0.01 below its lowest reading. The bounds are 95 % from the profile of the
 * sum of squares, for errors that are independent between the steps; a ladder that doesn't follow the theory gives bounds that are too narrow
 * and a large residual. From a mass tone alone, k1 is at most the lowest reading: it is taken 0.002 below it, which is an internal
 * reflectance of about 0.005, and k2 is not known.
 *
 * @param readings - measured spectra of masstone, white and reductions
 * @param options - geometry of the instrument
 * @returns k1 and k2 with bounds, whether the specular reflection was included, a surface to go on with; warning `surface-not-told` naming
 * what the readings don't tell
 * @throws TintladderError `too-few-points` without a mass tone or a ladder of three readings; `no-solution` if no surface allows the readings;
 * `out-of-range` for an amount that is not positive; `grid-mismatch`; `invalid-option`
 * @example
 * const black = createSpectrum({ start: 400, step: 10, values: [0.044, 0.042, 0.043], scale: 'fraction' });
 * fitSurface({ masstone: black }).surface.external // 0.040
 * @see Saunderson (1942), J. Opt. Soc. Am. 32; Bates & Watts (1988), Nonlinear Regression Analysis, on profile bounds
 */
export function fitSurface(
  readings: SurfaceFitReadings,
  options: { readonly geometry?: SurfaceGeometry | undefined } = {},
): SurfaceFit {
  assertObject(readings, 'readings', 'a mass tone, or a white and its reductions');
  assertOptions(options, ['geometry']);
  const { geometry = 'd:8°' } = options;
  assertOneOf(geometry, SURFACE_GEOMETRIES, 'options.geometry');
  const given = readings.reductions ?? [];
  assertArray(given, 'readings.reductions');
  const reductions = given.map((step, i) => {
    assertObject(step, `readings.reductions[${i}]`, 'an amount and its spectrum');
    const { amount } = step;
    if (!(typeof amount === 'number' && amount > 0 && amount < Infinity)) {
      const expected = 'a finite amount above 0';
      throw new TintladderError('out-of-range', {
        path: `readings.reductions[${i}].amount`,
        received: amount,
        expected,
      });
    }
    return { amount, spectrum: asSpectrum(step.spectrum, `readings.reductions[${i}].spectrum`) };
  });
  const white = readings.white && asSpectrum(readings.white, 'readings.white');
  const masstone = readings.masstone && asSpectrum(readings.masstone, 'readings.masstone');
  const steps = [...reductions, ...(masstone ? [{ amount: Infinity, spectrum: masstone }] : [])];
  if (white && steps.length >= 3) {
    steps.forEach(({ spectrum }, i) => {
      assertSameGrid(white, spectrum, i < reductions.length ? `readings.reductions[${i}]` : 'readings.masstone');
    });
    return fromLadder({ white, steps }, geometry);
  }
  if (masstone) return fromMasstone(masstone, geometry);
  throw new TintladderError('too-few-points', {
    path: 'readings',
    received: steps.length,
    expected: 'a mass tone, or a white with at least three readings of the colorant in it',
  });
}

function fromLadder(ladder: MeasuredLadder, geometry: SurfaceGeometry): SurfaceFit {
  const directional = geometry === '45°:0°' || geometry === '0°:45°';
  const lowest = Math.min(
    ...[ladder.white, ...ladder.steps.map(({ spectrum }) => spectrum)].flatMap(({ values }) => [...values]),
  );
  const deep = ladder.steps.some(({ amount }) => amount === Infinity);
  const without = profileSurface(ladder, [USUAL_EXTERNAL, USUAL_EXTERNAL], { specular: 'excluded', geometry });
  const within = directional
    ? undefined
    : profileSurface(ladder, [deep ? Math.max(0, lowest - DEEP.most) : 0, Math.min(HIGHEST, lowest)], {
        specular: 'included',
        geometry,
      });
  const [best, other] = [within, without].filter((found) => found !== undefined).sort((a, b) => a.squares - b.squares);
  if (!best) {
    throw new TintladderError('no-solution', {
      path: 'readings',
      received: lowest,
      expected: 'readings that a film with some surface can give',
      hint: 'Are all of them between the reflection of the surface and that of a perfect white?',
    });
  }
  const told = directional || !other || other.squares > best.squares * factorBeyond(best);
  const specular = told ? best.surface.specular : 'not-told';
  // Bounds of the search that come from the mass tone are bounds of k1; without one an open end is open.
  const external =
    deep && best.surface.specular === 'included'
      ? { low: Math.max(0, lowest - DEEP.most), high: lowest, ...best.external }
      : best.external;
  const open = [
    ...(told ? [] : ['whether the specular reflection was included']),
    ...(best.surface.specular === 'included' && isOpen(external) ? ['k1'] : []),
    ...(isOpen(best.internal) ? ['k2'] : []),
  ];
  return {
    kind: 'surface-fit',
    version: 1,
    basis: 'ladder',
    external,
    internal: best.internal,
    specular,
    surface: best.surface,
    residualReflectance: best.residual,
    warnings: notTold(open),
  };
}

function fromMasstone({ values }: Spectrum, geometry: SurfaceGeometry): SurfaceFit {
  const lowest = Math.min(...values);
  if (geometry === '45°:0°' || geometry === '0°:45°') {
    const surface: Surface = { external: USUAL_EXTERNAL, internal: 0.6, specular: 'excluded', geometry };
    return {
      kind: 'surface-fit',
      version: 1,
      basis: 'masstone',
      external: {},
      internal: {},
      specular: 'excluded',
      surface,
      warnings: notTold(['k1', 'k2']),
    };
  }
  const value = Math.max(0, lowest - DEEP.likely);
  return {
    kind: 'surface-fit',
    version: 1,
    basis: 'masstone',
    external: { value, low: Math.max(0, lowest - DEEP.most), high: lowest },
    internal: {},
    specular: 'not-told',
    surface: { external: value, internal: 0.6, specular: 'included', geometry },
    warnings: notTold(['k2', 'whether the specular reflection was included']),
  };
}

const isOpen = ({ low, high }: BoundedFigure) => low === undefined || high === undefined;

/** By which factor another sum of squares must be the larger one to be ruled out at 95 %. */
function factorBeyond({ degreesOfFreedom }: ProfiledSurface): number {
  return 1 + studentQuantile(0.975, degreesOfFreedom) ** 2 / degreesOfFreedom;
}

function notTold(open: readonly string[]): Warning[] {
  if (open.length === 0) return [];
  return [
    {
      code: 'surface-not-told',
      message: `The readings don't tell ${open.join(', nor ')} within bounds; what is given in its place is usual for paint.`,
      path: 'readings',
      figures: { open },
    },
  ];
}
