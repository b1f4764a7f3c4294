import { colourDifference, type Lab, labFromSpectrum, type Spectrum, type Viewing } from '../colorimetry/index.js';
import type { Interval } from '../decision/index.js';
import { differenceScatter } from '../rubout/internal.js';
import type { StrengthBasis } from './strength-basis.js';

/**
 * 95 % intervals of the colour difference at equal strength (ΔE00), of many trials against one reference.
 *
 * Each unit that was made anew on either side is brought to the strength of the mean reference by itself; how the matched units scatter is the
 * scatter of the shade, without that of the strength. What the reference gives is computed once, when the first trial asks.
 *
 * @param reference - mean of each unit of the reference
 * @returns of the means of the units of a trial the interval; undefined where no side has several units
 */
export function residualIntervals(
  reference: readonly Spectrum[],
  white: Spectrum | undefined,
  { mean, matched }: StrengthBasis<Spectrum>,
  viewing: Viewing,
): (trial: readonly Spectrum[]) => Interval | undefined {
  let once: ReturnType<typeof ofReference> | undefined;
  const ofReference = () => {
    const middle = mean(reference);
    const toReference = matched(middle, white);
    const matchedLab = (spectrum: Spectrum): Lab => labFromSpectrum(toReference(spectrum), viewing);
    return { lab: labFromSpectrum(middle, viewing), matchedLab, labs: reference.map(matchedLab) };
  };
  return (trial) => {
    once ??= ofReference();
    const { lab, matchedLab, labs } = once;
    const difference = colourDifference(lab, matchedLab(mean(trial)));
    const areas = [
      { name: 'reference', labs },
      { name: 'trial', labs: trial.map(matchedLab) },
    ] as const;
    const interval = differenceScatter(areas, difference, undefined).interval?.dE2000;
    return (
      interval && {
        low: Math.min(interval.low, difference.dE2000),
        high: Math.max(interval.high, difference.dE2000),
      }
    );
  };
}
