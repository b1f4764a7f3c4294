import { internalOf, measuredOf } from '../kubelka-munk/internal.js';
import type { CauseModel } from './misfit.js';
import type { SpectralChange } from './spectral-change.js';

/** The same film over black, and what the substrates reflect by themselves, at the wavelengths of a change; measured. */
export interface FilmOverBlack {
  readonly overBlack: Float64Array;
  readonly black: Float64Array;
  readonly white: Float64Array;
}

/**
 * The film over the white is thinner or thicker by a share: its reflectance by the exact Kubelka-Munk form from both readings.
 *
 * Over a substrate G, `a (R + G) + c (R - G) = 1 + R G` with `a = 1 + K/S` and `c = b coth bSX`: two readings are two linear equations.
 *
 * @see Kubelka (1948), J. Opt. Soc. Am. 38, 448-457
 */
export function thicknessModel(found: SpectralChange, film: FilmOverBlack): CauseModel {
  const { reflectance, surface } = found;
  const inside = (R: number) => Math.max(internalOf(R, surface), 0);
  const bands = reflectance.map((_, i) => i);
  const layers = Array.from(bands, (i) =>
    layerOf(inside(reflectance[i]), inside(film.overBlack[i]), inside(film.white[i]), inside(film.black[i])),
  );
  return {
    start: [0],
    least: [-0.9],
    curve: ([x]) =>
      reflectance.map((R, i) => {
        const layer = layers[i];
        if (!layer) return 0;
        const next = measuredOf(reflectanceOf(layer, (1 + x) * layer.depth), surface);
        return next - measuredOf(reflectanceOf(layer, layer.depth), surface) + 0 * R;
      }),
    // What is known of a film comes from small differences of two readings.
    roughness: 0,
    tolerance: () => [],
  };
}

interface Layer {
  readonly a: number;
  readonly b: number;
  /** S X */
  readonly depth: number;
  readonly substrate: number;
}

/** Undefined where the film hides: no thickness shows there. */
function layerOf(overWhite: number, overBlack: number, white: number, black: number): Layer | undefined {
  if (!(overWhite > overBlack && white > black)) return undefined;
  const [p, q, r] = [overWhite + white, overWhite - white, 1 + overWhite * white];
  const [s, t, u] = [overBlack + black, overBlack - black, 1 + overBlack * black];
  const determinant = p * t - q * s;
  const a = (r * t - q * u) / determinant;
  const c = (p * u - r * s) / determinant;
  const b = Math.sqrt(a * a - 1);
  if (!(a > 1 && c > b)) return undefined;
  return { a, b, depth: Math.atanh(b / c) / b, substrate: white };
}

function reflectanceOf({ a, b, substrate }: Layer, depth: number): number {
  const c = b / Math.tanh(b * depth);
  return (1 - substrate * (a - c)) / (a - substrate + c);
}
