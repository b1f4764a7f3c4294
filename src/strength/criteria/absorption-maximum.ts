import { TintladderError, type Warning } from '../../core/index.js';
import { assertReachable, type Dilution } from '../reduction/dilution.js';
import { noteSensitivity } from './sensitivity.js';
import type { Choice, Solution } from './solution.js';

/** A colorant whose least absorption is above this share of its greatest has no maximum to speak of. */
const FLAT = 0.7;

/**
 * The added K/S of trial and reference made equal at the band where the reference's is largest.
 *
 * @throws TintladderError `no-absorption` naming the band where reference or trial adds none; `no-solution`
 * @see ISO 18314-2:2023 for K/S at the absorption maximum; ISO 787-24:1985 for K/S from one reflectivity
 */
export function solveAbsorptionMaximum(dilution: Dilution, { band = maximumOf(dilution) }: Choice = {}): Solution {
  const { bands, reference, trial } = dilution;
  const at = bands.nameOf(band);
  if (!(reference[band] > 0)) throw noAbsorption(`reference at ${at}`, reference[band]);
  if (!(trial[band] > 0)) throw noAbsorption(`trial at ${at}`, trial[band]);
  const factor = reference[band] / trial[band];
  assertReachable(dilution, factor);
  return { factor, choice: { band }, warnings: [...noteShape(dilution, band), ...noteSensitivity(dilution, band)] };
}

/** The band within the range where the reference's colorant absorbs most. */
export function maximumOf({ bands, reference }: Dilution): number {
  let maximum = bands.first;
  for (let band = bands.first; band <= bands.last; band++) if (reference[band] > reference[maximum]) maximum = band;
  return maximum;
}

/** The fault of a reduction in which the colorant adds no absorption to its white. */
export function noAbsorption(path: string, received: number): TintladderError {
  return new TintladderError('no-absorption', {
    path,
    received,
    expected: 'an absorption that the colorant adds to the K/S of the white base',
    hint: 'Is the white base the one that both reductions were made with?',
  });
}

function noteShape({ bands, reference }: Dilution, band: number): Warning[] {
  const warnings: Warning[] = [];
  const path = bands.nameOf(band);
  if ((band === bands.first || band === bands.last) && bands.count > 3) {
    warnings.push({
      code: 'absorption-maximum-at-end',
      message: `The absorption maximum lies at ${path}, the end of the range looked at; the true one may lie beyond it.`,
      path,
    });
  }
  const least = Math.min(...reference.subarray(bands.first, bands.last + 1));
  if (least > FLAT * reference[band]) {
    warnings.push({
      code: 'near-neutral',
      message:
        `The reference absorbs nearly evenly, at least ${Math.floor((least / reference[band]) * 100)} % of its maximum ` +
        `everywhere, so the place of the maximum, ${path}, is arbitrary; a sum or tristimulus Y says more.`,
      path,
      figures: { leastPercent: (100 * least) / reference[band] },
    });
  }
  return warnings;
}
