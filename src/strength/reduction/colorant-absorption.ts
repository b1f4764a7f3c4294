import type { Warning } from '../../core/index.js';
import type { SurfaceCorrection } from '../../kubelka-munk/index.js';
import { internalOf, noInternalReflectance, ratioOf, unusable } from '../../kubelka-munk/internal.js';
import { type Bands, listBands } from './bands.js';

/**
 * K/S of a reading, band by band, corrected for the surface.
 *
 * @param path - what messages call the reading: `trial[1]`
 * @throws TintladderError `zero-reflectance`, `no-internal-reflectance` or `reflectance-out-of-range` naming the band
 */
export function absorptionOf(
  reflectances: Float64Array,
  surface: SurfaceCorrection,
  bands: Bands,
  path: string,
): Float64Array {
  return reflectances.map((measured, band) => {
    const internal = internalOf(measured, surface);
    if (internal > 0 && internal <= 1) return ratioOf(internal);
    const at = `${path} at ${bands.nameOf(band)}`;
    if (surface !== 'none' && surface.specular === 'included' && internal <= 0)
      throw noInternalReflectance(measured, surface, at);
    const hint = 'Is the reading calibrated, free of fluorescence, and in the stated specular mode?';
    throw unusable(
      internal,
      surface === 'none' ? at : `${at}, corrected for the surface`,
      internal > 1 ? hint : undefined,
    );
  });
}

/** K/S that the colorant adds to the white base: `q = F(reduction) - F(white)`. */
export function addedAbsorption(reduction: Float64Array, white: Float64Array): Float64Array {
  return reduction.map((ratio, band) => ratio - white[band]);
}

/** Below this share of the largest added K/S a negative value is rounding, no finding. */
const ROUNDING = 1e-9;

/** A note where the white base reads darker than a reduction made with it. */
export function noteDarkerWhite(added: Float64Array, bands: Bands, path: string): Warning[] {
  const largest = Math.max(...added);
  const darker = Array.from(added.keys()).filter((band) => added[band] < -ROUNDING * largest);
  if (darker.length === 0) return [];
  const worst = darker.reduce((least, band) => (added[band] < added[least] ? band : least), darker[0]);
  const share = ((-added[worst] / largest) * 100).toPrecision(2);
  return [
    {
      code: 'white-darker',
      message:
        `The white base is darker than the ${path} in ${darker.length} of ${bands.count} bands ` +
        `(${listBands(bands, darker)}), where the colorant's K/S is counted as negative; ` +
        `the largest is ${share} % of its maximum. Small values are noise, large ones mean another white.`,
      path: `${path} at ${bands.nameOf(worst)}`,
      figures: { bands: darker.map(bands.nameOf), largestPercent: (-100 * added[worst]) / largest },
    },
  ];
}
