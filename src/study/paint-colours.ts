import type { Spectrum } from '../colorimetry/index.js';
import type { Interval } from '../decision/index.js';
import type { Repeated } from '../evidence/index.js';
import type { Measurement } from '../exchange/index.js';
import { meanOfUnits, topUnitsOf } from './nest-assigned.js';
import { residualIntervals } from './residual-interval.js';
import { spectralBasis } from './strength-basis.js';
import type { Study } from './study.js';

/** What all packages of a paint are compared with: computed once, however many they are. */
export interface PaintColours {
  /** Means of the reference and of the white base. */
  readonly reference: Spectrum;
  readonly white: Spectrum | undefined;
  /** Interval of the colour difference at equal strength, from the mean of each unit of a trial. */
  readonly residualInterval: (units: readonly Spectrum[]) => Interval | undefined;
}

/** The colours of the reference and of the white of one paint. */
export function paintColours(
  study: Study,
  {
    reference,
    white,
  }: { readonly reference: Repeated<Measurement>; readonly white: Repeated<Measurement> | undefined },
): PaintColours {
  const basis = spectralBasis(study);
  const meanWhite = white && meanOfUnits(white, basis);
  const units = topUnitsOf(reference).map((unit) => meanOfUnits(unit, basis));
  return {
    reference: meanOfUnits(reference, basis),
    white: meanWhite,
    residualInterval: residualIntervals(units, meanWhite, basis, study.viewing),
  };
}
