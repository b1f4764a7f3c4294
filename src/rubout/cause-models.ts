import type { SurfaceCorrection } from '../kubelka-munk/index.js';
import { internalOf, ratioOf } from '../kubelka-munk/internal.js';
import type { CauseModel } from './misfit.js';
import { changeOfRatio, type SpectralChange } from './spectral-change.js';

// Forward models: by what each cause changes the measured reflectance of an opaque film. Sizes are relative: 0 is no effect.

/** One standard deviation of what a pigment's own curve may be wrong by over the wavelengths, as a share of it. */
const SHAPE = 0.08;
const ANYWHERE = 0.02;
/** k2 against the stated one, one standard deviation; the correction that is taken where none is stated. */
const INTERNAL = 0.12;
const USUAL: SurfaceCorrection = { external: 0.04, internal: 0.5, specular: 'excluded' };

/** The coloured pigments absorb more by one factor: `F = Fw + (1 + t)(F0 - Fw)`. */
export function colouredModel(found: SpectralChange, least = 0): CauseModel {
  const { ratio, white } = found;
  return pigmentModel(
    found,
    [0],
    [least],
    ([t], from, base) =>
      (i) =>
        base[i] + (1 + t) * (from[i] - base[i]),
    white,
    ratio,
  );
}

/** The white scatters more by one factor: `F = F0 / (1 + s)`. */
export function whiteModel(found: SpectralChange): CauseModel {
  const { ratio, white } = found;
  return pigmentModel(
    found,
    [0],
    [0],
    ([s], from) =>
      (i) =>
        from[i] / (1 + s),
    white,
    ratio,
  );
}

/** Coloured pigments and white at once: `F = (Fw + (1 + t)(F0 - Fw)) / (1 + s)`. */
export function bothModel(found: SpectralChange): CauseModel {
  const { ratio, white } = found;
  const next =
    ([t, s]: readonly number[], from: Float64Array, base: Float64Array) =>
    (i: number) =>
      (base[i] + (1 + t) * (from[i] - base[i])) / (1 + s);
  return pigmentModel(found, [0, 0], [0, 0], next, white, ratio);
}

/** The surface throws back more or less light at every wavelength alike: `R + g`. Its size is in units of reflectance. */
export function surfaceModel({ change }: SpectralChange): CauseModel {
  return {
    start: [0],
    least: [Number.NEGATIVE_INFINITY],
    curve: ([g]) => change.map(() => g),
    roughness: 0,
    tolerance: () => [],
  };
}

/** Two causes at once. */
export function togetherModel(one: CauseModel, other: CauseModel): CauseModel {
  const n = one.start.length;
  return {
    start: [...one.start, ...other.start],
    least: [...one.least, ...other.least],
    curve: (sizes) => {
      const second = other.curve(sizes.slice(n));
      return one.curve(sizes.slice(0, n)).map((value, i) => value + second[i]);
    },
    roughness: Math.max(one.roughness, other.roughness),
    tolerance: (sizes) => [...one.tolerance(sizes.slice(0, n)), ...other.tolerance(sizes.slice(n))],
  };
}

type NextRatio = (sizes: readonly number[], from: Float64Array, base: Float64Array) => (i: number) => number;

/**
 * A model that acts on K/S.
 *
 * Kubelka-Munk with a stated surface is close to a film and not equal to it: k2 may be another, clusters that absorb much lose more than those
 * that absorb little, and a spectrum may be read without any correction. What these do to the curve is its tolerance.
 */
function pigmentModel(
  found: SpectralChange,
  start: readonly number[],
  least: readonly number[],
  next: NextRatio,
  white: Float64Array,
  ratio: Float64Array,
): CauseModel {
  const { surface, reflectance, wavelengths } = found;
  const curve = (sizes: readonly number[]) => changeOfRatio(ratio, next(sizes, ratio, white), surface);
  const other = otherSurface(surface);
  const internalRatio = (R: number) => {
    const internal = Math.min(Math.max(internalOf(R, other), 1e-4), 1);
    return ratioOf(internal);
  };
  const otherRatio = reflectance.map(internalRatio);
  const otherWhite =
    surface === other ? white : otherRatio.map((F, i) => (ratio[i] > 0 ? (F * white[i]) / ratio[i] : 0));
  const most = Math.max(...ratio, 1e-9);
  const middle = (wavelengths[0] + wavelengths[wavelengths.length - 1]) / 2;
  return {
    start,
    least,
    curve,
    roughness: ANYWHERE,
    tolerance: (sizes) => {
      const own = curve(sizes);
      const size = own.reduce((sum, value) => sum + value * value, 0);
      if (!(size > 0)) return [];
      const elsewhere = changeOfRatio(otherRatio, next(sizes, otherRatio, otherWhite), other);
      const along = own.reduce((sum, value, i) => sum + value * elsewhere[i], 0) / size;
      const shapes: readonly ((i: number) => number)[] = [
        (i) => (2 * ratio[i]) / most - 1,
        (i) => (wavelengths[i] - middle) / 150,
      ];
      return [
        elsewhere.map((value, i) => value - along * own[i]),
        ...shapes.map((shape) => own.map((value, i) => SHAPE * value * shape(i))),
        ...(found.whiteKnown ? [] : unknownWhite(found, sizes[0], USUAL_WHITE)),
      ];
    },
  };
}

/** K/S of a rutile white: little anywhere, and the edge of its own absorption at the violet end. Common practice, no source. */
const USUAL_WHITE = (nm: number) => 0.003 + 0.05 / (1 + Math.exp((nm - 405) / 5));

/** What taking the absorption of an unknown white for that of the colorant does to a curve: its even part and its edge, each by itself. */
function unknownWhite(
  { wavelengths, ratio, slope }: SpectralChange,
  size: number,
  usual: (nm: number) => number,
): Float64Array[] {
  const even = usual(wavelengths[wavelengths.length - 1]);
  const parts = [(_: number) => even, (nm: number) => usual(nm) - even];
  return parts.map((part) => slope.map((value, i) => size * value * Math.min(part(wavelengths[i]), ratio[i])));
}

/** A surface one standard deviation away from the stated one. */
function otherSurface(surface: SurfaceCorrection): SurfaceCorrection {
  if (surface === 'none') return USUAL;
  const { internal } = surface;
  return { ...surface, internal: internal > INTERNAL ? internal - INTERNAL : internal + INTERNAL };
}
