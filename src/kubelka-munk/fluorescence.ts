import type { ChartDrawdown } from './chart-drawdown.js';

/** Over white the film must be darker by this at the hump than beyond it, so that it still absorbs there (our own rule, no source). */
const STILL_ABSORBS = 0.02;
/** Over black the film must be about as dark as the bare field, so that it hardly scatters (our own rule, tried on the measured paints). */
const HARDLY_SCATTERS = 0.03;
/** Noise of a reading that a hump must exceed, in standard deviations. */
const DEVIATIONS = 3;

/**
 * Where a drawdown shows light that it can't have reflected: readings above 1, or, of a film that hardly scatters, a hump over black at the edge
 * of an absorption band. At longer waves than the hump the film absorbs less (it is lighter over white) and yet is darker over black, and at
 * shorter ones too. The emission of a dye leaves this; so could particles far smaller than the wavelength, whose scattering falls as steeply.
 */
export function fluorescentBands({ overBlack, overWhite, black: bare }: ChartDrawdown, noise: number): number[] {
  const [black, white] = [overBlack.values, overWhite.values];
  const reach = DEVIATIONS * noise;
  const hump = (i: number) =>
    bare !== undefined &&
    black[i] < bare.values[i] + HARDLY_SCATTERS &&
    black.subarray(0, i).some((value) => value < black[i] - reach) &&
    black.subarray(i + 1).some((value, k) => value < black[i] - reach && white[i + 1 + k] > white[i] + STILL_ABSORBS);
  return Array.from(black.keys()).filter((i) => Math.max(black[i], white[i]) > 1 + reach || hump(i));
}
