import { colourDifference, labFromSpectrum, meanSpectrum, type Spectrum, type Viewing } from '../colorimetry/index.js';
import type { Interval } from '../decision/index.js';
import { differenceScatter } from '../rubout/internal.js';
import type { StrengthBasis } from './strength-basis.js';

/**
 * 95 % interval of the colour difference at equal strength (ΔE00).
 *
 * Each unit that was made anew on either side is brought to the strength of the mean reference by itself; how the matched units scatter is the
 * scatter of the shade, without that of the strength.
 *
 * @param reference - mean of each unit of the reference
 * @param trial - the same of the trial
 * @returns undefined where no side has several units
 */
export function residualInterval(
  reference: readonly Spectrum[],
  trial: readonly Spectrum[],
  white: Spectrum | undefined,
  { strength }: StrengthBasis<Spectrum>,
  viewing: Viewing,
): Interval | undefined {
  const mean = meanSpectrum(reference);
  const matched = (spectrum: Spectrum) => labFromSpectrum(strength(mean, spectrum, white).matched, viewing);
  const difference = colourDifference(labFromSpectrum(mean, viewing), matched(meanSpectrum(trial)));
  const areas = [
    { name: 'reference', labs: reference.map(matched) },
    { name: 'trial', labs: trial.map(matched) },
  ] as const;
  const interval = differenceScatter(areas, difference, undefined).interval?.dE2000;
  return (
    interval && {
      low: Math.min(interval.low, difference.dE2000),
      high: Math.max(interval.high, difference.dE2000),
    }
  );
}
