import { gridOf, meanSpectrum, type Viewing, xyzFromLab } from '../colorimetry/index.js';
import { TintladderError } from '../core/index.js';
import type { Surface } from '../kubelka-munk/index.js';
import { absorptionOf, type Bands, spectralBands, tristimulusBands } from '../strength/internal.js';
import type { Area } from './readings.js';
import { meanLab } from './scatter.js';

/**
 * By how much K/S rises where it rises, and falls where it falls, on rubbing: each summed over 400 to 700 nm, or over X, Y and Z
 * where only Lab values are at hand.
 *
 * Whatever one pigment or the white does alone moves K/S the same way at every wavelength. Both ways at once is an exchange
 * of one pigment for another.
 */
export interface AbsorptionChange {
  readonly rises: number;
  readonly falls: number;
}

/** @returns `undefined` where the readings have no K/S, neither in the spectra nor in X, Y and Z */
export function absorptionChange(
  [unrubbed, rubbed]: readonly [Area, Area],
  { viewing, surface }: { readonly viewing: Viewing; readonly surface?: Surface },
): AbsorptionChange | undefined {
  if (unrubbed.spectra && rubbed.spectra) {
    const [from, to] = [meanSpectrum(unrubbed.spectra), meanSpectrum(rubbed.spectra)];
    const change = sumsOf(from.values, to.values, spectralBands(viewing, gridOf(from)), surface);
    if (change) return change;
  }
  const bands = tristimulusBands(viewing);
  const [from, to] = [unrubbed, rubbed].map(({ labs }) => {
    const { X, Y, Z } = xyzFromLab(meanLab(labs), bands.white);
    return Float64Array.of(X / bands.white.X, Y / bands.white.Y, Z / bands.white.Z);
  });
  return sumsOf(from, to, bands, surface);
}

function sumsOf(
  from: Float64Array,
  to: Float64Array,
  bands: Bands,
  surface: Surface | 'none' = 'none',
): AbsorptionChange | undefined {
  try {
    const before = absorptionOf(from, surface, bands, 'unrubbed');
    const after = absorptionOf(to, surface, bands, 'rubbed');
    let rises = 0;
    let falls = 0;
    for (let i = bands.first; i <= bands.last; i++) {
      const change = after[i] - before[i];
      if (change > 0) rises += change;
      else falls -= change;
    }
    return { rises, falls };
  } catch (error) {
    if (error instanceof TintladderError) return undefined;
    throw error;
  }
}
