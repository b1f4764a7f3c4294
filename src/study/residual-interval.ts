import { colourDifference, labFromSpectrum, meanSpectrum, type Spectrum } from '../colorimetry/index.js';
import type { Interval } from '../decision/index.js';
import { differenceScatter } from '../rubout/internal.js';
import { relativeTintingStrength, type StrengthOptions } from '../strength/index.js';

/**
 * 95 % interval of the colour difference at equal strength (ΔE00).
 *
 * Each replicate of either side is brought to the strength of the mean reference by itself; how the matched replicates scatter
 * is the scatter of the shade, without that of the strength.
 *
 * @returns undefined where no side has replicates
 */
export function residualInterval(
  reference: readonly Spectrum[],
  trial: readonly Spectrum[],
  options: StrengthOptions,
): Interval | undefined {
  const mean = meanSpectrum(reference);
  const areaOf = (name: string, spectra: readonly Spectrum[]) => ({
    name,
    labs: spectra.map((spectrum) =>
      labFromSpectrum(relativeTintingStrength(mean, spectrum, options).matched, options.viewing),
    ),
  });
  const matchedTrial = relativeTintingStrength(mean, meanSpectrum(trial), options).matched;
  const difference = colourDifference(
    labFromSpectrum(mean, options.viewing),
    labFromSpectrum(matchedTrial, options.viewing),
  );
  const areas = [areaOf('reference', reference), areaOf('trial', trial)] as const;
  const interval = differenceScatter(areas, difference, undefined).interval?.dE2000;
  return (
    interval && {
      low: Math.min(interval.low, difference.dE2000),
      high: Math.max(interval.high, difference.dE2000),
    }
  );
}
