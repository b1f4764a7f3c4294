import { internalOf, measuredOf } from '../kubelka-munk/internal.js';
import { type Layer, layerOf, reflectanceOfLayer } from './film-layer.js';
import type { CauseModel } from './misfit.js';
import type { SpectralChange } from './spectral-change.js';

/** The same film over black, and what the substrates reflect by themselves, at the wavelengths of a change; measured. */
export interface FilmOverBlack {
  readonly overBlack: Float64Array;
  readonly black: Float64Array;
  readonly white: Float64Array;
}

/** One standard deviation, as a share of the curve. */
const ROUGHNESS = 0.05;

/** The film over the white is thinner or thicker by a share: its reflectance by the exact Kubelka-Munk form from both readings. */
export function thicknessModel(found: SpectralChange, film: FilmOverBlack): CauseModel {
  const { reflectance, surface } = found;
  const inside = (R: number) => Math.max(internalOf(R, surface), 0);
  const layers = Array.from(reflectance, (R, i) =>
    layerOf(inside(R), inside(film.overBlack[i]), inside(film.white[i]), inside(film.black[i])),
  );
  const measured = (layer: Layer, depth: number) => measuredOf(reflectanceOfLayer(layer, depth), surface);
  return {
    start: [0],
    least: [-0.9],
    curve: ([x]) =>
      Float64Array.from(layers, (layer) =>
        layer ? measured(layer, (1 + x) * layer.depth) - measured(layer, layer.depth) : 0,
      ),
    // What is known of a film comes from a small difference of two readings.
    roughness: ROUGHNESS,
    tolerance: () => [],
  };
}
